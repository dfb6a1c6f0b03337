/** Over 500 up to 3150 mm: what changes there, and the tables against the standard's formulas. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { blocks as seats, ringFit } from '../../../../src/core/topics/bearing-fit/index.ts';
import {
  compute,
  deviationAt,
  fitOf,
  grades,
  letters,
  limitsAt,
  readZone,
  stepEnds,
  toleranceAt,
  whyRefused,
} from '../../../../src/core/topics/limits-fits/index.ts';
import { largeDeviations, largeMultiples, largeSteps, largeUnit, meanSize } from './standard-formulas.ts';

const um = (m: number | undefined) => (m === undefined ? NaN : Math.round(m * 1e7) / 10);
const large = stepEnds.filter((e) => e > 500);
const below = (end: number) => stepEnds.filter((e) => e < end).at(-1) ?? 0;
const main = largeSteps.map((upTo, i) => ({ upTo, over: largeSteps[i - 1] ?? 500 }));
const tightest = ['k', 'm', 'n', 'p', 'r', 's', 't', 'u'] as const;
const kept = ['d', 'e', 'f', 'g', 'h', 'js', ...tightest] as const;
const largeSize = fc.double({ min: 500.001, max: 3150, noNaN: true }).map((mm) => mm / 1000);
const anyGrade = fc.constantFrom(...grades.slice(2));

function cell(upTo: number, zone: string): number {
  const read = readZone(zone);
  return Math.abs((read && deviationAt(upTo, read)?.value) ?? NaN);
}

function grade(upTo: number, name: string): number {
  return toleranceAt(upTo, name as (typeof grades)[number]) ?? NaN;
}

/** Cells that lie more than `share` off their formula. */
function off(cells: readonly { name: string; table: number; formula: number }[], share: number): string[] {
  return cells.filter(({ table, formula }) => !(Math.abs(table / formula - 1) <= share)).map((c) => c.name);
}

