/** Who could be at fault, likeliest first, with a bar drawn to the same scale for all. */
import type { Belief } from '../../core/topics/fault-order/index.ts';
import { siteLink } from '../../browser/site-link.ts';
import type { FaultSearchProps } from './props.ts';
import { percent } from '../../words/index.ts';

interface Props extends Pick<FaultSearchProps, 'suspects'> {
  readonly belief: Belief;
  readonly begun: boolean;
}

export function SuspectTable({ belief, suspects, begun }: Props) {
  const rows = [...belief.suspects].sort((a, b) => b.chance - a.chance);
  return (
    <section class="fault-part">
      <h3>{begun ? 'Suspects after what was seen' : 'Suspects'}</h3>
      <div class="wide" role="region" tabIndex={0} aria-label="Suspects">
        <table class="fault-suspects">
          <thead>
            <tr>
              <th scope="col">Suspect</th>
              <th scope="col">Likely</th>
              <th scope="col">Why it happens, and the way out</th>
            </tr>
          </thead>
          <tbody>
            {rows.map(({ id, name, chance }) => {
              const words = suspects[id];
              return (
                <tr key={id}>
                  <th scope="row">{name}</th>
                  <td>
                    <Bar chance={chance} />
                  </td>
                  <td>
                    {words?.why}
                    {words?.fix && (
                      <>
                        {' '}
                        <a href={siteLink(words.fix.path)}>{words.fix.title}</a>
                      </>
                    )}
                  </td>
                </tr>
              );
            })}
            {belief.somethingElse > 0.005 && (
              <tr>
                <th scope="row">Something not listed</th>
                <td>
                  <Bar chance={belief.somethingElse} />
                </td>
                <td>Kept open, so that a thin list does not look like a sure thing.</td>
              </tr>
            )}
          </tbody>
        </table>
      </div>
    </section>
  );
}

function Bar({ chance }: { readonly chance: number }) {
  return (
    <span class="fault-chance">
      <svg viewBox="0 0 100 10" width="100" height="10" aria-hidden="true" class="fault-bar">
        <rect class="fault-bar-all" width="100" height="10" />
        <rect class="fault-bar-part" width={Number((chance * 100).toFixed(2))} height="10" />
      </svg>
      <span class="num">{percent(chance)}</span>
    </span>
  );
}
