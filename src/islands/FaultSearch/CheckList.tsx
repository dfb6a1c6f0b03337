/** Every check in the order of the plan, each to be answered when it was seen already; on paper, boxes to tick. */
import { aboutMinutes, faultWords as say, minutes } from '../../words/fault.ts';
import { signalWord } from '../../words/kit.ts';
import { CheckBody } from './CheckBody.tsx';
import type { Answer, Search } from './kept.ts';
import { inOrder, type PlanNow } from './plan-for.ts';
import type { FaultSearchProps } from './props.ts';

interface Props extends Pick<FaultSearchProps, 'checks' | 'cautions'> {
  readonly now: PlanNow;
  readonly search: Search;
  readonly live: boolean;
  readonly answer: (check: string, is: Answer | undefined) => void;
  readonly change: (change: Partial<Search>) => void;
}

export function CheckList({ now, search, live, checks, cautions, answer, change }: Props) {
  const { plan, model } = now;
  const proposed = new Map([...plan.ranking, ...plan.path].map((c) => [c.id, c.minutes]));
  return (
    <section class="fault-part">
      <h2>{say.allChecks}</h2>
      <ol class="fault-path">
        {inOrder(now).map((id, i, all) => {
          const check = model.checks.find((c) => c.id === id);
          const given = search.given[id];
          // On paper a caution holds until the next one.
          const hazard = checks[id]?.hazards[0] ?? '';
          const own = checks[all[i - 1] ?? '']?.hazards[0] === hazard ? undefined : cautions[hazard];
          if (!check) return null;
          return (
            <li key={id} class={given ? 'fault-given' : undefined}>
              <details>
                <summary>
                  <span class="fault-check">
                    {check.name}
                    <span class="fault-on-paper fault-how-on-paper">
                      . {own && <b>{signalWord[own.level]}: </b>}
                      {own?.first} {checks[id]?.conditions} {checks[id]?.how}
                    </span>
                  </span>
                  <span class="fault-effort">{minutes(proposed.get(id) ?? check.minutes)}</span>
                  <span class="fault-seen no-print">{given ? say.gave[given.is] : say.seenAlready}</span>
                  <span class="fault-ticks">
                    <i class={given?.is === 'fault' ? 'fault-ticked' : ''} /> {say.onPaper.fault}{' '}
                    <i class={given?.is === 'sound' ? 'fault-ticked' : ''} /> {say.onPaper.sound}
                  </span>
                </summary>
                <CheckBody
                  id={id}
                  name={check.name}
                  checks={checks}
                  cautions={cautions}
                  live={live}
                  given={given?.is}
                  answer={(is) => answer(id, is)}
                />
                {given && (
                  <button type="button" class="fault-plain no-print" onClick={() => answer(id, undefined)}>
                    {say.takeBack}
                  </button>
                )}
              </details>
            </li>
          );
        })}
        {Object.entries(search.ruledOut).map(([id, name]) => (
          <li key={id} class="fault-given fault-ruled-out">
            <span>
              {name}: {say.ruledOut}
            </span>
            <button
              type="button"
              class="fault-plain no-print"
              onClick={() =>
                change({ ruledOut: Object.fromEntries(Object.entries(search.ruledOut).filter(([k]) => k !== id)) })
              }
            >
              {say.takeBack}
            </button>
          </li>
        ))}
      </ol>
      <p class="fault-on-paper">{say.stopOnPaper}</p>
      {plan.path.length > 0 && (
        <p class="fault-quiet">
          {plan.method === 'exact'
            ? say.orderExact(aboutMinutes(plan.expectedMinutes))
            : say.orderRule(aboutMinutes(plan.expectedMinutes))}
        </p>
      )}
    </section>
  );
}
