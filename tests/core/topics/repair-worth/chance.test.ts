import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../../../src/core/chance/index.ts';
import {
  type Comparison,
  type Doubt,
  mostWorthPaying,
  newYearly,
  repairYearly,
  simulate,
} from '../../../../src/core/topics/repair-worth/index.ts';
import { answerOf, figureOf, has } from '../answer.ts';
import { valueOf } from '../../../../src/core/contract/result.ts';
import { roundMoney, toCents } from '../../../../src/core/money/index.ts';

const machine: Comparison = {
  rate: 0.08,
  repair: 260,
  asIs: 120,
  service: 3,
  endValue: 40,
  repairRunning: 140,
  repairDown: 120,
  comebackChance: 0.1,
  comebackCost: 150,
  newFirst: 1340,
  newLife: 6,
  newResale: 150,
  newRunning: 90,
};
const doubt: Doubt = { repair: 0.1, service: 0.4, newFirst: 0.1, newLife: 0.3, worn: 0.15 };
const sure: Doubt = { repair: 0, service: 0, newFirst: 0, newLife: 0, worn: 0 };

describe('random numbers', () => {
  it('are those of the standard library of another language, from the same seed', () => {
    const draw = randomFrom(1);
    let x = 0;
    for (let k = 0; k < 10000; k++) x = draw();
    expect(Math.round(x * 2147483647)).toBe(399268537);
    const again = randomFrom(42);
    expect(Array.from({ length: 5 }, () => Math.round(again() * 2147483647))).toEqual([
      2027382, 1226992407, 551494037, 961371815, 1404753842,
    ]);
  });
});

describe('the chance that repair is cheaper', () => {
  it('comes out the same from the same start number', () => {
    expect(simulate(machine, doubt, 1000, 7)).toEqual(simulate(machine, doubt, 1000, 7));
  });

  it('differs a little from another start number, within its sampling error', () => {
    const [one, two] = [simulate(machine, doubt, 20000, 1), simulate(machine, doubt, 20000, 2)];
    expect(one).not.toEqual(two);
    // Five standard deviations of a difference: one chance in a million of being wrong by accident.
    expect(Math.abs(one.chance - two.chance)).toBeLessThan(5 * Math.hypot(one.error, two.error));
  });

  it('is all or nothing when every figure is certain', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1500 }), (repair) => {
        const c = { ...machine, repair, comebackChance: 0 };
        const drawn = simulate(c, sure, 100, 1);
        expect(drawn.chance).toBe(newYearly(c) - repairYearly(c) >= 0 ? 1 : 0);
        expect(drawn.repairYearly).toBeCloseTo(repairYearly(c), 6);
      }),
    );
  });

  it('is the share of sound engines when only that is in doubt and repair pays', () => {
    const c = { ...machine, repair: 0.5 * mostWorthPaying(machine), comebackChance: 0 };
    const drawn = simulate(c, { ...sure, worn: 0.3 }, 20000, 3);
    expect(Math.abs(drawn.chance - 0.7)).toBeLessThan(5 * drawn.error);
  });

  it('falls as the quote rises', () => {
    const at = (repair: number) => simulate({ ...machine, repair }, doubt, 4000, 1).chance;
    expect([100, 200, 300, 400, 500].map(at)).toEqual([100, 200, 300, 400, 500].map(at).sort((a, b) => b - a));
  });
});

describe('cents', () => {
  it('round half up, also where a binary fraction is a hair too small', () => {
    expect([1.005, 2.675, 0.125, 285.1333, 7.4669].map(toCents)).toEqual([101, 268, 13, 28513, 747]);
  });

  it('keep the sign, and know no minus nothing', () => {
    expect(toCents(-1.005)).toBe(-101);
    expect(Object.is(toCents(-0.001), 0)).toBe(true);
    expect(roundMoney(-2.345)).toBe(-2.35);
  });
});

describe('the range beside the chance', () => {
  // Two standard errors of a share from n draws: 2 sqrt(p (1 - p) / n); BIPM JCGM 100, 4.3 and G.1.2, k = 2.
  it('is two standard errors of the draws to each side, within 0 and 1', () => {
    const draws = 2500;
    const more = { quote: 700, newPrice: 1300, spreadQuote: '20 %', spreadService: '50 %', draws };
    const answer = answerOf('repair-worth', more);
    expect(has(answer, 'chance')).toBe(true);
    const p = figureOf(answer, 'chance');
    const { low = 0, high = 1 } = valueOf(answer, 'chance', 'quantity');
    expect(p * (1 - p)).toBeGreaterThan(0);
    const reach = 2 * Math.sqrt((p * (1 - p)) / draws);
    expect(high).toBeCloseTo(Math.min(1, p + reach), 3);
    expect(low).toBeCloseTo(Math.max(0, p - reach), 3);
  });
});
