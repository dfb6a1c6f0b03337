/** The sheet the customer takes home: complete in both languages, adds up, and keeps the shop's own sums to itself. */
import fc from 'fast-check';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { csvText } from '../../src/core/export/index.ts';
import type { RawInputs } from '../../src/core/contract/field.ts';
import { readInputs } from '../../src/core/contract/read-inputs.ts';
import { compute, example, fields } from '../../src/core/topics/repair-worth/index.ts';
import { quoteData, quoteLines, type QuoteData } from '../../src/islands/RepairWorth/quote/data.ts';
import { quoteRows } from '../../src/islands/RepairWorth/quote/file.ts';
import { emptyLetter, validUntil, type Letter } from '../../src/islands/RepairWorth/quote/letter.ts';
import { dayWriter, moneyWriter } from '../../src/islands/RepairWorth/quote/money.ts';
import { QuoteSheet } from '../../src/islands/RepairWorth/quote/QuoteSheet.tsx';
import { wordsIn, type Lang } from '../../src/words/index.ts';
import { shop } from './page.ts';
import { runs } from '../runs.ts';

function dataOf(raw: RawInputs): QuoteData {
  const read = readInputs(fields, { ...example, ...raw });
  if (!read.ok) throw new Error('These figures do not read.');
  const result = compute(read.inputs);
  if (!result.ok) throw new Error('These figures do not work out.');
  return quoteData(result, read.inputs);
}

/** Two parts given as costs; every figure on the shop's side is one that no price, sum or year comes to. */
const shopSide: RawInputs = {
  quoteAs: 'lines',
  labourHours: 1.8,
  labourRate: 95,
  taxParts: 7,
  consumables: 6,
  lines: [
    { part: 'Drive belt', quantity: 1, amount: 64.19, basis: 'margin', share: '40 %' },
    { part: 'Bearing', quantity: 2, amount: 11.37, basis: 'markup', share: '37 %' },
  ],
};
const letter: Letter = {
  ...emptyLetter('2026-03-02'),
  customer: 'J. Ortega',
  machine: 'MP-350 no. 11',
  work: 'Belt and bearings',
  number: '1182',
};
const sheet = (raw: RawInputs, { lang = 'en', ...more }: Partial<Letter> & { lang?: Lang } = {}) =>
  renderToString(
    <QuoteSheet
      id="sheet"
      data={dataOf(raw)}
      letter={{ ...letter, ...more }}
      shop={shop}
      lang={lang}
      words={wordsIn(lang).quote}
    />,
  );
const plain = (html: string) => html.replace(/<[^>]+>/g, ' ').replace(/\s+/g, ' ');

/** Every text of a dictionary with the way to it; sentences with a gap are read with a figure in it. */
function texts(words: object, path = ''): [string, string][] {
  return Object.entries(words).flatMap(([key, value]: [string, unknown]) => {
    const at = `${path}${key}`;
    if (typeof value === 'function')
      return [[at, String((value as (gap: string) => string)('[gap]'))]] as [string, string][];
    return typeof value === 'object' && value !== null
      ? texts(value, `${at}.`)
      : ([[at, String(value)]] as [string, string][]);
  });
}

describe('the words of the quote sheet', () => {
  const [en, es] = [new Map(texts(wordsIn('en').quote)), new Map(texts(wordsIn('es').quote))];
  it('are the same list in both languages, none of them empty', () => {
    expect([...es.keys()]).toEqual([...en.keys()]);
    expect([...en, ...es].filter(([, text]) => text.trim() === '').map(([at]) => at)).toEqual([]);
  });
  it('are translated, but for those that are the same word', () => {
    expect([...es].filter(([at, text]) => en.get(at) === text).map(([at]) => at)).toEqual(['hours', 'total']);
  });
  it('carry the figure they are given', () => {
    for (const [at, text] of en) if (text.includes('[gap]')) expect(es.get(at), at).toContain('[gap]');
  });
});

