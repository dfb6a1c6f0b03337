import fc from 'fast-check';
import { expect, it } from 'vitest';
import { bestBlind, valueOfInspecting, valueOfKnowing } from '../../../../src/core/topics/repair-worth/index.ts';

const outcome = fc.integer({ min: -500, max: 500 });
const states = fc
  .integer({ min: 1, max: 4 })
  .chain((n) =>
    fc.record({
      weights: fc.array(fc.integer({ min: 1, max: 9 }), { minLength: n, maxLength: n }),
      acts: fc.array(fc.array(outcome, { minLength: n, maxLength: n }), { minLength: 1, maxLength: 4 }),
      yes: fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: n, maxLength: n }),
    }),
  )
  .map(({ weights, acts, yes }) => ({ p: weights.map((w) => w / weights.reduce((a, b) => a + b, 0)), acts, yes }));
const findings = (yes: readonly number[]) => [yes, yes.map((x) => 1 - x)];

it('an inspection is worth between nothing and what knowing for certain is worth', () => {
  fc.assert(
    fc.property(states, ({ p, acts, yes }) => {
      const worth = valueOfInspecting(p, acts, findings(yes));
      expect(worth).toBeGreaterThanOrEqual(0);
      expect(worth).toBeLessThanOrEqual(valueOfKnowing(p, acts) + 1e-9);
    }),
  );
});

it('an inspection is worth nothing when one act is best whatever it finds', () => {
  fc.assert(
    fc.property(states, ({ p, acts, yes }) => {
      const best = acts[0]?.map((u) => u + 1000) ?? [];
      expect(
        valueOfInspecting(p, [best, ...acts.map((a) => a.map((u) => Math.min(u, 499)))].slice(0, 4), findings(yes)),
      ).toBeCloseTo(0, 9);
    }),
  );
});

it('an inspection that is never wrong is worth what knowing is worth, with two states', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 99 }),
      fc.array(fc.tuple(outcome, outcome), { minLength: 1, maxLength: 4 }),
      (k, acts) => {
        const p = [k / 100, 1 - k / 100];
        expect(valueOfInspecting(p, acts, findings([1, 0]))).toBeCloseTo(valueOfKnowing(p, acts), 9);
      },
    ),
  );
});

it('an inspection that says the same whatever is wrong is worth nothing', () => {
  fc.assert(
    fc.property(states, fc.double({ min: 0, max: 1, noNaN: true }), ({ p, acts }, x) => {
      expect(valueOfInspecting(p, acts, findings(p.map(() => x)))).toBeCloseTo(0, 9);
    }),
  );
});

it('insurance: 2,126 with and 3,096 without', () => {
  const p = [0.85, 0.12, 0.03];
  expect(bestBlind(p, [[-2000, -2800, -3000]])).toBeCloseTo(-2126, 9);
  expect(bestBlind(p, [[0, -800, -100000]])).toBeCloseTo(-3096, 9);
});
