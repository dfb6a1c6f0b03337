import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readInputs } from '../../../../src/core/contract/read-inputs.ts';
import { valueOf, type Answer } from '../../../../src/core/contract/result.ts';
import type { RawInputs } from '../../../../src/core/contract/field.ts';
import {
  compute,
  economicLife,
  annualCosts,
  costOfSayingYes,
  fields,
  mostWorthPaying,
  newPriceToFlip,
  newYearly,
  addUpQuote,
  repairYearly,
  serviceToFlip,
  words,
  type Comparison,
} from '../../../../src/core/topics/repair-worth/index.ts';
import { runs } from '../../../runs.ts';

const money = fc.integer({ min: 0, max: 3000 });
const comparison: fc.Arbitrary<Comparison> = fc.record({
  rate: fc.double({ min: 0, max: 0.3, noNaN: true }),
  repair: money,
  asIs: money,
  service: fc.double({ min: 0.2, max: 12, noNaN: true }),
  endValue: money,
  repairRunning: money,
  repairDown: money,
  comebackChance: fc.double({ min: 0, max: 1, noNaN: true }),
  comebackCost: fc.integer({ min: 1, max: 900 }),
  newFirst: fc.integer({ min: 1, max: 6000 }),
  newLife: fc.double({ min: 1, max: 15, noNaN: true }),
  newResale: money,
  newRunning: money,
});

function answer(raw: RawInputs): Answer {
  const read = readInputs(fields, raw);
  if (!read.ok) throw new Error(JSON.stringify(read));
  const result = compute(read.inputs);
  if (!result.ok) throw new Error(JSON.stringify(result));
  return result;
}

describe('the most worth paying', () => {
  it('is the quote at which both ways cost the same', () => {
    fc.assert(
      fc.property(comparison, (c) => {
        expect(repairYearly({ ...c, repair: mostWorthPaying(c) })).toBeCloseTo(newYearly(c), 5);
      }),
    );
  });

  it('falls by what the machine would fetch as it stands', () => {
    fc.assert(
      fc.property(comparison, money, (c, more) => {
        expect(mostWorthPaying(c) - mostWorthPaying({ ...c, asIs: c.asIs + more })).toBeCloseTo(more, 6);
      }),
    );
  });

  it('rises with the price of a new machine', () => {
    fc.assert(
      fc.property(comparison, fc.integer({ min: 1, max: 2000 }), (c, more) => {
        expect(mostWorthPaying({ ...c, newFirst: c.newFirst + more })).toBeGreaterThan(mostWorthPaying(c));
      }),
    );
  });

  it('is not moved by money already spent', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5000 }), (spent) => {
        const [without, after] = [answer({}), answer({ alreadySpent: spent })];
        for (const key of ['mostWorth', 'repairYearly', 'newYearly', 'savingDrawn'])
          expect(valueOf(after, key, 'money').value).toBe(valueOf(without, key, 'money').value);
        expect(valueOf(after, 'spent', 'verdict').code).toBe('already-spent');
      }),
      { numRuns: runs(20) },
    );
  });

  it('does not count a fee that is owed either way, and counts one that comes off the bill', () => {
    const fee = (credited: boolean) => answer({ quote: 260, diagnosticFee: 45, diagnosticCredited: credited });
    expect(valueOf(fee(false), 'toPay', 'money').value).toBe(260);
    expect(valueOf(fee(true), 'toPay', 'money').value).toBe(215);
  });

  it('stands where the answer flips', () => {
    fc.assert(
      fc.property(comparison, (c) => {
        const service = serviceToFlip(c);
        if (service !== undefined) expect(mostWorthPaying({ ...c, service })).toBeCloseTo(c.repair, 2);
        const price = newPriceToFlip(c, c.newFirst);
        if (price !== undefined) expect(mostWorthPaying({ ...c, newFirst: price })).toBeCloseTo(c.repair, 4);
      }),
    );
  });
});

describe('the best age of a new machine', () => {
  it('is the cheapest of all ages, also when an overhaul makes the curve uneven', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 100, max: 20000 }),
        fc.array(fc.record({ cost: money, resale: money }), { minLength: 1, maxLength: 15 }),
        fc.double({ min: 0, max: 0.3, noNaN: true }),
        (first, years, rate) => {
          const best = economicLife(first, years, rate);
          const costs = annualCosts(first, years, rate);
          expect(best.yearly).toBeCloseTo(Math.min(...costs), 9);
          expect(costs[best.years - 1]).toBe(best.yearly);
        },
      ),
    );
  });
});

