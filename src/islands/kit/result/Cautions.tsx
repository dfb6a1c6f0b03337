/** Caution boxes the answer raised, the gravest first, in the same dress as those in articles. */
import type { Caution, CautionLevel } from '../../../core/contract/result.ts';
import type { ShownHazard } from '../state/props.ts';
import { signalWord } from '../../../words/index.ts';

const gravity: readonly CautionLevel[] = ['danger', 'warning', 'caution', 'notice'];

interface Props {
  readonly cautions: readonly Caution[];
  readonly hazards: Readonly<Record<string, ShownHazard>>;
}

export function Cautions({ cautions, hazards }: Props) {
  const ordered = [...cautions].sort((a, b) => gravity.indexOf(a.level) - gravity.indexOf(b.level));
  return (
    <>
      {ordered.map(({ hazard: id, level }) => {
        const hazard = hazards[id];
        // A test holds every topic to its list of cautions.
        if (!hazard) return null;
        return (
          <aside
            class={`hazard hazard-${level}`}
            key={id}
            data-hazard={id}
            aria-label={`${signalWord[level]}: ${hazard.title}`}
          >
            <p class="hazard-head">
              <span class="hazard-level">{signalWord[level]}</span> <span class="hazard-title">{hazard.title}</span>
            </p>
            <p>{hazard.say}</p>
            <ul>
              {hazard.do.map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          </aside>
        );
      })}
    </>
  );
}