describe('limits and fits above 500 mm', () => {
  it('500 mm still lies in the step from 450, and the next hair over it does not', () => {
    expect(limitsAt(0.5, 'r6')).toEqual(limitsAt(0.451, 'r6'));
    expect(limitsAt(0.5001, 'r6')).toEqual(limitsAt(0.56, 'r6'));
    expect(limitsAt(0.5, 'h01')).toBeDefined();
    expect(limitsAt(0.5001, 'h01')).toBeUndefined();
    expect(limitsAt(3.15, 'H7')).toBeDefined();
    expect(limitsAt((3150 / 25.4) * 0.0254, 'H7')).toEqual(limitsAt(3.15, 'H7'));
  });

  it('holes mirror shafts: the same letter and grade, turned over', () => {
    fc.assert(
      fc.property(largeSize, fc.constantFrom(...kept), anyGrade, (size, l, g) => {
        const [hole, shaft] = [limitsAt(size, `${l.toUpperCase()}${g}`), limitsAt(size, `${l}${g}`)];
        expect(shaft).toBeDefined();
        const noHole = l === 'k' && grades.indexOf(g) > grades.indexOf('8');
        expect(hole === undefined).toBe(noHole);
        if (hole && shaft) expect([um(hole.upper), um(hole.lower)]).toEqual([um(0 - shaft.lower), um(0 - shaft.upper)]);
      }),
    );
  });

  it('so hole basis and shaft basis give the same fit at equal grades, with no delta', () => {
    for (const end of large)
      for (const l of [...tightest, 'd', 'e', 'f', 'g'])
        for (const g of ['5', '6', '7', '8']) {
          const [hole, h, H, shaft] = [`${l.toUpperCase()}${g}`, `h${g}`, `H${g}`, `${l}${g}`].map((zone) =>
            limitsAt(end / 1000, zone),
          );
          if (!hole || !h || !H || !shaft) throw new Error(`${l}${g} ${end}`);
          expect(um(fitOf(hole, h).most), `${l}${g} ${end}`).toBe(um(fitOf(H, shaft).most));
          expect(um(fitOf(hole, h).least), `${l}${g} ${end}`).toBe(um(fitOf(H, shaft).least));
        }
  });

  it('deviations grow from step to step and, within a step, from letter to letter', () => {
    for (const end of large) {
      for (const l of kept)
        if (!['h', 'js', 'k'].includes(l))
          expect(cell(end, `${l}7`), `${l} ${end}`).toBeGreaterThanOrEqual(cell(below(end), `${l}7`));
      for (const order of [tightest, ['g', 'f', 'e', 'd']])
        order
          .slice(1)
          .forEach((l, i) => expect(cell(end, `${l}7`), `${l} ${end}`).toBeGreaterThan(cell(end, `${order[i]}7`)));
    }
  });

  it('only 14 letters and grades 1 to 18 are left; the rest are refused with neighbours that exist', () => {
    fc.assert(
      fc.property(
        largeSize,
        fc.boolean(),
        fc.constantFrom(...letters),
        fc.constantFrom(...grades),
        (size, hole, l, g) => {
          const zone = `${hole ? l.toUpperCase() : l}${g}`;
          const stays =
            (kept as readonly string[]).includes(l) &&
            grades.indexOf(g) >= 2 &&
            !(hole && l === 'k' && grades.indexOf(g) > grades.indexOf('8'));
          expect(limitsAt(size, zone) !== undefined, zone).toBe(stays);
          const problem = whyRefused(size, zone, { size: 'size', zone: 'zone' });
          expect(problem === undefined).toBe(stays);
          for (const near of String(problem?.data?.['nearest'] ?? 'H7').split(', '))
            expect(limitsAt(size, near), `${zone} -> ${near}`).toBeDefined();
        },
      ),
    );
  });

  it('a zone that 500 mm still has is said to end there; a blank cell is not', () => {
    const code = (mm: number, zone: string) => whyRefused(mm / 1000, zone, { size: 'size', zone: 'zone' })?.code;
    expect([code(600, 'c11'), code(600, 'J7'), code(600, 'x8'), code(600, 'H0')]).toEqual([
      'zone-ends',
      'zone-ends',
      'zone-ends',
      'zone-ends',
    ]);
    expect([code(600, 'K9'), code(600, 'cd8'), code(600, 'H19')]).toEqual([
      'zone-undefined',
      'zone-undefined',
      'zone-undefined',
    ]);
    expect(compute({ size: 0.6, zone: 'K7', mate: 'j6', halves: 'exact' })).toMatchObject({
      ok: false,
      problems: [{ field: 'mate', code: 'zone-ends' }],
    });
  });

  it('a bearing seat above 500 mm is still refused: there is no ring to go with it', () => {
    expect(ringFit('shaft', 0.5, 'k6', 'Normal')).toBeDefined();
    expect(ringFit('shaft', 0.501, 'k6', 'Normal')).toBeUndefined();
    expect(seats.fit.compute({ seat: 'shaft', size: 0.6, zone: 'k6', ringClass: 'Normal' })).toMatchObject({
      ok: false,
      problems: [{ code: 'ring-outside-table' }],
    });
    expect(seats.fit.compute({ seat: 'shaft', size: 0.6, zone: 'j6', ringClass: 'Normal' })).toMatchObject({
      ok: false,
      problems: [{ code: 'zone-ends' }],
    });
  });

  it('every grade follows its multiple of I = 0.004 D + 2.1 within 4 %, but for three cells', () => {
    const cells = main.flatMap(({ over, upTo }) =>
      Object.entries(largeMultiples).map(([g, k]) => ({
        name: `IT${g} ${upTo}`,
        table: grade(upTo, g),
        formula: k * largeUnit(meanSize(over, upTo)),
      })),
    );
    expect(cells).toHaveLength(8 * 18);
    expect(off(cells, 0.04)).toEqual(['IT2 630', 'IT5 630', 'IT5 800']);
  });

  it('five grades coarser is ten times as wide from IT6 on', () => {
    for (const { upTo } of main)
      for (const g of grades.slice(7, 15))
        expect(grade(upTo, String(Number(g) + 5)), `IT${g} ${upTo}`).toBe(10 * grade(upTo, g));
  });

  it('d to g and m to p follow their formulas within 4 %, but for three cells', () => {
    const cells = main.flatMap(({ over, upTo }) =>
      Object.entries(largeDeviations).map(([l, f]) => ({
        name: `${l} ${upTo}`,
        table: cell(upTo, `${l}7`),
        formula: f(meanSize(over, upTo)),
      })),
    );
    expect(off(cells, 0.04)).toEqual(['e 1000', 'm 2000', 'm 3150']);
  });

  it('s, t and u are IT7 and 0.4, 0.63 and 1 times the size; r is the geometric mean of p and s', () => {
    const cells = large.flatMap((upTo) => {
      const D = meanSize(below(upTo), upTo);
      const sums = (
        [
          ['s', 0.4],
          ['t', 0.63],
          ['u', 1],
        ] as const
      ).map(([l, m]) => ({ name: `${l} ${upTo}`, table: cell(upTo, `${l}7`), formula: grade(upTo, '7') + m * D }));
      return [
        ...sums,
        { name: `r ${upTo}`, table: cell(upTo, 'r7'), formula: Math.sqrt(cell(upTo, 'p7') * cell(upTo, 's7')) },
      ];
    });
    expect(off(cells, 0.025)).toEqual(['r 1600']);
  });
});
