/** The order of checks for as long as nothing shows: the list a mechanic can print and work down. */
import { exactChecks, exactSuspects, type Plan } from '../../core/topics/fault-order/index.ts';
import type { FaultSearchProps } from './props.ts';
import { minutes, percent } from '../../words/index.ts';

interface Props extends Pick<FaultSearchProps, 'checks'> {
  readonly plan: Plan;
  readonly begun: boolean;
}

export function PathAhead({ plan, checks, begun }: Props) {
  if (plan.path.length === 0) return null;
  return (
    <section class="fault-part">
      <h3>
        {begun ? 'The order from here, as long as nothing shows' : 'The order of checks, as long as nothing shows'}
      </h3>
      <ol class="fault-path">
        {plan.path.map((step) => (
          <li key={step.id}>
            <strong>{step.name}</strong>{' '}
            <span class="fault-effort">
              ({minutes(step.minutes)}; {percent(step.chanceReached)} of searches get this far)
            </span>
            <br />
            {checks[step.id]?.how}
            <span class="fault-ticks">
              <span>
                <i />
                shows a fault
              </span>
              <span>
                <i />
                all right
              </span>
            </span>
          </li>
        ))}
      </ol>
      <p class="fault-on-paper">
        When a check shows a fault, stop. Open this page again, answer it there, and take the new order.
      </p>
      <p class="fault-why">
        {plan.method === 'exact'
          ? `No other order takes fewer minutes on average than ${minutes(plan.expectedMinutes)} of checking: every order was weighed.`
          : `With more than ${exactSuspects} suspects or ${exactChecks} checks not every order can be weighed. This one, by most found for each minute, takes ${minutes(plan.expectedMinutes)} on average${plan.expectedError > 0.05 ? ` (drawn, give or take ${minutes(2 * plan.expectedError)})` : ''}; no order can take less than ${minutes(plan.bound)}.`}
        {plan.fixMinutes > 0 && ` Putting it right comes on top: ${minutes(plan.fixMinutes)} on average.`}
      </p>
    </section>
  );
}
