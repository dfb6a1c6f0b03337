import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { npv, pmt, pv, PaymentDueTime } from 'financial';
import { describe, expect, it } from 'vitest';
import { annualCost } from '../../../src/core/topics/repair-worth/index.ts';
import {
  capitalRecovery,
  gradientToLevel,
  netPresentWorth,
  presentWorth,
  presentWorthOfPayments,
  sinkingFund,
  withInflation,
} from '../../../src/core/money/index.ts';

interface Row {
  rate: number;
  years: number;
  presentWorth: number;
  payments: number;
  recovery: number;
}
const table = JSON.parse(readFileSync(new URL('factor-table.json', import.meta.url), 'utf8')) as { rows: Row[] };

/** The table is rounded to six decimals. */
const half = 5.001e-7;
const rate = fc.double({ min: 0.001, max: 0.4, noNaN: true });
const years = fc.integer({ min: 1, max: 40 });

describe('factors of money at different times', () => {
  it.each(table.rows)('are the tabled ones at $rate % over $years years', (row) => {
    const r = row.rate / 100;
    expect(Math.abs(presentWorth(r, row.years) - row.presentWorth)).toBeLessThanOrEqual(half);
    expect(Math.abs(presentWorthOfPayments(r, row.years) - row.payments)).toBeLessThanOrEqual(half);
    expect(Math.abs(capitalRecovery(r, row.years) - row.recovery)).toBeLessThanOrEqual(half);
  });

  it('are all there, five rates of twenty years', () => {
    expect(table.rows.length).toBe(100);
  });

  it('agree with an independent library on any loan', () => {
    fc.assert(
      fc.property(rate, years, fc.integer({ min: 1, max: 100000 }), (r, n, amount) => {
        expect(amount * capitalRecovery(r, n)).toBeCloseTo(-pmt(r, n, amount, 0, PaymentDueTime.End), 6);
        expect(amount * presentWorthOfPayments(r, n)).toBeCloseTo(-pv(r, n, amount, 0, PaymentDueTime.End), 4);
        expect(amount * sinkingFund(r, n)).toBeCloseTo(-pmt(r, n, 0, amount, PaymentDueTime.End), 6);
      }),
    );
  });

  it('agree with an independent library on any list of payments', () => {
    fc.assert(
      fc.property(
        rate,
        fc.array(fc.integer({ min: -10000, max: 10000 }), { minLength: 1, maxLength: 20 }),
        (r, flows) => {
          expect(netPresentWorth(r, flows)).toBeCloseTo(npv(r, flows), 5);
        },
      ),
    );
  });

  it('pay one year back with its interest', () => {
    fc.assert(
      fc.property(rate, (r) => {
        expect(capitalRecovery(r, 1)).toBeCloseTo(1 + r, 12);
      }),
    );
  });

  it('come down to the interest alone when nobody is in a hurry', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.02, max: 0.4, noNaN: true }), (r) => {
        expect(capitalRecovery(r, 2000)).toBeCloseTo(r, 12);
      }),
    );
  });

  it('pay back and save up differ by the interest', () => {
    fc.assert(
      fc.property(rate, years, (r, n) => {
        expect(capitalRecovery(r, n) - sinkingFund(r, n)).toBeCloseTo(r, 12);
      }),
    );
  });

  it('pass over into no interest without a jump', () => {
    fc.assert(
      fc.property(years, (n) => {
        expect(capitalRecovery(1e-12, n)).toBeCloseTo(1 / n, 9);
        expect(capitalRecovery(0, n)).toBe(1 / n);
        expect(gradientToLevel(0, n)).toBe((n - 1) / 2);
        expect(gradientToLevel(1e-5, n)).toBeCloseTo((n - 1) / 2, 2);
      }),
    );
  });

  it('put interest and inflation together so that each can be taken out again', () => {
    fc.assert(
      fc.property(rate, rate, (r, f) => {
        expect((1 + withInflation(r, f)) / (1 + f) - 1).toBeCloseTo(r, 12);
      }),
    );
  });
});

it('loss of value with interest on what is left is the same yearly cost', () => {
  fc.assert(
    fc.property(
      rate,
      years,
      fc.integer({ min: 1, max: 9999 }),
      fc.integer({ min: 0, max: 9999 }),
      (r, n, first, resale) => {
        expect(annualCost(first, resale, 0, r, n)).toBeCloseTo(
          (first - resale) * capitalRecovery(r, n) + resale * r,
          6,
        );
      },
    ),
  );
});

it('growing payments keep their digits close to no interest: series and closed form meet', () => {
  // 10 payments, A/G = 4.5 - 8.25 r + 4.125 r^2 - ..., the series worked with forty figures.
  for (const rate of [0, 2e-12, 1e-9, 1e-7]) expect(gradientToLevel(rate, 10)).toBeCloseTo(4.5 - 8.25 * rate, 9);
  const turn = 1e-4 / 10;
  expect(gradientToLevel(turn * 0.999999, 10)).toBeCloseTo(gradientToLevel(turn * 1.000001, 10), 8);
});
