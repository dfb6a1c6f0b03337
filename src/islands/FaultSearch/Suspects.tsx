/** Who could be at fault, likeliest first, with a bar drawn to the same scale for all; why, and the way out, on asking. */
import { siteLink } from '../../browser/site-link.ts';
import type { Belief } from '../../core/topics/fault-order/index.ts';
import { faultWords as say, percent } from '../../words/fault.ts';
import { Earlier } from './Earlier.tsx';
import type { FaultSearchProps } from './props.ts';

interface Props extends Pick<FaultSearchProps, 'suspects'> {
  readonly belief: Belief;
  readonly live: boolean;
}

export function Suspects({ belief, live, suspects }: Props) {
  const rows = [...belief.suspects].sort((a, b) => b.chance - a.chance);
  return (
    <section class="fault-suspects">
      <h2>
        <span class="fault-head">{say.suspects}</span>
        <Earlier live={live} />
      </h2>
      <ol class="plain">
        {rows.map(({ id, name, chance }) => {
          const words = suspects[id];
          return (
            <li key={id}>
              <details>
                <summary>
                  <span>{name}</span>
                  <Bar chance={chance} />
                  <b>{percent(chance)}</b>
                </summary>
                <p>
                  {words?.why} {words?.fix && <a href={siteLink(words.fix.path)}>{words.fix.title}</a>}
                </p>
              </details>
            </li>
          );
        })}
        {belief.somethingElse > 0.005 && (
          <li class="fault-suspect-row">
            <span class="fault-quiet">{say.notListed}</span>
            <Bar chance={belief.somethingElse} />
            <b>{percent(belief.somethingElse)}</b>
          </li>
        )}
      </ol>
      <p class="fault-quiet">{say.guesses}</p>
    </section>
  );
}

function Bar({ chance }: { readonly chance: number }) {
  return (
    <svg viewBox="0 0 100 10" preserveAspectRatio="none" aria-hidden="true" class="fault-bar">
      <rect class="fault-bar-all" width="100" height="10" />
      <rect class="fault-bar-part" width={Number((chance * 100).toFixed(2))} height="10" />
    </svg>
  );
}
