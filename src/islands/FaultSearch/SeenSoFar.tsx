/** The answers so far, each of which can be taken back. */
import type { Progress } from './kept.ts';

interface Props {
  readonly progress: Progress;
  readonly nameOf: (check: string) => string;
  readonly change: (next: Progress) => void;
}

export function SeenSoFar({ progress, nameOf, change }: Props) {
  return (
    <section class="fault-part">
      <h3>Seen so far</h3>
      <ol class="fault-seen">
        {progress.seen.map(({ check, shows }) => (
          <li key={check}>
            <span>
              {nameOf(check)}: <strong>{shows ? 'shows a fault' : 'all right'}</strong>
            </span>
            <button
              type="button"
              class="calc-button no-print"
              onClick={() => change({ ...progress, seen: progress.seen.filter((s) => s.check !== check) })}
            >
              Take back<span class="calc-hidden"> {nameOf(check)}</span>
            </button>
          </li>
        ))}
        {progress.skipped.map((check) => (
          <li key={check}>
            <span>{nameOf(check)}: not checked</span>
            <button
              type="button"
              class="calc-button no-print"
              onClick={() => change({ ...progress, skipped: progress.skipped.filter((s) => s !== check) })}
            >
              Put back<span class="calc-hidden"> {nameOf(check)}</span>
            </button>
          </li>
        ))}
      </ol>
    </section>
  );
}
