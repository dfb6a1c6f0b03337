import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  climb,
  compute,
  example,
  fields,
  pitchRadius,
  statesOf,
} from '../../../../src/core/topics/split-pulley/index.ts';
import { readInputs } from '../../../../src/core/contract/read-inputs.ts';
import { valueOf, type Answer } from '../../../../src/core/contract/result.ts';
import type { RawInputs } from '../../../../src/core/contract/field.ts';

function answer(more: RawInputs): Answer {
  const read = readInputs(fields, { ...example, ...more });
  if (!read.ok) throw new Error(JSON.stringify(read));
  const result = compute(read.inputs);
  if (!result.ok) throw new Error(JSON.stringify(result));
  return result;
}

const angles = fc.double({ min: 0.3, max: 1, noNaN: true });
const gaps = fc.double({ min: 0, max: 0.01, noNaN: true });

describe('a belt in a split pulley', () => {
  it('lies exactly where the cones stand as far apart as it is wide', () => {
    fc.assert(
      fc.property(angles, gaps, fc.double({ min: 0.008, max: 0.02, noNaN: true }), (angle, gap, belt) => {
        const [closed, nominal] = [0.08, 0.013];
        const r = pitchRadius({ closed, angle, nominal, belt }, gap);
        expect(nominal + gap + 2 * (r - closed) * Math.tan(angle / 2)).toBeCloseTo(belt, 12);
      }),
    );
  });

  it('climbs twice as far for twice the gap, and further in a narrower V', () => {
    fc.assert(
      fc.property(angles, gaps, (angle, gap) => Math.abs(climb(2 * gap, angle) - 2 * climb(gap, angle)) < 1e-12),
    );
    fc.assert(fc.property(angles, (angle) => climb(0.001, angle) > climb(0.001, angle * 1.01)));
  });

  it('climbs and grows its path with every pass, until it is closed', () => {
    const rows = valueOf(answer({ beltWidthNow: '13 mm' }), 'states', 'table').rows as number[][];
    for (const [i, row] of rows.entries()) {
      const before = rows[i - 1];
      if (!before) continue;
      expect(row[1]).toBeLessThan(before[1] as number);
      expect(row[2]).toBeGreaterThan(before[2] as number);
      expect(row[3]).toBeGreaterThan(before[3] as number);
    }
    expect(rows.at(-1)?.[1]).toBe(0);
    expect(rows.at(-1)?.[2]).toBeCloseTo(0.05, 12);
    expect(rows.length).toBe(17);
  });

  it('is pinched when drawn together in one go, unless one pass closes the gap', () => {
    expect(valueOf(answer({}), 'verdict', 'verdict').code).toBe('one-go-pinches');
    expect(valueOf(answer({ gapStart: 0.3 }), 'verdict', 'verdict').code).toBe('one-pass-enough');
  });

  it('turns the blades faster when it is worn narrow, and warns of it', () => {
    const worn = answer({ beltWidthNow: '11.5 mm' });
    expect(valueOf(worn, 'faster', 'quantity').value).toBeGreaterThan(0);
    expect(worn.cautions.map((c) => c.hazard)).toContain('blade-overspeed');
    expect(valueOf(answer({ beltWidthNow: '13 mm' }), 'faster', 'quantity').value).toBeCloseTo(0, 12);
    expect(valueOf(answer({ beltWidthNow: '14 mm' }), 'widthVerdict', 'verdict').code).toBe('belt-wide');
  });

  it('stays slack when it is longer than the path it closes to', () => {
    expect(valueOf(answer({ beltLength: '950 mm' }), 'fitVerdict', 'verdict').code).toBe('stays-slack');
    expect(valueOf(answer({ beltLength: '880 mm' }), 'fitVerdict', 'verdict').code).toBe('draws-tight');
  });

  it('changes its verdicts at their limits and not beside them', () => {
    const code = (more: RawInputs, key: string) => valueOf(answer(more), key, 'verdict').code;
    // A quarter turn of 1.25 mm closes 0.3125 mm.
    const go = (gap: string) => code({ gapStart: gap }, 'verdict');
    expect(['0.312 mm', '0.3125 mm', '0.313 mm'].map(go)).toEqual([
      'one-pass-enough',
      'one-pass-enough',
      'one-go-pinches',
    ]);
    // 3 % of 10 mm either way, our choice.
    const width = (now: string) => code({ beltWidth: '10 mm', beltWidthNow: now }, 'widthVerdict');
    expect(['9.69 mm', '9.7 mm', '9.71 mm'].map(width)).toEqual([
      'belt-narrow',
      'belt-width-right',
      'belt-width-right',
    ]);
    expect(['10.29 mm', '10.3 mm', '10.31 mm'].map(width)).toEqual([
      'belt-width-right',
      'belt-width-right',
      'belt-wide',
    ]);
    // Two pulleys of 100 mm at 300 mm: a path of 600 + 100 pi = 914.159 mm.
    const fit = (length: string) => code({ drivePulley: '100 mm', beltLength: length }, 'fitVerdict');
    expect(['914.1 mm', '914.2 mm'].map(fit)).toEqual(['draws-tight', 'stays-slack']);
    // Closed on a belt of the right width the pitch diameter is 100 mm.
    const rides = (rim: string) => answer({ rim }).values.some((v) => v.key === 'rimVerdict');
    expect(['99.9 mm', '100 mm', '100.1 mm'].map(rides)).toEqual([true, false, false]);
  });

  it('judges neither length nor width of a belt nobody measured', () => {
    const keys = answer({}).values.map((v) => v.key);
    expect(keys).not.toContain('fitVerdict');
    expect(keys).not.toContain('widthVerdict');
  });

  it('is drawn pass by pass from open to as far as it is closed', () => {
    const cones = { closed: 0.05, angle: (38 * Math.PI) / 180, nominal: 0.013, belt: 0.013 };
    const drawn = (most: number) =>
      statesOf(cones, 0.1, 0.3, 0.005, 0.001, 0.001, most).map((s) => [s.pass, Math.round(s.gap * 1e6) / 1e3]);
    expect(drawn(20)).toEqual([
      [0, 5],
      [1, 4],
      [2, 3],
      [3, 2],
      [4, 1],
    ]);
    expect(drawn(3)).toEqual([
      [0, 5],
      [2, 3],
      [4, 1],
    ]);
  });
});
