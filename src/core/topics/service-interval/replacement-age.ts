/** The age at which replacing a part by the clock costs least, for a part whose life the shop knows. */
import { ageAtShare, failure, hazardRate, meanLife, meanServiceUpTo, survival, type Life } from '../../chance/index.ts';

export interface Costs {
  /** Replacing it in time [currency]. */
  readonly planned: number;
  /** Replacing it after it has failed, with what the failure costs [currency]. */
  readonly failure: number;
}

/**
 * Cost for each unit of time when the part is replaced at an age or when it fails, whichever comes first.
 * Formula: C(T) = (C_p R(T) + C_f (1 - R(T))) / integral of R from 0 to T.
 * @param age T [time]; Infinity for running to failure
 * @returns C [currency per time]
 * Example: b = 2.5, eta = 1000, 1 and 5 -> 0.003462 at 493, 0.005635 run to failure.
 * Source: barlow-age-replacement.
 */
export function costRate(life: Life, costs: Costs, age: number): number {
  if (age === Infinity) return costs.failure / meanLife(life);
  return (costs.planned * survival(life, age) + costs.failure * failure(life, age)) / meanServiceUpTo(life, age);
}

/**
 * Age of least cost.
 * Formula: h(T) integral of R - F(T) = C_p / (C_f - C_p); the left side rises with T where b > 1.
 * @returns T [time]; undefined when no age pays: b <= 1, or a failure costs no more than a planned change
 * Example: as above -> 493.05.
 * Source: barlow-age-replacement.
 */
export function bestAge(life: Life, costs: Costs): number | undefined {
  if (life.shape <= 1 || costs.failure <= costs.planned || costs.planned <= 0) return undefined;
  const wanted = costs.planned / (costs.failure - costs.planned);
  const reached = (age: number) => balance(life, age) >= wanted;
  // Beyond this age hardly a part in 10^15 is left: replacing there is running to failure.
  let [low, high] = [0, ageAtShare(life, 1 - 1e-15)];
  if (!reached(high)) return undefined;
  for (let k = 0; k < 200; k++) {
    const middle = (low + high) / 2;
    if (reached(middle)) high = middle;
    else low = middle;
  }
  return high;
}

/** Left side of the condition for the best age [1]. */
export function balance(life: Life, age: number): number {
  return hazardRate(life, age) * meanServiceUpTo(life, age) - failure(life, age);
}

/**
 * Ages at which the cost is within a share of the least: the minimum is flat, and any age in the band will do.
 * @param share 0.05 for five per cent [1]
 * @returns low and high [time]; high is Infinity when running to failure is within the share too
 * Source: barlow-age-replacement.
 */
export function flatBand(
  life: Life,
  costs: Costs,
  best: number,
  share: number,
): { readonly low: number; readonly high: number } {
  const limit = costRate(life, costs, best) * (1 + share);
  const within = (age: number) => costRate(life, costs, age) <= limit;
  const edge = (inside: number, outside: number) => {
    let [a, b] = [inside, outside];
    for (let k = 0; k < 100; k++) {
      const middle = (a + b) / 2;
      if (within(middle)) a = middle;
      else b = middle;
    }
    return a;
  };
  const far = ageAtShare(life, 1 - 1e-15);
  return { low: edge(best, best * 1e-6), high: within(Infinity) || within(far) ? Infinity : edge(best, far) };
}

/**
 * Interval between overhauls when failures in between are only patched (minimal repair).
 * Formula: T = eta (C_o / (C_m (b - 1)))^(1/b); cost rate (C_o + C_m (T/eta)^b) / T.
 * @param overhaul C_o [currency]
 * @param patch C_m [currency]
 * @returns T [time] and cost rate [currency per time]; undefined for b <= 1
 * Example: b = 1.5, eta = 1, 0.01 and 1 -> 0.073681 and 0.407163.
 * Source: barlow-age-replacement (closed form from memory).
 */
export function overhaulPeriod(
  life: Life,
  overhaul: number,
  patch: number,
): { readonly period: number; readonly rate: number } | undefined {
  if (life.shape <= 1 || overhaul <= 0 || patch <= 0) return undefined;
  const period = life.scale * (overhaul / (patch * (life.shape - 1))) ** (1 / life.shape);
  return { period, rate: (overhaul + patch * (period / life.scale) ** life.shape) / period };
}
