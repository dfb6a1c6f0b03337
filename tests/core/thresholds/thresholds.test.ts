import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isOver, isUnder } from '../../../src/core/thresholds/index.ts';

describe('one comparison with a limit', () => {
  it('takes a product that equals the limit on paper for the limit', () => {
    // 8000 rpm x 52 / 100 = 4160 rpm
    const rpm = (((8000 * 2 * Math.PI) / 60) * (52 / 100) * 60) / (2 * Math.PI);
    expect(isOver(rpm, 4160)).toBe(false);
    expect(isUnder(rpm, 4160)).toBe(false);
  });

  it('tells a part in a million on either side', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-9, max: 1e12, noNaN: true }), (limit) => {
        expect(isOver(limit * (1 + 1e-6), limit)).toBe(true);
        expect(isUnder(limit * (1 - 1e-6), limit)).toBe(true);
        expect(isOver(limit, limit) || isUnder(limit, limit)).toBe(false);
      }),
    );
  });

  it('works below zero and at zero', () => {
    expect(isOver(-1, -2)).toBe(true);
    expect(isOver(1e-300, 0)).toBe(true);
    expect(isOver(0, 0)).toBe(false);
    expect(isOver(Number.NaN, 1)).toBe(false);
  });

  it('knows that nothing is over what has no end', () => {
    expect(isOver(Infinity, 1)).toBe(true);
    expect(isOver(1, Infinity)).toBe(false);
    expect(isUnder(1, Infinity)).toBe(true);
    expect(isOver(Infinity, Infinity)).toBe(false);
  });
});
