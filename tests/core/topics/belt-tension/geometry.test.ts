import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  beltLength,
  centreForLength,
  freeSpan,
  pulleys,
  shortestLength,
  textbookCentre,
  textbookLength,
  wrapSmall,
} from '../../../../src/core/topics/belt-tension/index.ts';
import { runs } from '../../../runs.ts';
import { answerOf, figureOf } from '../answer.ts';

/** Two pulleys from 20 mm to 1 m, and a centre distance from touching to ten times that. */
const drives = fc
  .tuple(
    fc.double({ min: 0.02, max: 1, noNaN: true }),
    fc.double({ min: 0.02, max: 1, noNaN: true }),
    fc.double({ min: 1.0001, max: 10, noNaN: true }),
  )
  .map(([a, b, k]) => ({ p: pulleys(a, b), centre: ((a + b) / 2) * k }));

describe('an open belt round two pulleys', () => {
  it('is never shorter than the textbook length says', () => {
    fc.assert(fc.property(drives, ({ p, centre }) => beltLength(p, centre) >= textbookLength(p, centre) * (1 - 1e-14)));
  });

  it('wraps both pulleys by one full turn together', () => {
    fc.assert(
      fc.property(drives, ({ p, centre }) => {
        const small = wrapSmall(p, centre);
        const large = 2 * Math.acos(-(p.large - p.small) / (2 * centre));
        expect(small + large).toBeCloseTo(2 * Math.PI, 10);
      }),
    );
  });

  it('gives back the centre distance its length came from', () => {
    fc.assert(
      fc.property(drives, ({ p, centre }) => {
        const back = centreForLength(p, beltLength(p, centre));
        expect(back).toBeDefined();
        expect(Math.abs((back as number) - centre) / centre).toBeLessThan(1e-9);
      }),
      { numRuns: runs(2000) },
    );
  });

  it('agrees with halving the interval, a slower way to the same centre distance', () => {
    fc.assert(
      fc.property(drives, ({ p, centre }) => {
        const length = beltLength(p, centre);
        let [low, high] = [(p.small + p.large) / 2, length];
        for (let i = 0; i < 200; i += 1) {
          const middle = (low + high) / 2;
          if (beltLength(p, middle) < length) low = middle;
          else high = middle;
        }
        expect(Math.abs((centreForLength(p, length) as number) - low) / low).toBeLessThan(1e-8);
      }),
    );
  });

  it('needs a longer belt when the shafts move apart', () => {
    fc.assert(fc.property(drives, ({ p, centre }) => beltLength(p, centre * 1.001) > beltLength(p, centre)));
  });

  it('has a free span shorter than the centre distance unless the pulleys are equal', () => {
    fc.assert(fc.property(drives, ({ p, centre }) => freeSpan(p, centre) <= centre));
    expect(freeSpan(pulleys(0.1, 0.1), 0.3)).toBeCloseTo(0.3, 15);
  });

  it('is refused when it is too short to go round', () => {
    fc.assert(
      fc.property(
        drives,
        fc.double({ min: 0.1, max: 0.999999, noNaN: true }),
        ({ p }, part) => centreForLength(p, shortestLength(p) * part) === undefined,
      ),
    );
    expect(centreForLength(pulleys(0.1, 0.2), 0)).toBeUndefined();
  });

  it('has a textbook centre distance close to the exact one when the shafts are far apart', () => {
    fc.assert(
      fc.property(drives, ({ p, centre }) => {
        const far = centre * 5;
        expect(Math.abs(textbookCentre(p, beltLength(p, far)) - far) / far).toBeLessThan(1e-3);
      }),
    );
  });
});

describe('belt speed', () => {
  // v = pi d n, with the diameter of the pulley whose speed was given (Machinery's Handbook, from memory; plain geometry).
  it('goes by the pulley whose speed was given', () => {
    const speedBy = (speedOf: string) =>
      figureOf(
        answerOf('belt-tension', {
          diametersAre: 'pitch',
          section: 'B',
          enginePulley: '150 mm',
          bladePulley: '300 mm',
          known: 'centre',
          centre: '500 mm',
          rotation: '1200 rpm',
          speedOf,
        }),
        'speed',
      );
    expect(speedBy('engine')).toBeCloseTo(Math.PI * 0.15 * 20, 9);
    expect(speedBy('blade')).toBeCloseTo(Math.PI * 0.3 * 20, 9);
  });
});
