/** What is paid for, line by line, and what it comes to. A long list stands in two columns, so that the sheet stays one page. */
import { lineName } from './file.ts';
import type { QuoteData, QuoteLine } from './data.ts';
import type { QuoteWords } from '../../../words/quote.ts';

interface Props {
  readonly data: QuoteData;
  readonly lines: readonly QuoteLine[];
  readonly words: QuoteWords;
  readonly money: (amount: number) => string;
  readonly number: (value: number) => string;
}

/** More lines than this stand in two columns. */
const long = 18;

export function QuoteLines({ data, lines, words, money, number }: Props) {
  const priced = lines.some((l) => l.price !== undefined);
  const half = Math.ceil(lines.length / 2);
  const columns = lines.length > long ? [lines.slice(0, half), lines.slice(half)] : [lines];
  const credited = data.feeCredited && data.fee > 0;
  return (
    <>
      <div
        class={columns.length > 1 ? 'sheet-columns sheet-two' : 'sheet-columns'}
        role="region"
        aria-label={words.columns.what}
        tabIndex={0}
      >
        {columns.map((column, k) => (
          <table class="sheet-lines" key={k}>
            <thead>
              <tr>
                <th scope="col">{words.columns.what}</th>
                {priced && <th scope="col">{words.columns.quantity}</th>}
                {priced && <th scope="col">{words.columns.price}</th>}
                <th scope="col">{words.columns.line}</th>
              </tr>
            </thead>
            <tbody>
              {column.map((l, i) => (
                <tr key={i}>
                  <td>{nameOf(l)}</td>
                  {priced && (
                    <td>
                      {l.quantity !== undefined &&
                        `${number(l.quantity)}${l.kind === 'labour' ? ` ${words.hours}` : ''}`}
                    </td>
                  )}
                  {priced && <td>{l.price !== undefined && money(l.price)}</td>}
                  <td>{l.amount === undefined ? words.lumpPart : money(l.amount)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        ))}
      </div>
      <table class="sheet-sums">
        <tbody>
          <tr class="sheet-sum">
            <th scope="row">{words.total}</th>
            <td>{money(data.total)}</td>
          </tr>
          {credited && (
            <tr>
              <th scope="row">{words.feeOff}</th>
              <td>{money(data.toPay - data.total)}</td>
            </tr>
          )}
          {credited && (
            <tr class="sheet-sum">
              <th scope="row">{words.toPay}</th>
              <td>{money(data.toPay)}</td>
            </tr>
          )}
        </tbody>
      </table>
    </>
  );

  function nameOf(line: QuoteLine): string {
    const name = lineName(line, data, words);
    // Without a column of its own a quantity stands beside the name.
    return !priced && line.quantity !== undefined && line.quantity !== 1 ? `${name} × ${number(line.quantity)}` : name;
  }
}
