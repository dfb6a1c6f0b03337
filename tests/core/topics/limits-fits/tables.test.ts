/** The tables against the standard's formulas. Every cell that misses its formula is listed, so that a slip in copying shows. */
import { describe, expect, it } from 'vitest';
import {
  deltaAt,
  deviationAt,
  grades,
  readZone,
  stepEnds,
  toleranceAt,
} from '../../../../src/core/topics/limits-fits/index.ts';
import { deviationFormulas, mainSteps, meanSize, sumFormulas, toleranceByFormula } from './standard-formulas.ts';

const main = mainSteps.map((upTo, i) => ({ upTo, over: mainSteps[i - 1] ?? 0 }));
const sub = stepEnds.filter((e) => e > 1 && e <= 500).map((upTo, i, all) => ({ upTo, over: all[i - 1] ?? 0 }));

function tolerance(upTo: number, grade: string): number {
  const found = toleranceAt(upTo, grade as (typeof grades)[number]);
  if (found === undefined) throw new Error(`No IT${grade} up to ${upTo} mm.`);
  return found;
}

function deviation(upTo: number, zone: string): number | undefined {
  const read = readZone(zone);
  return read && deviationAt(upTo, read)?.value;
}

/** Names of the cells off by more than `share` of the formula and by more than rounding to `unit`. */
function misses(
  cells: readonly { name: string; table: number | undefined; formula: number }[],
  share: number,
  unit = 0.6,
): string[] {
  return cells
    .filter((c) => c.table !== undefined && Math.abs(c.table - c.formula) > Math.max(share * c.formula, unit))
    .map((c) => c.name);
}

describe('ISO 286-1 tables and formulas', () => {
  it('IT5 to IT18 follow k times i within 5 %, but for the smallest sizes', () => {
    const cells = main.flatMap(({ over, upTo }) =>
      grades.slice(6).map((g) => ({
        name: `IT${g} ${upTo}`,
        table: tolerance(upTo, g),
        formula: toleranceByFormula(g, meanSize(over, upTo)) ?? 0,
      })),
    );
    expect(misses(cells, 0.055)).toEqual([
      'IT7 3',
      'IT9 3',
      'IT10 3',
      'IT11 3',
      'IT12 3',
      'IT14 3',
      'IT15 3',
      'IT16 3',
      'IT17 3',
      'IT6 6',
    ]);
  });

  it('IT01 to IT1 follow their straight lines within 30 % or a tenth of a micrometre', () => {
    const cells = main.flatMap(({ over, upTo }) =>
      ['01', '0', '1'].map((g) => ({
        name: `IT${g} ${upTo}`,
        table: tolerance(upTo, g),
        formula: toleranceByFormula(g, meanSize(over, upTo)) ?? 0,
      })),
    );
    expect(misses(cells, 0.3, 0.1)).toEqual([]);
  });

  it('IT2 to IT4 climb evenly from IT1 to IT5', () => {
    for (const { upTo } of main) {
      const ratio = (tolerance(upTo, '5') / tolerance(upTo, '1')) ** 0.25;
      for (const [g, n] of [
        ['2', 1],
        ['3', 2],
        ['4', 3],
      ] as const) {
        const even = tolerance(upTo, '1') * ratio ** n;
        // The standard says "roughly"; a quarter of the value or half a micrometre is what it takes.
        expect(Math.abs(tolerance(upTo, g) - even), `IT${g} ${upTo}`).toBeLessThanOrEqual(Math.max(0.25 * even, 0.5));
      }
    }
  });

  it('five grades coarser is ten times as wide from IT6 on, but for IT11 over 3 to 6 mm', () => {
    const off = main.flatMap(({ upTo }) =>
      grades
        .slice(7, 15)
        .filter((g) => tolerance(upTo, String(Number(g) + 5)) !== 10 * tolerance(upTo, g))
        .map((g) => `IT${Number(g) + 5} ${upTo}`),
    );
    expect(off).toEqual(['IT11 6']);
  });

  it('shafts d, e, f, g and n follow their powers within 5 %, but for three cells up to 3 mm', () => {
    const cells = main.flatMap(({ over, upTo }) =>
      Object.entries(deviationFormulas).map(([l, f]) => ({
        name: `${l} ${upTo}`,
        table: Math.abs(deviation(upTo, `${l}7`) ?? NaN),
        formula: f(meanSize(over, upTo)),
      })),
    );
    expect(misses(cells, 0.05)).toEqual(['f 3', 'g 3', 'n 3']);
  });

  it('m is IT7 less IT6, p is IT7 and up to 5 more, both above 3 mm', () => {
    for (const { upTo } of main.slice(1)) {
      expect(deviation(upTo, 'm7'), `m ${upTo}`).toBe(tolerance(upTo, '7') - tolerance(upTo, '6'));
      const more = (deviation(upTo, 'p7') ?? NaN) - tolerance(upTo, '7');
      expect(more >= 0 && more <= 5, `p ${upTo}`).toBe(true);
    }
  });

  it('s is IT8 and up to 4 more to 50 mm, IT7 and 0.4 of the size above', () => {
    for (const { over, upTo } of sub) {
      const s = deviation(upTo, 's7') ?? NaN;
      if (upTo <= 50) expect(s - tolerance(upTo, '8'), `s ${upTo}`).toBeLessThanOrEqual(4);
      else
        expect(Math.abs(s / (tolerance(upTo, '7') + 0.4 * meanSize(over, upTo)) - 1), `s ${upTo}`).toBeLessThan(0.05);
    }
  });

  it('r is the geometric mean of p and s, to 1.2 micrometres', () => {
    for (const { upTo } of sub)
      expect(
        Math.abs(
          (deviation(upTo, 'r7') ?? NaN) - Math.sqrt((deviation(upTo, 'p7') ?? NaN) * (deviation(upTo, 's7') ?? NaN)),
        ),
        `r ${upTo}`,
      ).toBeLessThan(1.2);
  });

  it('t to zc are a tolerance and a multiple of the size, but for small sizes where they are larger', () => {
    const cells = sub.flatMap(({ over, upTo }) =>
      Object.entries(sumFormulas).map(([l, { grade, m }]) => ({
        name: `${l} ${upTo}`,
        table: deviation(upTo, `${l}7`),
        formula: tolerance(upTo, grade) + m * meanSize(over, upTo),
      })),
    );
    expect(misses(cells, 0.05)).toEqual([
      'u 3',
      'x 3',
      'z 3',
      'za 3',
      'zb 3',
      'zc 3',
      'u 6',
      'x 6',
      'z 6',
      'za 6',
      'zb 6',
      'zc 6',
      'u 10',
      'x 10',
      'z 10',
      'za 10',
      'u 14',
      'x 14',
      'z 14',
      't 30',
    ]);
  });

  it('delta is the step from the finer grade, and nothing up to 3 mm', () => {
    for (const { upTo } of main) {
      for (const n of [3, 4, 5, 6, 7, 8]) {
        const step = tolerance(upTo, String(n)) - tolerance(upTo, String(n - 1));
        expect(deltaAt(upTo, String(n) as (typeof grades)[number]), `IT${n} ${upTo}`).toBe(upTo <= 3 ? 0 : step);
      }
    }
  });
});