describe('the look into the engine', () => {
  it('is worth nothing when nothing it shows would change what is done', () => {
    const a = answer({ quote: 2000 });
    expect(valueOf(a, 'lookWorth', 'money').value).toBe(0);
    expect(valueOf(a, 'engineFirst', 'verdict').code).toBe('look-changes-nothing');
  });

  it('is never worth more than knowing for certain', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 1200 }),
        fc.integer({ min: 0, max: 100 }),
        fc.integer({ min: 0, max: 100 }),
        fc.integer({ min: 0, max: 100 }),
        (quote, chanceWorn, inspectionFinds, inspectionFalse) => {
          const a = answer({ quote, chanceWorn, inspectionFinds, inspectionFalse, draws: 100 });
          expect(valueOf(a, 'lookWorth', 'money').value).toBeGreaterThanOrEqual(0);
          expect(valueOf(a, 'lookWorth', 'money').value).toBeLessThanOrEqual(
            valueOf(a, 'knowingWorth', 'money').value + 0.01,
          );
        },
      ),
    );
  });

  it('is asked for before parts are ordered, on the worked example', () => {
    expect(valueOf(answer({}), 'engineFirst', 'verdict').code).toBe('look-first');
  });

  it('comes before everything where it pays, else the better act without it stands', () => {
    // The worked example is worth 362.20 with a sound engine: 307.87 at 15 %, 253.54 at 30 %, nothing at 100 %.
    const code = (raw: RawInputs) => valueOf(answer(raw), 'verdict', 'verdict').code;
    expect(code({})).toBe('engine-in-doubt');
    expect(code({ inspectionMinutes: 120 })).toBe('worth-repairing');
    expect(code({ inspectionMinutes: 120, chanceWorn: 30 })).toBe('too-close-to-call');
    expect(code({ inspectionMinutes: 120, chanceWorn: 60 })).toBe('buy-new');
    expect(code({ chanceWorn: 30, engine: 'good' })).toBe('worth-repairing');
    expect(code({ chanceWorn: 30, quote: 400 })).toBe('buy-new');
  });

  it('with an engine worn for certain is of no use: buy new', () => {
    const a = answer({ chanceWorn: 100 });
    expect(valueOf(a, 'verdict', 'verdict')).toMatchObject({ code: 'buy-new', data: { limit: 0, between: 260 } });
    expect(valueOf(a, 'engineFirst', 'verdict').code).toBe('look-changes-nothing');
  });

  it('never stands beside a verdict that says otherwise, whatever the quote', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 900 }),
        fc.integer({ min: 0, max: 100 }),
        fc.integer({ min: 0, max: 90 }),
        (quote, chanceWorn, inspectionMinutes) => {
          const a = answer({ quote, chanceWorn, inspectionMinutes, draws: 100 });
          const [verdict, engine] = [valueOf(a, 'verdict', 'verdict'), valueOf(a, 'engineFirst', 'verdict')];
          expect(verdict.code === 'engine-in-doubt').toBe(engine.code === 'look-first');
          const blind = valueOf(a, 'mostWorthUnchecked', 'money').value;
          if (verdict.code === 'worth-repairing') expect(quote).toBeLessThan(blind);
          if (verdict.code === 'buy-new') expect(quote).toBeGreaterThan(blind);
        },
      ),
    );
  });

  it.each([
    ['good', 'engine-checked'],
    ['renewed', 'engine-renewed'],
  ])('is not asked for where the engine is %s', (engine, code) => {
    const a = answer({ engine });
    expect(valueOf(a, 'engineFirst', 'verdict').code).toBe(code);
    expect(valueOf(a, 'verdict', 'verdict').code).toBe('worth-repairing');
    expect(a.values.some((v) => v.key === 'mostWorthUnchecked')).toBe(false);
    expect(a.cautions).toEqual([]);
  });
});

