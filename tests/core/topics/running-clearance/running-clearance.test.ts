import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  compute,
  example,
  fields,
  innerGrowth,
  outerShrink,
  type RingJoint,
} from '../../../../src/core/topics/running-clearance/index.ts';
import { readInputs } from '../../../../src/core/contract/read-inputs.ts';
import { valueOf } from '../../../../src/core/contract/result.ts';
import type { RawInputs } from '../../../../src/core/contract/field.ts';
import { answersAnything } from '../../any-input.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const steel = { ringE: 208e9, ringNu: 0.3, otherE: 208e9, otherNu: 0.3 };
const ring = (diameter: number, raceway: number): RingJoint => ({ diameter, raceway, ...steel });

function answer(raw: RawInputs) {
  const read = readInputs(fields, { ...example, ...raw });
  const result = read.ok ? compute(read.inputs) : undefined;
  if (!result?.ok) throw new Error(`Refused: ${JSON.stringify(result ?? read)}`);
  return result;
}
const left = (raw: RawInputs) => valueOf(answer(raw), 'left', 'quantity');

describe('running clearance', () => {
  answersAnything('running-clearance', {
    bore: between(10, 60),
    outside: between(40, 140),
    innerRaceway: fc.constant(undefined),
    outerRaceway: fc.constant(undefined),
    housingOutside: between(100, 300),
    shaftBore: between(0, 9),
    shaftLeast: between(-20, 5),
    shaftMost: between(5, 60),
    housingLeast: between(-40, 0),
    housingMost: between(0, 60),
  });

  it('on a solid steel shaft the raceway grows by the interference times bore over raceway', () => {
    fc.assert(
      fc.property(between(0.01, 0.2), between(1.05, 1.6), between(1e-6, 1e-4), (d, k, delta) => {
        expect(innerGrowth(ring(d, d * k), 0, delta) / (delta / k)).toBeCloseTo(1, 9);
      }),
    );
  });

  it('on a hollow shaft it grows by the closed form for two tubes', () => {
    fc.assert(
      fc.property(between(0.02, 0.2), between(1.05, 1.6), between(0.1, 0.9), (d, k, hole) => {
        const closed = (2e-5 / k) * ((1 - hole ** 2) / (1 - (hole / k) ** 2));
        expect(innerGrowth(ring(d, d * k), d * hole, 2e-5) / closed).toBeCloseTo(1, 9);
      }),
    );
  });

  it('in an endless steel housing the raceway shrinks by the interference times raceway over outside', () => {
    fc.assert(
      fc.property(between(0.02, 0.4), between(0.7, 0.95), (D, k) => {
        expect(outerShrink(ring(D, D * k), Infinity, 2e-5) / (2e-5 * k)).toBeCloseTo(1, 9);
      }),
    );
  });

  it('a loose ring costs nothing', () => {
    expect(innerGrowth(ring(0.025, 0.031), 0, -1e-5)).toBe(0);
    expect(outerShrink(ring(0.052, 0.0465), 0.08, -1e-5)).toBe(0);
  });

  it('leaves what the sums by hand say, tightest and loosest', () => {
    // ISO 5753-1 limits; 25 k5 +21/+2 on solid steel, loss delta * 25 / 31; 52 N7 in an 80 mm aluminium boss. Third decimals dropped.
    const exact = {
      surface: 'ideal',
      innerRaceway: 31,
      outerRaceway: 46.5,
      shaftMaterial: 'bearing-steel',
      difference: 0,
      housingRise: 0,
      shaftLeast: 2,
      shaftMost: 21,
    };
    const slip = { ...exact, housingLeast: -43, housingMost: 0 };
    const both = (raw: RawInputs) => [left(raw).low, left(raw).high].map((m) => Math.round((m ?? NaN) * 1e8) / 100);
    expect(both({ ...slip, group: 'CN' })).toEqual([-11.94, 18.39]);
    expect(both({ ...slip, group: 'C3' })).toEqual([-3.94, 26.39]);
    expect(both({ ...exact, group: 'C3', housingLeast: -4, housingMost: 39 })).toEqual([-24.58, 26.39]);
  });

  it('a larger group leaves that much more', () => {
    // At 25 mm: CN 5 to 20, C3 13 to 28 (ISO 5753-1).
    expect((left({ group: 'C3' }).low ?? NaN) - (left({ group: 'CN' }).low ?? NaN)).toBeCloseTo(8e-6, 12);
    expect((left({ group: 'C3' }).high ?? NaN) - (left({ group: 'CN' }).high ?? NaN)).toBeCloseTo(8e-6, 12);
  });

  it('tighter fits and a hotter inner ring leave less', () => {
    expect(left({ shaftMost: 30 }).low).toBeLessThan(left({ shaftMost: 21 }).low ?? NaN);
    expect(left({ difference: 30 }).low).toBeLessThan(left({ difference: 10 }).low ?? NaN);
    expect(left({ housingMaterial: 'grey-iron' }).low).toBeLessThan(
      left({ housingMaterial: 'aluminium-die-cast' }).low ?? NaN,
    );
  });

  it('warns when a normal-clearance bearing would run preloaded, and names the group that would not', () => {
    const code = (raw: RawInputs) => valueOf(answer(raw), 'verdict', 'verdict').code;
    const iron = { housingMaterial: 'grey-iron', housingLeast: 20, housingMost: 60 };
    expect(code({ ...iron, shaftLeast: 10, shaftMost: 30 })).toMatch(/preloaded/);
    expect(code({ group: 'C2', ...iron, shaftLeast: 30, shaftMost: 40, difference: 30 })).toBe('always-preloaded');
    const calm = { shaftLeast: 2, shaftMost: 11, housingLeast: -40, housingMost: 0, difference: 5 };
    expect(code({ ...calm, group: 'C3' })).toBe('runs-clear');
    // 12 * 25/27 * 25/30.4 on the shaft and 2.9 for heat make 12.0: more than CN's 5, less than C3's 13.
    expect(valueOf(answer({ ...calm, group: 'CN', shaftMost: 12 }), 'groupNeeded', 'text').value).toBe('C3');
  });
});
