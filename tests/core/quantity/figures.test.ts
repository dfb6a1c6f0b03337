import { describe, expect, it } from 'vitest';
import { formatFigures, formatIn } from '../../../src/core/quantity/index.ts';

describe('significant figures', () => {
  it('rounds to as many as are asked for, thousands set apart from five digits on', () => {
    const shown = (n: number) => formatFigures(n, 2);
    // Rounding by hand.
    expect([436678, 12345, 9960, 8765, 2.576, 22.93, 0.0312, 0, -1499].map(shown)).toEqual([
      '440,000',
      '12,000',
      '10,000',
      '8800',
      '2.6',
      '23',
      '0.031',
      '0',
      '−1500',
    ]);
  });

  it('is the last word where decimals are given too', () => {
    expect(formatIn(436678 * 3600, 'h', 1, 2)).toBe('440,000\u00a0h');
  });
});