describe('a quote', () => {
  it.each([
    ['cents', 0.01],
    ['a currency without cents', 1],
    ['a smallest amount of 5', 5],
  ])('adds up in %s: quantity times price is the line, and the lines are the total', (_, smallest) => {
    fc.assert(
      fc.property(
        fc.array(
          fc.record({
            part: fc.constant('Part'),
            quantity: fc.integer({ min: 1, max: 9 }),
            amount: fc.integer({ min: 1, max: 99999 }).map((c) => c / 100),
            basis: fc.constantFrom('price', 'markup', 'margin'),
            share: fc.integer({ min: 0, max: 90 }),
          }),
          { maxLength: 8 },
        ),
        fc.integer({ min: 100, max: 1000 }),
        fc.integer({ min: 0, max: 2500 }),
        fc.boolean(),
        (lines, hours, tax, itemised) => {
          const a = answer({
            quoteAs: 'lines',
            lines,
            labourHours: hours / 100,
            labourRate: 83.35,
            consumables: 4.99,
            taxParts: tax / 100,
            taxLabour: 3,
            itemised,
            smallest,
            draws: 100,
          });
          const units = (key: string) => valueOf(a, key, 'money').value / smallest;
          const table = valueOf(a, 'quoteLines', 'table').rows.map((row) => row.slice(1).map(Number));
          for (const [quantity = 0, price = 0, line = 0] of table) {
            expect(quantity * price).toBeCloseTo(line, 6);
            expect(price / smallest).toBeCloseTo(Math.round(price / smallest), 6);
          }
          expect(table.reduce((sum, row) => sum + (row[2] ?? 0), 0) / smallest).toBeCloseTo(units('partsTotal'), 5);
          expect(
            units('partsTotal') + units('labourTotal') + units('consumablesTotal') + units('taxTotal'),
          ).toBeCloseTo(units('quoteTotal'), 5);
        },
      ),
      { numRuns: runs(40) },
    );
  });

  it('of three at 64 with a margin of 40 % is 3 x 106.67, and its tax is on that', () => {
    const a = answer({
      quoteAs: 'lines',
      lines: [{ part: 'Belt', quantity: 3, amount: 64, basis: 'margin', share: 40 }],
      labourHours: 0,
      taxParts: 7,
    });
    expect(valueOf(a, 'quoteLines', 'table').rows).toEqual([['Belt', 3, 106.67, 320.01]]);
    // 7 % of 320.01 is 22.4007.
    expect(valueOf(a, 'taxTotal', 'money').value).toBe(22.4);
    expect(valueOf(a, 'quoteTotal', 'money').value).toBe(342.41);
  });

  it('in lines asks for the labor hours and takes none for granted', () => {
    const read = readInputs(fields, { quoteAs: 'lines', lines: [{ part: 'Belt', amount: 40 }] });
    const problems = read.ok ? compute(read.inputs) : read;
    expect(problems).toMatchObject({ ok: false, problems: [{ field: 'labourHours', code: 'missing' }] });
  });

  it('with a fee taken off is never less than nothing', () => {
    const toPay = (quote: number) =>
      valueOf(answer({ quote, diagnosticFee: 45, diagnosticCredited: true }), 'toPay', 'money').value;
    expect([toPay(50), toPay(45), toPay(40)]).toEqual([5, 0, 0]);
    expect([costOfSayingYes(40, 45, true), costOfSayingYes(40, 45, false)]).toEqual([0, 40]);
  });

  it('that is empty is refused, and one of labor alone is not', () => {
    const empty = readInputs(fields, { quoteAs: 'lines', lines: [], labourHours: 0, consumables: 0 });
    const result = empty.ok ? compute(empty.inputs) : { ok: false as const, problems: [] };
    expect(result.ok ? [] : result.problems.map((p) => [p.field, p.code])).toEqual([['lines', 'empty-quote']]);
    expect(
      valueOf(answer({ quoteAs: 'lines', lines: [], labourHours: 1, labourRate: 80 }), 'quoteTotal', 'money').value,
    ).toBe(80);
  });

  it('with a margin of the whole price is refused, and the row named', () => {
    const read = readInputs(fields, {
      quoteAs: 'lines',
      lines: [{ part: 'Belt', amount: 10, basis: 'margin', share: 100 }],
      labourHours: 0,
    });
    const result = read.ok ? compute(read.inputs) : { ok: false as const, problems: [] };
    expect(result.ok ? [] : result.problems.map((p) => [p.field, p.code])).toEqual([
      ['lines.1.share', 'margin-too-large'],
    ]);
  });
});

it('every verdict has words', () => {
  for (const raw of [
    {},
    { quote: 2000 },
    { quote: 320 },
    { chanceWorn: 100 },
    { engine: 'renewed' },
    { inspectionMinutes: 22 },
    { inspectionMinutes: 120 },
    { quote: 250, inspectionMinutes: 120 },
    { asIs: 3000 },
    { engine: 'good', alreadySpent: 10, workingValue: 200 },
  ] as const) {
    for (const v of answer(raw).values) if (v.kind === 'verdict') expect(words.verdicts[v.code], v.code).toBeDefined();
  }
});

it('both tables say the same of the same case', () => {
  const a = answer({ draws: 100 });
  const service = valueOf(a, 'serviceTable', 'table').rows.find(([years]) => years === 3);
  const flip = valueOf(a, 'flipTable', 'table').rows.find(([years]) => years === 3);
  expect(flip?.[3]).toBe(service?.[3]);
  expect(Number(service?.[2]) - Number(service?.[1])).toBeCloseTo(Number(service?.[3]), 9);
});

it('a line is priced as it says: as typed, with a markup, with a margin', () => {
  // A margin of 40 % is a markup of 66.67 %, the usual example of both.
  const line = { part: 'belt', quantity: 1, amount: 60, share: 0.4 };
  const lines = (['price', 'markup', 'margin'] as const).map((basis) => ({ ...line, basis }));
  const quote = addUpQuote(lines, 0, 0, { parts: 0, labour: 0, consumables: 0, itemised: true });
  expect(quote.lines.map((l) => l.price)).toEqual([60, 84, 100]);
});
