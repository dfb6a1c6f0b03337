/**
 * Shops and machines far from the worked example. Limits are from tests/derived/repair-worth-shops.py, worked apart
 * from the project; the reason for each advice stands beside it. Six or seven boxes filled, the rest left empty.
 */
import { describe, expect, it } from 'vitest';
import type { RawInputs } from '../../../../src/core/contract/field.ts';
import { readInputs } from '../../../../src/core/contract/read-inputs.ts';
import { valueOf, type Answer } from '../../../../src/core/contract/result.ts';
import { compute, fields } from '../../../../src/core/topics/repair-worth/index.ts';

function answer(raw: RawInputs): Answer {
  const read = readInputs(fields, { draws: 100, ...raw });
  if (!read.ok) throw new Error(JSON.stringify(read));
  const result = compute(read.inputs);
  if (!result.ok) throw new Error(JSON.stringify(result));
  return result;
}
const boxes = (
  quote: number,
  asIs: number,
  serviceYears: number,
  hoursPerYear: number,
  newPrice: number,
  newLife: number,
) => ({ quote, asIs, serviceYears, hoursPerYear, newPrice, newLife });
const verdictOf = (a: Answer) => valueOf(a, 'verdict', 'verdict');
const limit = (a: Answer) => valueOf(a, 'mostWorth', 'money').value;

describe('a shop asks', () => {
  it.each([
    // Somebody pays 400 for it broken: repairing means giving that up, so little is left for the repair.
    ['about a saw that fetches 400 broken', boxes(350, 400, 3, 150, 1200, 6), {}, 159.9, 'buy-new'],
    // The same saw as scrap: the chance of a worn engine takes 15 % of the limit, which leaves 299.96 against 350.
    ['about the same saw worth 80 as scrap', boxes(350, 80, 3, 150, 1200, 6), {}, 352.89, 'buy-new'],
    // With the engine looked at and good the quote is within a tenth of the limit.
    [
      'about it with the engine looked at',
      boxes(350, 80, 3, 150, 1200, 6),
      { engine: 'good' },
      352.89,
      'too-close-to-call',
    ],
    // A young saw, a small repair, four more years: far below its limit either way.
    ['about belt and bearing on a young saw', boxes(180, 300, 4, 150, 1300, 6), {}, 406.26, 'worth-repairing'],
    // A cylinder kit renews the engine: no chance of a worn one, and no look asked for. 520 is too much, 300 is not.
    ['about a cylinder kit at 520', boxes(520, 120, 3, 150, 1250, 6), { engine: 'renewed' }, 345.48, 'buy-new'],
    ['about a cylinder kit at 300', boxes(300, 120, 3, 150, 1250, 6), { engine: 'renewed' }, 345.48, 'worth-repairing'],
    // 600 hours in the one year it has left wear as much as four years elsewhere: upkeep 588 against 378.
    ['from a hire yard', boxes(320, 120, 1, 600, 1400, 2), {}, 204.04, 'buy-new'],
    // Twenty hours a year: hardly any upkeep, nobody waits for it, eight years ahead. A look is worth 24.87, over its 18.75.
    ['from a hobby shed', boxes(260, 50, 8, 20, 900, 15), {}, 500.65, 'engine-in-doubt'],
    [
      'from a hobby shed, engine looked at',
      boxes(260, 50, 8, 20, 900, 15),
      { engine: 'good' },
      500.65,
      'worth-repairing',
    ],
    // A big machine: upkeep, days and what it fetches grow with its price. At 2,200 against 2,271 the engine decides.
    ['about a floor saw', boxes(2200, 1500, 3, 150, 9500, 6), {}, 2271.05, 'engine-in-doubt'],
    [
      'about a floor saw with its own figures',
      boxes(2200, 1500, 3, 150, 9500, 6),
      { endValue: 800, newResale: 1500, repairRunning: 900, newRunning: 500, downtimeDay: 250, comebackCost: 1140 },
      2157.02,
      'buy-new',
    ],
  ] as const)('%s', (_, six, more, most, code) => {
    const a = answer({ ...six, ...more });
    expect(limit(a)).toBeCloseTo(most, 2);
    expect(verdictOf(a).code).toBe(code);
  });

  it('why no repair pays, and hears the largest reason: ten days of stop at 120', () => {
    const a = answer({ ...boxes(260, 120, 3, 150, 1300, 6), repairDays: 10, downtimeDay: 120 });
    expect(verdictOf(a)).toMatchObject({ code: 'no-repair-worth-it', data: { reason: 'stop', amount: 1200 } });
  });
  it.each([
    ['as-it-stands', { asIs: 1500 }, 1500],
    // 900 against 87.75 a year over three years at 8 %: 812.25 x 2.5771.
    ['upkeep', { repairRunning: 900 }, 2093.25],
    // 90 % of 5,000, a year off: 4,500 / 1.08.
    ['comeback', { comebackChance: 90, comebackCost: 5000 }, 4166.67],
  ] as const)('why no repair pays: %s', (reason, more, amount) => {
    const { code, data } = verdictOf(answer(more));
    expect([code, data?.['reason'], data?.['amount']]).toEqual(['no-repair-worth-it', reason, amount]);
  });
});

