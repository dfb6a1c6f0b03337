/** Far in the tail and close to the start, where a difference of two nearly equal numbers says nothing. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { failure, meanRemainingLife, scaledUpperGamma, survival } from '../../../src/core/chance/index.ts';

/** Mean remaining life by Simpson's rule over the chance of running on, out to where nothing is left. */
function byArea(shape: number, scale: number, age: number): number {
  const run = (t: number) => Math.exp((age / scale) ** shape - ((age + t) / scale) ** shape);
  let end = scale;
  while (run(end) > 1e-14) end *= 2;
  while (run(end / 2) < 1e-14) end /= 2;
  const pieces = 20000;
  const h = end / pieces;
  let sum = run(0) + run(end);
  for (let k = 1; k < pieces; k++) sum += (k % 2 === 1 ? 4 : 2) * run(k * h);
  return (sum * h) / 3;
}

describe('the mean life still in a part', () => {
  it('that fails by chance is the same at any age', () => {
    for (const age of [0, 100, 400, 799, 800, 801, 4000, 12000, 1e6])
      expect(meanRemainingLife({ shape: 1, scale: 400 }, age) / 400).toBeCloseTo(1, 12);
  });
  it.each([
    [3, 1250],
    [2, 2400],
    [2.5, 600],
    [6, 900],
    [0.7, 40000],
  ])('of shape %f and 400 h scale at %i h is the area under its survival from there', (shape, age) => {
    expect(meanRemainingLife({ shape, scale: 400 }, age) / byArea(shape, 400, age)).toBeCloseTo(1, 6);
  });
  it('falls with age for a part that wears, without a jump where the sum changes over', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1.1, max: 8, noNaN: true }),
        fc.double({ min: 0, max: 20, noNaN: true }),
        (shape, lives) => {
          const life = { shape, scale: 400 };
          const [now, later] = [lives * 400, lives * 400 * 1.001 + 0.01].map((age) => meanRemainingLife(life, age));
          expect(later).toBeLessThanOrEqual((now ?? 0) * (1 + 1e-9));
        },
      ),
    );
    for (const shape of [0.8, 1.5, 2.5, 5]) {
      const turn = 400 * (1 + 1 / shape) ** (1 / shape);
      const [below, above] = [turn * (1 - 1e-9), turn * (1 + 1e-9)].map((age) =>
        meanRemainingLife({ shape, scale: 400 }, age),
      );
      expect((below ?? 0) / (above ?? 1)).toBeCloseTo(1, 7);
    }
  });
  it('is nothing past every number a computer holds, and no NaN', () => {
    expect(meanRemainingLife({ shape: 20, scale: 1 }, 1e30)).toBe(0);
    expect(scaledUpperGamma(1, 50)).toBeCloseTo(1 / 50, 15);
    expect(scaledUpperGamma(3, 3)).toBeNaN();
  });
});

describe('the chance of failing', () => {
  it('is one less the chance of lasting', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.3, max: 6, noNaN: true }),
        fc.double({ min: 0, max: 2000, noNaN: true }),
        fc.double({ min: 0, max: 2000, noNaN: true }),
        (shape, time, age) => {
          const life = { shape, scale: 400 };
          expect(failure(life, time, age)).toBeCloseTo(1 - survival(life, time, age), 12);
        },
      ),
    );
  });
  it('keeps its digits where it is tiny: (t/eta)^b for small t', () => {
    // 1 - exp(-x) = x - x^2/2: for x = 1e-20 it is x to twenty figures, and 1 - survival would be 0.
    expect(failure({ shape: 2, scale: 1 }, 1e-10) / 1e-20).toBeCloseTo(1, 12);
    expect(failure({ shape: 20, scale: 1 }, 1, 1e30)).toBe(1);
  });
});
