/** The list in letters that read from across the shop, with a box to tick and a place to sign. */
import { formatNumber } from '../../core/quantity/index.ts';
import type { DueLine } from '../../core/topics/service-interval/index.ts';
import type { ShopFacts } from '../kit/index.ts';

interface Props {
  readonly id: string;
  readonly heading: string;
  readonly start: string;
  readonly list: readonly DueLine[];
  readonly shop: ShopFacts;
  /** Said over the list when its figures are not of this shop. */
  readonly band?: string | undefined;
}

/** A card has at least this many lines on paper; the empty ones are written in by hand. */
const least = 9;

const hours = (seconds: number) => `${formatNumber(Math.floor(seconds / 360 + 1e-9) / 10)} h`;

export function WallCard({ id, heading, start, list, shop, band }: Props) {
  return (
    <article class="card" id={id} aria-label={heading}>
      {band !== undefined && <p class="calc-band">{band}</p>}
      <header class="card-head">
        <h4>{heading}</h4>
        <p>
          {shop.name}, from {start}
        </p>
      </header>
      <div class="card-wide" role="region" aria-label={heading} tabIndex={0}>
        <table>
          <thead>
            <tr>
              <th scope="col">Done</th>
              <th scope="col">Due</th>
              <th scope="col">Machine</th>
              <th scope="col">What is done</th>
              <th scope="col">Hours left</th>
              <th scope="col">Every</th>
              <th scope="col">Done on, at hours, by</th>
            </tr>
          </thead>
          <tbody>
            {list.map((d, i) => (
              <tr key={i}>
                <td>
                  <span class="card-tick" />
                </td>
                <td class="card-due">
                  {d.date}
                  {d.days < 0 && <span class="card-late">overdue</span>}
                </td>
                <td>{d.machine}</td>
                <td>{d.task}</td>
                <td class="card-hours">
                  {d.hoursLeft === undefined ? '–' : d.hoursLeft <= 0 ? 'now' : hours(d.hoursLeft)}
                  {d.hoursLeft !== undefined && d.since.from === 'estimated' && ' (estimated)'}
                  {d.atMeter !== undefined && <span> at {hours(d.atMeter)}</span>}
                </td>
                <td class="card-hours">{d.interval === undefined ? '–' : hours(d.interval)}</td>
                <td class="card-sign" />
              </tr>
            ))}
            {Array.from({ length: Math.max(0, least - list.length) }, (_, i) => (
              <tr class="card-blank" key={`blank-${i}`} aria-hidden="true">
                <td>
                  <span class="card-tick" />
                </td>
                <td />
                <td />
                <td />
                <td />
                <td />
                <td />
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <p class="card-foot">
        Whichever comes first, the day or the hours. Engine off and plug lead off before any work. The machine’s manual
        comes before this card.
      </p>
    </article>
  );
}
