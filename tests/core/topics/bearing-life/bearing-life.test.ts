import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  compute,
  example,
  fields,
  lifeFactor,
  loadFactors,
  referenceViscosity,
} from '../../../../src/core/topics/bearing-life/index.ts';
import { readInputs } from '../../../../src/core/contract/read-inputs.ts';
import { valueOf } from '../../../../src/core/contract/result.ts';
import type { RawInputs } from '../../../../src/core/contract/field.ts';
import { answersAnything } from '../../any-input.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

function answer(raw: RawInputs) {
  const read = readInputs(fields, { ...example, ...raw });
  const result = read.ok ? compute(read.inputs) : undefined;
  if (!result?.ok) throw new Error(`Refused: ${JSON.stringify(result ?? read)}`);
  return result;
}
const basic = (raw: RawInputs) => valueOf(answer(raw), 'basicLife', 'quantity').value;
const life = (raw: RawInputs) => valueOf(answer(raw), 'life', 'quantity').value;

describe('bearing life', () => {
  answersAnything('bearing-life', {
    belt: between(50, 8000),
    axial: between(0, 3000),
    viscosity: between(5, 100),
    speed: between(300, 9000),
  });

  it('double the load leaves an eighth of the life, double the speed half of it', () => {
    expect(basic({ belt: 1800 }) / basic({ belt: 900 })).toBeCloseTo(1 / 8, 9);
    expect(basic({ speed: 9000 }) / basic({ speed: 4500 })).toBeCloseTo(1 / 2, 9);
  });

  it('more dirt never lengthens life', () => {
    const order = ['extreme', 'high', 'normal', 'slight', 'typical', 'severe', 'very-severe'];
    order.slice(1).forEach((dirt, i) => expect(life({ dirt }), dirt).toBeLessThanOrEqual(life({ dirt: order[i] })));
  });

  it('the life factor rises with cleanliness and with viscosity, between 0.1 and 50', () => {
    fc.assert(
      fc.property(between(0.1, 6), between(0, 2), between(0, 0.5), between(0, 1), (kappa, clean, more, thicker) => {
        const [a, b, c] = [
          lifeFactor(kappa, clean),
          lifeFactor(kappa, clean + more),
          lifeFactor(kappa + thicker, clean),
        ];
        if (a === undefined || b === undefined || c === undefined) throw new Error('Refused.');
        expect(a).toBeGreaterThanOrEqual(0.1 - 1e-9);
        expect(b).toBeGreaterThanOrEqual(a - 1e-9);
        // The printed constants leave a step of under 1 % at kappa 0.4 and 1.
        expect(c).toBeGreaterThanOrEqual(a * 0.99);
        expect(Math.max(b, c)).toBeLessThanOrEqual(50);
      }),
    );
  });

  it('the branches of the life factor meet, and those of the viscosity nearly do', () => {
    for (const at of [0.4, 1])
      expect((lifeFactor(at - 1e-9, 0.1) ?? NaN) / (lifeFactor(at, 0.1) ?? NaN)).toBeCloseTo(1, 2);
    // The step at 1000 rpm is in the standard: 45000 * 1000^-0.83 over 4500 * 1000^-0.5 is 1.0233.
    expect(referenceViscosity(999.9999 / 60, 0.0385) / referenceViscosity(1000 / 60, 0.0385)).toBeCloseTo(1.0233, 3);
  });

  it('a small push along the shaft counts for nothing, a large one for much', () => {
    expect(loadFactors(1000, 100, 6950, false)).toMatchObject({ X: 1, Y: 0, V: 1 });
    expect(loadFactors(1000, 900, 6950, false).X).toBe(0.56);
    // Outside the printed rows the end rows hold.
    expect(loadFactors(1000, 300, 1e6, false)).toMatchObject({ e: 0.19, Y: 2.3 });
    expect(loadFactors(1000, 900, 1000, false)).toMatchObject({ e: 0.44, Y: 1 });
  });

  it('says that the sum does not count grinding by slurry', () => {
    expect(answer({ dirt: 'very-severe' }).values.some((v) => v.key === 'wear')).toBe(true);
    expect(answer({ dirt: 'normal' }).values.some((v) => v.key === 'wear')).toBe(false);
  });

  it('stops a load that dents the races', () => {
    expect(valueOf(answer({ belt: 8000 }), 'loadVerdict', 'verdict').code).toBe('load-dents');
    expect(
      valueOf(
        answer({ rating: 'own', dynamicRating: 10, staticRating: 20, pitch: 40, belt: 6000 }),
        'loadVerdict',
        'verdict',
      ).code,
    ).toBe('load-high');
  });
});
