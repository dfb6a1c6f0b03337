/**
 * Money at different times: payments fall at the end of each period, `rate` is the interest of one
 * period as a fraction (0.08 for 8 %), `periods` may be broken (2.5 years). rate > -1, periods > 0.
 * Names in brackets are the usual factor names.
 */

/** A rate so small that the digits of the closed forms are gone; the limits without interest are exact enough there. */
export function isNoInterest(rate: number): boolean {
  return Math.abs(rate) < 1e-12;
}

/**
 * What one unit of money due later is worth today (P/F).
 * Formula: (1 + r)^-n.
 * @param rate r [1 per period]
 * @param periods n [periods], >= 0
 * @returns [1]
 * Example: presentWorth(0.1, 8) -> 0.4665.
 * Source: engineering-economy-factors.
 */
export function presentWorth(rate: number, periods: number): number {
  return (1 + rate) ** -periods;
}

/**
 * Level payment that pays back one unit of money with interest (A/P).
 * Formula: r (1 + r)^n / ((1 + r)^n - 1); at r = 0 it is 1/n.
 * @param rate r [1 per period]
 * @param periods n [periods], > 0
 * @returns [1 per period]
 * `expm1` and `log1p` keep the digits that a rate close to zero would lose.
 * Example: capitalRecovery(0.15, 5) -> 0.29832.
 * Source: engineering-economy-factors.
 */
export function capitalRecovery(rate: number, periods: number): number {
  return isNoInterest(rate) ? 1 / periods : -rate / Math.expm1(-periods * Math.log1p(rate));
}

/**
 * What one unit of money at the end of every period is worth today (P/A).
 * Formula: 1 / (A/P).
 * @returns [periods]
 * Example: presentWorthOfPayments(0.15, 5) -> 3.35216.
 * Source: engineering-economy-factors.
 */
export function presentWorthOfPayments(rate: number, periods: number): number {
  return 1 / capitalRecovery(rate, periods);
}

/**
 * Level payment that saves up one unit of money by the end (A/F).
 * Formula: A/P - r.
 * @returns [1 per period]
 * Example: sinkingFund(0.15, 5) -> 0.14832.
 * Source: engineering-economy-factors.
 */
export function sinkingFund(rate: number, periods: number): number {
  return capitalRecovery(rate, periods) - rate;
}

/**
 * Level payment equal to payments that grow by one unit of money every period, starting from nothing (A/G).
 * Formula: 1/r - n / ((1 + r)^n - 1); close to r = 0, where its digits cancel, its series there:
 * (n - 1)/2 - (n^2 - 1)/12 r + (n^2 - 1)/24 r^2.
 * @returns [1]
 * Example: gradientToLevel(0.15, 10) -> 3.3832.
 * Source: engineering-economy-factors.
 */
export function gradientToLevel(rate: number, periods: number): number {
  const square = (periods * periods - 1) / 12;
  if (Math.abs(rate) * periods < 1e-4) return (periods - 1) / 2 - square * rate + (square / 2) * rate * rate;
  return 1 / rate - (periods * sinkingFund(rate, periods)) / rate;
}

/**
 * Worth today of a list of payments, the first of them now.
 * Formula: sum of x_k (1 + r)^-k, k from 0.
 * @param rate r [1 per period]
 * @param flows x_k [currency], money in above zero
 * @returns [currency]
 * Example: netPresentWorth(0.05, [-15000, 1500, 2500, 3500, 4500, 6000]) -> 122.89.
 * Source: engineering-economy-factors.
 */
export function netPresentWorth(rate: number, flows: readonly number[]): number {
  return flows.reduce((sum, x, k) => sum + x * presentWorth(rate, k), 0);
}

/**
 * Interest that includes inflation, from interest above inflation.
 * Formula: (1 + r)(1 + f) - 1, not r + f.
 * @param real r [1 per period]
 * @param inflation f [1 per period]
 * @returns [1 per period]
 * Example: withInflation(0.06, 0.03) -> 0.0918.
 * Source: engineering-economy-factors.
 */
export function withInflation(real: number, inflation: number): number {
  return (1 + real) * (1 + inflation) - 1;
}
