/** Every check in the order of the plan, each to be answered when it was seen already; on paper, boxes to tick. */
import { aboutMinutes, faultWords as say } from '../../words/fault.ts';
import { CheckLine } from './CheckLine.tsx';
import { Earlier } from './Earlier.tsx';
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
      <h2>
        <span class="fault-head">{say.allChecks}</span>
        <Earlier live={live} />
      </h2>
      <ol class="fault-path">
        {inOrder(now).map((id, i, all) => {
          const check = model.checks.find((c) => c.id === id);
          // On paper a caution holds until the next one.
          const hazard = checks[id]?.hazards[0] ?? '';
          const own = checks[all[i - 1] ?? '']?.hazards[0] === hazard ? undefined : cautions[hazard];
          if (!check) return null;
          return (
            <CheckLine
              key={id}
              check={check}
              minutes={proposed.get(id) ?? check.minutes}
              given={search.given[id]?.is}
              own={own}
              live={live}
              checks={checks}
              cautions={cautions}
              answer={answer}
            />
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
