import fc from 'fast-check';
import { gamma as mathGamma } from 'mathjs';
import { describe, expect, it } from 'vitest';
import {
  ageAtShare,
  fitLife,
  gamma,
  gammaShare,
  hazardRate,
  meanLife,
  meanRemainingLife,
  meanServiceUpTo,
  randomFrom,
  survival,
} from '../../../src/core/chance/index.ts';

const life = fc.record({
  shape: fc.double({ min: 0.5, max: 6, noNaN: true }),
  scale: fc.double({ min: 10, max: 5000, noNaN: true }),
});

/** Simpson's rule: another way to the same integral. */
function simpson(f: (x: number) => number, to: number, pieces = 4000): number {
  const h = to / pieces;
  let sum = f(0) + f(to);
  for (let k = 1; k < pieces; k++) sum += (k % 2 === 1 ? 4 : 2) * f(k * h);
  return (sum * h) / 3;
}

describe('the gamma function', () => {
  it('agrees with an independent library', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.05, max: 20, noNaN: true }), (x) => {
        expect(gamma(x) / mathGamma(x)).toBeCloseTo(1, 10);
      }),
    );
  });
  it('is an exponential share for a = 1', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 30, noNaN: true }), (x) => {
        expect(gammaShare(1, x)).toBeCloseTo(1 - Math.exp(-x), 12);
      }),
    );
  });
  it('gives tabled shares', () => {
    // Chi-squared table: P(1/2, 3.841459/2) and P(5/2, 11.0705/2) are 0.95.
    expect(gammaShare(0.5, 3.841459 / 2)).toBeCloseTo(0.95, 6);
    expect(gammaShare(2.5, 11.0705 / 2)).toBeCloseTo(0.95, 5);
  });
});

describe('the life of a part', () => {
  it('in service up to an age is the area under its survival', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 6, noNaN: true }),
        fc.double({ min: 0.1, max: 3, noNaN: true }),
        (shape, share) => {
          const part = { shape, scale: 400 };
          expect(meanServiceUpTo(part, share * 400) / simpson((t) => survival(part, t), share * 400)).toBeCloseTo(1, 6);
        },
      ),
    );
    expect(meanServiceUpTo({ shape: 2.5, scale: 1000 }, 493.047)).toBeCloseTo(470.1517, 3);
  });

  it('gets shorter with age when parts wear, and does not when they fail by chance', () => {
    fc.assert(
      fc.property(life, fc.double({ min: 0.05, max: 1, noNaN: true }), (part, share) => {
        const at = (age: number) => survival(part, share * part.scale, age);
        const [young, old] = [at(0.2 * part.scale), at(0.6 * part.scale)];
        if (part.shape > 1.001) expect(old).toBeLessThan(young);
        else if (part.shape < 0.999) expect(old).toBeGreaterThan(young);
      }),
    );
    expect(survival({ shape: 1, scale: 500 }, 100, 0)).toBeCloseTo(survival({ shape: 1, scale: 500 }, 100, 900), 12);
    expect(meanRemainingLife({ shape: 1, scale: 500 }, 800)).toBeCloseTo(500, 6);
  });

  it('is half over for half of them at the middle age', () => {
    fc.assert(
      fc.property(life, (part) => {
        expect(survival(part, ageAtShare(part, 0.5))).toBeCloseTo(0.5, 12);
      }),
    );
  });

  it('fails at the rate its survival falls', () => {
    const part = { shape: 2.2, scale: 300 };
    const h = 1e-4;
    expect((survival(part, 200 - h) - survival(part, 200 + h)) / (2 * h) / survival(part, 200)).toBeCloseTo(
      hazardRate(part, 200),
      8,
    );
  });

  it('starts from the mean life when new', () => {
    fc.assert(
      fc.property(life, (part) => {
        expect(meanRemainingLife(part, 0) / meanLife(part)).toBeCloseTo(1, 9);
      }),
    );
  });
});

describe('a law fitted to records', () => {
  it('finds again the law the records were drawn from', () => {
    const random = randomFrom(5);
    const truth = { shape: 2, scale: 350 };
    const fitted = fitLife(Array.from({ length: 4000 }, () => ({ time: ageAtShare(truth, random()), failed: true })));
    // Asymptotic error of the shape is 0.78 b / sqrt(n): 0.025 here; four of them.
    expect(Math.abs((fitted?.shape ?? 0) - 2)).toBeLessThan(0.1);
    expect(Math.abs((fitted?.scale ?? 0) - 350)).toBeLessThan(15);
  });

  it('counts parts taken out while still good', () => {
    const random = randomFrom(6);
    const truth = { shape: 2, scale: 350 };
    const fitted = fitLife(
      Array.from({ length: 4000 }, () => {
        const time = ageAtShare(truth, random());
        return time > 300 ? { time: 300, failed: false } : { time, failed: true };
      }),
    );
    expect(Math.abs((fitted?.shape ?? 0) - 2)).toBeLessThan(0.15);
    expect(Math.abs((fitted?.scale ?? 0) - 350)).toBeLessThan(20);
  });

  it('takes two failures however close, by the closed form of two: b ln(t2 / t1) = u with u tanh(u / 2) = 2', () => {
    const u = 2.3993572805;
    for (const [first, second] of [
      [100, 250],
      [300, 310],
      [300, 301],
    ] as const) {
      const fitted = fitLife([first, second].map((time) => ({ time, failed: true })));
      expect((fitted?.shape ?? 0) * Math.log(second / first)).toBeCloseTo(u, 6);
    }
  });

  it('does not care about the unit of time', () => {
    const records = [12, 30, 31, 55, 80].map((time) => ({ time, failed: true }));
    const [hours, minutes] = [fitLife(records), fitLife(records.map((r) => ({ ...r, time: r.time * 60 })))];
    expect(minutes?.shape).toBeCloseTo(hours?.shape ?? NaN, 9);
    expect((minutes?.scale ?? NaN) / 60).toBeCloseTo(hours?.scale ?? NaN, 6);
  });

  it('is refused when nothing, or everything at once, has failed', () => {
    expect(
      fitLife([
        { time: 10, failed: false },
        { time: 20, failed: false },
      ]),
    ).toBeUndefined();
    expect(
      fitLife([
        { time: 10, failed: true },
        { time: 10, failed: true },
      ]),
    ).toBeUndefined();
  });
});