describe.each(['en', 'es'] as const)('the sheet in %s', (language) => {
  const html = sheet(shopSide, { lang: language });
  it('says who, what, how much and how long', () => {
    const text = plain(html);
    const money = moneyWriter(language, 'USD');
    const data = dataOf(shopSide);
    for (const part of [
      'Marlpit Lane Saw',
      '3 Marlpit Lane',
      '000 0000',
      'J. Ortega',
      'MP-350 no. 11',
      '1182',
      'Drive belt',
      money(data.total),
      money(data.newPrice),
      dayWriter(language, 'USD')('2026-03-16'),
    ])
      expect(text).toContain(part);
    expect(html).toContain(`lang="${language}"`);
  });
  it('shows no cost, markup or margin', () => {
    expect(plain(html)).not.toMatch(/64[.,]19|11[.,]37|22[.,]74|37 %|40 %|markup|margin|margen|most worth/i);
  });
  it('says that the engine has not been looked at until it has', () => {
    const words = wordsIn(language).quote;
    expect(plain(html)).toContain(words.engineOpen);
    const checked = plain(sheet({ ...shopSide, engine: 'good' }, { lang: language }));
    expect(checked).not.toContain(words.engineOpen);
    expect(checked).toContain(words.engineGood);
  });
  it('holds no broken figure', () => {
    expect(html).not.toMatch(/NaN|undefined|Infinity|\[object/);
  });
});

describe('the lines of a quote', () => {
  it('add up to its total, to the cent', () => {
    const line = fc.record({
      part: fc.constant('Part'),
      quantity: fc.integer({ min: 1, max: 9 }),
      amount: fc.double({ min: 0, max: 999, noNaN: true }),
      basis: fc.constantFrom('price', 'markup', 'margin'),
      share: fc.integer({ min: 0, max: 90 }),
    });
    fc.assert(
      fc.property(
        fc.array(line, { maxLength: 12 }),
        fc.double({ min: 0, max: 20, noNaN: true }),
        fc.boolean(),
        (lines, labourHours, itemised) => {
          const data = dataOf({ ...shopSide, lines, labourHours, itemised });
          const cents = quoteLines(data).reduce((sum, l) => sum + Math.round((l.amount ?? 0) * 100), 0);
          expect(cents).toBe(Math.round(data.total * 100));
        },
      ),
      { numRuns: runs(150) },
    );
  });
  it('keep one price where parts and labor do not stand apart on the bill', () => {
    const lines = quoteLines(dataOf({ ...shopSide, itemised: false }));
    expect(
      lines
        .filter((l) => l.kind === 'part' || l.kind === 'labour')
        .every((l) => l.price === undefined && l.amount === undefined),
    ).toBe(true);
    expect(lines.map((l) => l.kind)).toEqual(['lump', 'part', 'part', 'tax']);
  });
  it('are one line when the quote is one total', () => {
    expect(quoteLines(dataOf({ quote: 260 }))).toEqual([{ kind: 'lump', amount: 260 }]);
  });
  it('take the fee off where it is credited, and name it as owed where it is not', () => {
    expect(plain(sheet({ quote: 260, diagnosticFee: 45, diagnosticCredited: true }))).toMatch(/Left to pay \$215\.00/);
    expect(plain(sheet({ quote: 260, diagnosticFee: 45 }))).toContain(wordsIn('en').quote.feeOwed('$45.00'));
  });
});

describe('a quote', () => {
  it('holds for 14 days unless the shop says otherwise', () => {
    expect(validUntil(emptyLetter('2026-02-20'))).toBe('2026-03-06');
    expect(validUntil({ ...emptyLetter('2026-02-20'), days: '30' })).toBe('2026-03-22');
  });
  it.each([{ days: '' }, { days: 'soon' }, { days: '0' }, { date: '' }, { date: '12026-01-01' }])(
    'with a slip in its day or days promises nothing',
    (slip) => {
      expect(validUntil({ ...emptyLetter('2026-02-20'), ...slip })).toBeUndefined();
      expect(sheet({ quote: 260 }, slip)).not.toContain('hold until');
    },
  );
  it('writes amounts as where the money comes from', () => {
    expect(moneyWriter('es', 'USD')(1300)).toBe('$1,300.00');
    expect(moneyWriter('es', 'EUR')(1300.5).replace(/\s/g, ' ')).toBe('1300,50 €');
    expect(moneyWriter('en', 'GBP')(1300)).toBe('£1,300.00');
  });
});

describe('the quote as a table', () => {
  const rows = quoteRows(dataOf(shopSide), { ...letter, customer: '=HYPERLINK("x")' }, shop, wordsIn('es').quote);
  it('has the lines and the total, and no cost', () => {
    const text = csvText(rows);
    expect(text).toContain('Drive belt,1,106.98,106.98');
    expect(rows.at(-1)).toEqual(['Total', null, null, dataOf(shopSide).total]);
    expect(text).not.toMatch(/64\.19|11\.37|0\.4\b|0\.37/);
  });
  it('gives a spreadsheet nothing to run', () => {
    expect(csvText(rows)).toContain(`"'=HYPERLINK(""x"")"`);
  });
  it('has as many cells in every row', () => {
    expect(new Set(rows.map((r) => r.length))).toEqual(new Set([4]));
  });
});
