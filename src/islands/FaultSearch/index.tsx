/** Working down a complaint: the next check, what was seen, who is left. Planned again after every answer. */
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { planOrder, type FaultModel } from '../../core/topics/fault-order/index.ts';
import { today } from '../kit/take-away/clock.ts';
import { keepProgress, keptProgress, nothingYet, type Progress } from './kept.ts';
import { NextCheck } from './NextCheck.tsx';
import { PathAhead } from './PathAhead.tsx';
import type { FaultSearchProps } from './props.ts';
import { SeenSoFar } from './SeenSoFar.tsx';
import { SuspectTable } from './SuspectTable.tsx';
import { TicketLine } from './TicketLine.tsx';

function without(model: FaultModel, skipped: readonly string[]): FaultModel {
  return skipped.length === 0 ? model : { ...model, checks: model.checks.filter((c) => !skipped.includes(c.id)) };
}

export default function FaultSearch({ id, model, checks, suspects }: FaultSearchProps) {
  const [live, setLive] = useState(false);
  const [progress, setProgress] = useState<Progress>(nothingYet);
  const heading = useRef<HTMLHeadingElement>(null);

  // What was kept is read after the first paint, which must equal the server's.
  useEffect(() => {
    setProgress(
      keptProgress(
        id,
        model.checks.map((c) => c.id),
      ),
    );
    setLive(true);
  }, [id, model]);

  function keep(next: Progress): void {
    setProgress(next);
    keepProgress(id, next);
  }

  function go(next: Progress): void {
    keep({ ...next, begun: next.seen.length + next.skipped.length === 0 ? '' : next.begun || today() });
    heading.current?.focus();
  }

  // A long list takes a while to plan, and the name of the machine has no part in it.
  const plan = useMemo(
    () => planOrder(without(model, progress.skipped), progress.seen),
    [model, progress.skipped, progress.seen],
  );
  const nameOf = (check: string) => model.checks.find((c) => c.id === check)?.name ?? check;
  const begun = progress.seen.length + progress.skipped.length > 0;

  return (
    <section class="fault" aria-labelledby={`${id}-next`} data-live={live ? 'yes' : 'no'}>
      <h2 id={`${id}-next`} class="fault-head" tabIndex={-1} ref={heading}>
        {begun ? 'Where the search stands' : 'What to check first'}
      </h2>
      <TicketLine id={id} live={live} progress={progress} change={(machine) => keep({ ...progress, machine })} />
      <NextCheck
        plan={plan}
        live={live}
        checks={checks}
        suspects={suspects}
        answer={(check, shows) => go({ ...progress, seen: [...progress.seen, { check, shows }] })}
        skip={(check) => go({ ...progress, skipped: [...progress.skipped, check] })}
      />
      {begun && <SeenSoFar progress={progress} nameOf={nameOf} change={go} />}
      <SuspectTable belief={plan.belief} suspects={suspects} begun={begun} />
      <PathAhead plan={plan} checks={checks} begun={begun} />
      {live && (
        <p class="fault-actions no-print">
          <button type="button" class="calc-button" onClick={() => window.print()}>
            Print the search as it stands
          </button>
          {begun && (
            <button type="button" class="calc-button" onClick={() => go(nothingYet)}>
              Start this complaint afresh
            </button>
          )}
          <span class="fault-kept">What you answer stays on this device until you start afresh.</span>
        </p>
      )}
    </section>
  );
}