describe('the boxes left empty', () => {
  it.each([
    ['yen', 150],
    ['forint', 360],
    ['dinar', 0.3],
  ])('are the same shares in %s: the same saw gets the same advice', (_, times) => {
    const scaled = (x: number) => x * times;
    const [base, other] = [
      answer({ ...boxes(260, 120, 3, 150, 1300, 6), labourRate: 75 }),
      answer({
        ...boxes(scaled(260), scaled(120), 3, 150, scaled(1300), 6),
        labourRate: scaled(75),
      }),
    ];
    expect(limit(other) / times).toBeCloseTo(limit(base), 1);
    expect(verdictOf(other).code).toBe(verdictOf(base).code);
    expect(valueOf(other, 'chance', 'quantity').value).toBeCloseTo(valueOf(base, 'chance', 'quantity').value, 9);
  });
  it('let the hours a year count: the fewer, the more a repair may cost', () => {
    const limits = [20, 150, 600].map((hoursPerYear) => limit(answer({ hoursPerYear })));
    expect(limits[0]).toBeGreaterThan(limits[1] ?? 0);
    expect(limits[1]).toBeGreaterThan(limits[2] ?? 0);
    // From the same script: 20 hours a year, all else as in the worked example.
    expect(limits[0]).toBeCloseTo(553.64, 2);
  });
  it('are listed with what was taken, and one that is filled is not', () => {
    const taken = valueOf(answer({ endValue: 40 }), 'taken', 'table');
    expect(taken.rows.map(([label, amount]) => [label, amount])).toEqual([
      ['Upkeep a year, repaired machine', 136.5],
      ['What a comeback costs', 156],
      ['The new one fetches at the end', 156],
      ['Upkeep a year, new machine', 87.75],
      ['A day without the machine costs', 39],
    ]);
    for (const [label] of taken.rows) expect(fields.map((f) => f.label)).toContain(label);
  });
});

describe('at its limits', () => {
  const worth = limit(answer({ engine: 'good' }));
  it.each([
    [0.899, 'worth-repairing'],
    [0.901, 'too-close-to-call'],
    [1.099, 'too-close-to-call'],
    [1.101, 'buy-new'],
  ])('a quote of %f of the most worth paying is: %s', (share, code) => {
    expect(verdictOf(answer({ engine: 'good', quote: worth * share })).code).toBe(code);
  });
  it.each([
    // The look of the worked example is worth 30.76: 19.69 min at 75 an hour is a fee of 24.61, a quarter below it.
    [19.6, 'look-first', 'engine-in-doubt'],
    [19.8, 'look-about-even', 'worth-repairing'],
    [32.7, 'look-about-even', 'worth-repairing'],
    [32.9, 'look-costs-more', 'worth-repairing'],
  ])('a look of %f minutes is: %s', (inspectionMinutes, engine, code) => {
    const a = answer({ inspectionMinutes });
    expect([valueOf(a, 'engineFirst', 'verdict').code, verdictOf(a).code]).toEqual([engine, code]);
  });
  it.each([
    [650, 'rule-for'],
    [650.01, 'rule-against'],
  ])('half the price of new, a quote of %f: %s', (quote, code) => {
    expect(valueOf(answer({ quote }), 'halfRule', 'verdict').code).toBe(code);
  });
  it.each([
    [300, 'rule-for'],
    [300.01, 'rule-against'],
  ])('three quarters of its worth of 400, a quote of %f: %s', (quote, code) => {
    expect(valueOf(answer({ quote, workingValue: 400 }), 'threeQuarterRule', 'verdict').code).toBe(code);
  });
  it('a service of more than thirty years is refused with both figures to look at', () => {
    const read = readInputs(fields, { serviceAs: 'hours', serviceHours: 450, hoursPerYear: 14.9 });
    const result = read.ok ? compute(read.inputs) : read;
    expect(result).toMatchObject({ ok: false, problems: [{ field: 'serviceHours', code: 'service-too-long' }] });
    expect(limit(answer({ serviceAs: 'hours', serviceHours: 450, hoursPerYear: 15 }))).toBeGreaterThan(0);
  });
});
