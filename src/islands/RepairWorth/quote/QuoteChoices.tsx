/** The three ways open to the customer, side by side, and what they come to. */
import type { QuoteData } from './data.ts';
import type { QuoteWords } from '../../../words/quote.ts';

interface Props {
  readonly data: QuoteData;
  readonly words: QuoteWords;
  readonly money: (amount: number) => string;
  readonly number: (value: number) => string;
}

export function QuoteChoices({ data, words, money, number }: Props) {
  const service =
    data.service.in === 'years'
      ? words.years(number(data.service.amount))
      : words.cuttingHours(number(data.service.amount));
  const price =
    data.tradeIn > 0 ? `${money(data.newPrice)}, ${words.lessTradeIn(money(data.tradeIn))}` : money(data.newPrice);
  return (
    <section class="sheet-part">
      <h5>{words.choices}</h5>
      <div class="sheet-wide" role="region" aria-label={words.choices} tabIndex={0}>
        <table class="sheet-choices">
          <thead>
            <tr>
              <th scope="col">{words.choice.what}</th>
              <th scope="col">{words.choice.now}</th>
              <th scope="col">{words.choice.lasts}</th>
              <th scope="col">{words.choice.yearly}</th>
            </tr>
          </thead>
          <tbody>
            <tr>
              <th scope="row">{words.repair}</th>
              <td>{money(data.toPay)}</td>
              <td>{service}</td>
              <td>{money(data.repairYearly)}</td>
            </tr>
            <tr>
              <th scope="row">{words.replace}</th>
              <td>{price}</td>
              <td>{data.newLife === undefined ? '–' : words.years(number(data.newLife))}</td>
              <td>{money(data.newYearly)}</td>
            </tr>
            <tr>
              <th scope="row">{words.leave}</th>
              <td>
                {data.fee > 0 ? words.feeOnly : words.nothing}
                {data.asIs > 0 && `; ${words.fetches(money(data.asIs))}`}
              </td>
              <td colSpan={2}>{words.leaveMeans}</td>
            </tr>
          </tbody>
        </table>
      </div>
      <p>
        {words.advice[data.advice]} {words.yearlyMeans}
      </p>
    </section>
  );
}
