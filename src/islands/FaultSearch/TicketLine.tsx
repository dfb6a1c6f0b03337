/** Which machine the search is about and when it was begun: what one asks a half-finished sheet first. */
import type { Progress } from './kept.ts';

interface Props {
  readonly id: string;
  readonly live: boolean;
  readonly progress: Progress;
  readonly change: (machine: string) => void;
}

export function TicketLine({ id, live, progress, change }: Props) {
  const box = `${id}-machine`;
  return (
    <>
      {live && (
        <p class="fault-ticket no-print">
          <label for={box}>Machine or ticket</label>
          <input
            id={box}
            type="text"
            autocomplete="off"
            maxLength={60}
            value={progress.machine}
            onInput={(e) => change(e.currentTarget.value)}
          />
          {progress.begun && (
            <span class="fault-kept">Begun on {progress.begun}. Another machine? Start afresh below.</span>
          )}
        </p>
      )}
      <p class="fault-on-paper fault-ticket-paper">
        <span>Machine or ticket: {progress.machine}</span>
        <span>Begun: {progress.begun}</span>
        <span>By:</span>
      </p>
    </>
  );
}
