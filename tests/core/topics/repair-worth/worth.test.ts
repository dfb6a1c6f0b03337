import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readInputs } from '../../../../src/core/contract/read-inputs.ts';
import { valueOf, type Answer } from '../../../../src/core/contract/result.ts';
import type { RawInputs } from '../../../../src/core/contract/field.ts';
import {
  compute,
  economicLife,
  annualCosts,
  fields,
  mostWorthPaying,
  newPriceToFlip,
  newYearly,
  repairYearly,
  serviceToFlip,
  words,
  type Comparison,
} from '../../../../src/core/topics/repair-worth/index.ts';

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
      { numRuns: 20 },
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

  it('takes back the advice to repair when the chance of a worn engine eats up what the repair is worth', () => {
    // The worked example is worth 343.32 with a sound engine: 291.82 at 15 %, 240.32 at 30 %, nothing at 100 %.
    const code = (raw: RawInputs) => valueOf(answer(raw), 'verdict', 'verdict').code;
    expect(code({})).toBe('worth-repairing');
    expect(code({ chanceWorn: 30 })).toBe('engine-in-doubt');
    expect(code({ chanceWorn: 100 })).toBe('engine-in-doubt');
    expect(code({ chanceWorn: 30, engineChecked: true })).toBe('worth-repairing');
    expect(code({ chanceWorn: 30, quote: 400 })).toBe('buy-new');
  });

  it('is not asked for once the engine has been checked', () => {
    const a = answer({ engineChecked: true });
    expect(valueOf(a, 'engineFirst', 'verdict').code).toBe('engine-checked');
    expect(a.cautions).toEqual([]);
  });
});

describe('a quote', () => {
  it('adds up: its printed lines and the rounding give the total', () => {
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
        fc.integer({ min: 0, max: 1000 }),
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
            draws: 100,
          });
          const cents = (key: string) =>
            Math.round(100 * (a.values.some((v) => v.key === key) ? valueOf(a, key, 'money').value : 0));
          expect(
            cents('partsTotal') +
              cents('labourTotal') +
              cents('consumablesTotal') +
              cents('taxTotal') +
              cents('rounding'),
          ).toBe(cents('quoteTotal'));
          expect(Math.abs(cents('rounding'))).toBeLessThanOrEqual(2);
        },
      ),
    );
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
    { asIs: 3000 },
    { engineChecked: true, alreadySpent: 10, workingValue: 200 },
  ] as const) {
    for (const v of answer(raw).values) if (v.kind === 'verdict') expect(words.verdicts[v.code], v.code).toBeDefined();
  }
});
