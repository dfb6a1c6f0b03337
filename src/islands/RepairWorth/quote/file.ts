/** The quote as rows of a spreadsheet: what the paper says, nothing more. */
import type { Cell } from '../../../core/export/index.ts';
import { roundMoney } from '../../../core/money/index.ts';
import { quoteLines, type QuoteData, type QuoteLine } from './data.ts';
import { validUntil, type Letter } from './letter.ts';
import type { QuoteWords } from '../../../words/quote.ts';

export function quoteRows(
  q: QuoteData,
  letter: Letter,
  shop: { readonly name: string; readonly currency: string },
  words: QuoteWords,
): Cell[][] {
  const until = validUntil(letter);
  const named = (label: string, text: string): Cell[][] =>
    text.trim() === '' ? [] : [[label, text.trim(), null, null]];
  return [
    [words.quote, shop.name, null, null],
    ...named(words.number, letter.number),
    ...named(words.date, letter.date),
    ...named(words.for, letter.customer),
    ...named(words.machine, letter.machine),
    ...named(words.work, letter.work),
    ...(until === undefined ? [] : [[words.until(until), null, null, null]]),
    [
      words.columns.what,
      words.columns.quantity,
      `${words.columns.price} (${shop.currency})`,
      `${words.columns.line} (${shop.currency})`,
    ],
    ...quoteLines(q).map((l) => [lineName(l, q, words), l.quantity ?? null, l.price ?? null, l.amount ?? null]),
    [words.total, null, null, q.total],
    ...(q.feeCredited && q.fee > 0
      ? [
          [words.feeOff, null, null, roundMoney(q.toPay - q.total)],
          [words.toPay, null, null, q.toPay],
        ]
      : []),
  ];
}

export function lineName(line: QuoteLine, q: QuoteData, words: QuoteWords): string {
  switch (line.kind) {
    case 'part':
      return line.name ?? '';
    case 'lump':
      return q.tax === undefined ? words.lumpTaxed : words.lump;
    case 'labour':
      return words.labour;
    case 'consumables':
      return words.consumables;
    case 'tax':
      return words.tax;
  }
}
