/** Yearly cost of owning a machine: over a known time, at the age where it is lowest, over a life nobody knows. */
import { survival, type Life } from '../../chance/index.ts';
import { capitalRecovery, presentWorth, sinkingFund } from '../../money/index.ts';

/**
 * Level yearly cost of money laid out now, with running cost, less what the machine fetches at the end.
 * Formula: P (A/P) - S (A/F) + A.
 * @param first P, laid out now [currency]
 * @param resale S, fetched after `years` [currency]
 * @param running A, each year [currency a year]
 * @param rate interest [1 a year], > -1
 * @param years [years], > 0
 * @returns [currency a year]
 * Example: 90,000 down, 30,000 back after 5 years, 5,000 a year, 8 % -> 22,427.39.
 * Source: engineering-economy-factors.
 */
export function annualCost(first: number, resale: number, running: number, rate: number, years: number): number {
  return first * capitalRecovery(rate, years) - resale * sinkingFund(rate, years) + running;
}

export interface YearCost {
  /** Paid at the end of the year [currency]. */
  readonly cost: number;
  /** What the machine would fetch at the end of the year [currency]. */
  readonly resale: number;
}

/**
 * Yearly cost if the machine is kept 1, 2, 3 ... years.
 * Formula: (P + sum A_k (P/F,k) - S_n (P/F,n)) (A/P,n).
 * @param first P [currency]
 * @param years cost and resale of every year, in order
 * @param rate [1 a year]
 * @returns one yearly cost for each year of keeping [currency a year]
 * Example: Blank & Tarquin Example 11.2: 7,800, 6,276, 6,132, ...
 * Source: blank-tarquin.
 */
export function annualCosts(first: number, years: readonly YearCost[], rate: number): number[] {
  let paid = first;
  return years.map(({ cost, resale }, k) => {
    const n = k + 1;
    paid += cost * presentWorth(rate, n);
    return (paid - resale * presentWorth(rate, n)) * capitalRecovery(rate, n);
  });
}

/**
 * Years of keeping at which the yearly cost is lowest. Every year is looked at: an overhaul makes the
 * curve fall again after it has risen.
 * @returns the years and the cost there; the shorter keeping on a tie; 0 years for an empty list
 * Example: lift truck with overhauls in years 5 and 7 -> 6 years.
 * Source: blank-tarquin.
 */
export function economicLife(
  first: number,
  years: readonly YearCost[],
  rate: number,
): { readonly years: number; readonly yearly: number } {
  const costs = annualCosts(first, years, rate);
  return costs.reduce(
    (best, yearly, k) => (best.years === 0 || yearly < best.yearly ? { years: k + 1, yearly } : best),
    { years: 0, yearly: 0 },
  );
}

/**
 * What keeping the machine one more year costs.
 * Formula: V_(k-1) (1 + r) - V_k + A_k.
 * @param before V_(k-1), what it fetches at the start of the year [currency]
 * @param year cost and resale of that year
 * @param rate [1 a year]
 * @returns [currency], at the end of the year
 * Example: 4,000 falling to 3,000, 19,860 to run, 15 % -> 21,460.
 * Source: newnan-economic-analysis.
 */
export function costOfOneMoreYear(before: number, year: YearCost, rate: number): number {
  return before * (1 + rate) - year.resale + year.cost;
}

/**
 * What a new machine really costs when the dealer's trade-in is not what the old one is worth.
 * Formula: P - (T - V).
 * @param price P [currency]
 * @param tradeIn T, offered [currency]
 * @param worth V, what the old machine fetches as it stands [currency]
 * @returns [currency]
 * Example: 36,000 with 11,000 offered for a machine worth 9,000 -> 34,000.
 * Source: blank-tarquin.
 */
export function firstCostWithTradeIn(price: number, tradeIn: number, worth: number): number {
  return price - (tradeIn - worth);
}

/**
 * Worth today of one unit of money for every year the machine is still in service.
 * Formula: sum over k of R(k | T) (1 + r)^-k, k from 1 to the horizon.
 * @param life Weibull shape [1] and scale [years]
 * @param age T, age already reached [years]
 * @param rate r [1 a year]
 * @param horizon last year counted [years]
 * @returns [years]
 * Example: b = 2, eta = 6, age 3, 10 %, 15 years -> 2.14867.
 * Source: weibull-conditional, engineering-economy-factors.
 */
export function expectedService(life: Life, age: number, rate: number, horizon: number): number {
  return Array.from(
    { length: Math.floor(horizon) },
    (_, k) => survival(life, k + 1, age) * presentWorth(rate, k + 1),
  ).reduce((a, b) => a + b, 0);
}

/**
 * Yearly cost of money laid out for a service of unknown length: total over total, never the cost at the mean life.
 * Formula: C / expected service + A.
 * @returns [currency a year]
 * Example: 570 laid out, 180 a year, as above -> 445.28.
 * Source: comeback-expected-value.
 */
export function yearlyOverUncertainLife(capital: number, running: number, service: number): number {
  return capital / service + running;
}
