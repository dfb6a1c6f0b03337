/** Cautions the answer raised, the gravest first, each in one line that opens to all of it; on paper and with scripts off all is open. */
import type { Caution, CautionLevel } from '../../../core/contract/result.ts';
import type { ShownHazard } from '../state/props.ts';
import { signalWord } from '../../../words/kit.ts';

const gravity: readonly CautionLevel[] = ['danger', 'warning', 'caution', 'notice'];

interface Props {
  readonly cautions: readonly Caution[];
  readonly hazards: Readonly<Record<string, ShownHazard>>;
  /** Folded while scripts run; written open, so that nothing is lost without them. */
  readonly folded: boolean;
}

export function inOrder(cautions: readonly Caution[]): readonly Caution[] {
  return [...cautions].sort((a, b) => gravity.indexOf(a.level) - gravity.indexOf(b.level));
}

export function Cautions({ cautions, hazards, folded }: Props) {
  return (
    <>
      {cautions.map(({ hazard: id, level }) => {
        const hazard = hazards[id];
        // A test holds every topic to its list of cautions.
        if (!hazard) return null;
        return (
          <details class={`hazard hazard-${level} calc-caution`} key={id} data-hazard={id} open={!folded}>
            <summary>
              <span class="hazard-level">{signalWord[level]}</span> {hazard.first}
            </summary>
            <p class="hazard-title">{hazard.title}</p>
            <p>{hazard.say}</p>
            <ul>
              {hazard.do.map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          </details>
        );
      })}
    </>
  );
}
