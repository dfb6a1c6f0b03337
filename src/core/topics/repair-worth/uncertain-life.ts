/** Yearly cost when nobody knows how long the repair will last. */
import { survival, type Life } from '../../chance/index.ts';
import { presentWorth } from '../../money/index.ts';

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
