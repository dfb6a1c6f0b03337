/** The one thing to do now, and why it comes next; or what was found. */
import type { Plan } from '../../core/topics/fault-order/index.ts';
import { siteLink } from '../../browser/site-link.ts';
import type { FaultSearchProps } from './props.ts';
import { minutes, percent } from '../../words/index.ts';

interface Props extends Pick<FaultSearchProps, 'checks' | 'suspects'> {
  readonly plan: Plan;
  readonly live: boolean;
  readonly answer: (check: string, shows: boolean) => void;
  readonly skip: (check: string) => void;
}

export function NextCheck({ plan, live, checks, suspects, answer, skip }: Props) {
  return (
    <div class="fault-now" role="status">
      {now()}
    </div>
  );

  function now() {
    if (plan.belief.contradiction)
      return <p>These answers can’t all be right for a single fault. Take one back, or look for two faults at once.</p>;
    if (plan.found) {
      const chance = plan.belief.suspects.find((s) => s.id === plan.found?.id)?.chance ?? 0;
      const fix = suspects[plan.found.id]?.fix;
      return (
        <>
          <p class="fault-what">{plan.found.name}</p>
          <p>
            {plan.found.how === 'shown' ? 'The checks point here' : 'Nothing else is left'}: {percent(chance)} likely.
            Confirm it with your own eyes before ordering a part.
          </p>
          {fix && (
            <p>
              <a href={siteLink(fix.path)}>{fix.title}</a>
            </p>
          )}
        </>
      );
    }
    if (!plan.next)
      return (
        <p>
          No check on this list can tell more. The fault may be something that is not listed: start from what you have
          seen and look wider.
        </p>
      );
    const { id, name, minutes: effort, chanceShows, expectedIfNext } = plan.next;
    return (
      <>
        <p class="fault-what">{name}</p>
        <p>{checks[id]?.how}</p>
        <p class="fault-why">
          About {minutes(effort)} with what must come off first. It shows something in {percent(chanceShows)} of such
          machines.
          {expectedIfNext !== undefined &&
            ` Starting here, the search takes ${minutes(expectedIfNext)} on average${plan.listedMinutes > expectedIfNext + 0.5 ? `, against ${minutes(plan.listedMinutes)} in the order of the list` : ''}.`}
        </p>
        {live && (
          <p class="fault-answers no-print">
            <button type="button" class="calc-button calc-button-first" onClick={() => answer(id, true)}>
              It shows a fault
            </button>
            <button type="button" class="calc-button calc-button-first" onClick={() => answer(id, false)}>
              All right here
            </button>
            <button type="button" class="calc-button" onClick={() => skip(id)}>
              Can’t check that now
            </button>
          </p>
        )}
      </>
    );
  }
}
