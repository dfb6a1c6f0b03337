/** The age at which replacing a part by the clock costs least, for a part whose life the shop knows. */
import { ageAtShare, failure, hazardRate, meanLife, meanServiceUpTo, survival, type Life } from '../../chance/index.ts';
import { isOver } from '../../thresholds/index.ts';

export interface Costs {
  /** Replacing it in time [currency]. */
  readonly planned: number;
  /** Replacing it after it has failed, with what the failure costs [currency]. */
  readonly failure: number;
}

/** How long such parts last, in the terms replacing by the clock needs. Ages in one unit of the caller's choice. */
export interface LifeLaw {
  /** Chance that a new part reaches an age [1]. */
  readonly lasts: (age: number) => number;
  /** Mean time in service until it fails or reaches an age [time]. */
  readonly service: (age: number) => number;
  /** Mean life [time]. */
  readonly mean: number;
  /** Age beyond which hardly a part is left [time]: replacing there is running to failure. */
  readonly far: number;
}

/** A Weibull law in those terms. Source: weibull-conditional. */
export function weibullLaw(life: Life): LifeLaw {
  return {
    lasts: (age) => survival(life, age),
    service: (age) => meanServiceUpTo(life, age),
    mean: meanLife(life),
    far: ageAtShare(life, 1 - 1e-15),
  };
}

/**
 * A life known only as a range: every age between the shortest and the longest equally likely.
 * Formulas: R = (b - T)/(b - a) between a and b, 1 before; integral of R = a + ((b - a)^2 - (b - T)^2)/(2 (b - a)),
 * T before a; mean (a + b)/2.
 * @param shortest a [time], >= 0
 * @param longest b [time], > a
 * Example: 200 to 600: half reach 400, after 350 h in service on average.
 * Source: uniform-law.
 */
export function rangeLaw(shortest: number, longest: number): LifeLaw {
  const width = longest - shortest;
  const ahead = (age: number) => Math.max(0, longest - Math.max(shortest, age));
  return {
    lasts: (age) => ahead(age) / width,
    service: (age) => Math.min(age, shortest) + (width * width - ahead(age) * ahead(age)) / (2 * width),
    mean: (shortest + longest) / 2,
    far: longest,
  };
}

/**
 * Cost for each unit of time when the part is replaced at an age or when it fails, whichever comes first.
 * Formula: C(T) = (C_p R(T) + C_f (1 - R(T))) / integral of R from 0 to T.
 * @param age T [time], > 0; Infinity for running to failure
 * @returns C [currency per time]
 * Example: range 200 to 600, costs 60 and 300, T = 200 -> 0.30; run to failure 0.75.
 * Source: barlow-age-replacement.
 */
export function rateUnder(law: LifeLaw, costs: Costs, age: number): number {
  if (age === Infinity) return costs.failure / law.mean;
  const lasts = law.lasts(age);
  return (costs.planned * lasts + costs.failure * (1 - lasts)) / law.service(age);
}

/**
 * The same for a Weibull life, with the digits kept at ages long before the first failures.
 * Formula: as above.
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
  if (!isOver(life.shape, 1) || !isOver(costs.failure, costs.planned) || costs.planned <= 0) return undefined;
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
 * Age of least cost for a life known only as a range.
 * Formula: the same condition with h = 1/(b - T): T = b - x, x = w (1 + g) - sqrt(w^2 (1 + g)^2 - w (2 a + w)),
 * w = b - a, g = C_p / (C_f - C_p); never before a, where nothing has failed yet.
 * @param shortest a [time], >= 0
 * @param longest b [time], > a
 * @returns T [time], a to below b; undefined when a failure costs no more than a planned change
 * Example: 200 to 600, costs 60 and 300 -> 200; 50 to 600, costs 60 and 120 -> 423.31.
 * Source: barlow-age-replacement, for the uniform law.
 */
export function bestAgeOfRange(shortest: number, longest: number, costs: Costs): number | undefined {
  if (!isOver(costs.failure, costs.planned) || costs.planned <= 0) return undefined;
  const width = longest - shortest;
  const g = costs.planned / (costs.failure - costs.planned);
  if (shortest >= g * width) return shortest;
  const side = width * (1 + g);
  return longest - (side - Math.sqrt(side * side - width * (2 * shortest + width)));
}

/**
 * Ages at which the cost is within a share of the least: the minimum is flat, and any age in the band will do.
 * @param rate cost rate at an age [currency per time]; at Infinity that of running to failure
 * @param far age beyond which hardly a part is left [time]
 * @param share 0.05 for five per cent [1]
 * @returns low and high [time]; high is Infinity when running to failure is within the share too
 * Source: barlow-age-replacement.
 */
export function bandOf(
  rate: (age: number) => number,
  best: number,
  far: number,
  share: number,
): { readonly low: number; readonly high: number } {
  const limit = rate(best) * (1 + share);
  const within = (age: number) => rate(age) <= limit;
  const edge = (inside: number, outside: number) => {
    let [a, b] = [inside, outside];
    for (let k = 0; k < 100; k++) {
      const middle = (a + b) / 2;
      if (within(middle)) a = middle;
      else b = middle;
    }
    return a;
  };
  return { low: edge(best, best * 1e-6), high: within(Infinity) || within(far) ? Infinity : edge(best, far) };
}

/** `bandOf` for a Weibull life. */
export function flatBand(life: Life, costs: Costs, best: number, share: number) {
  return bandOf((age) => costRate(life, costs, age), best, ageAtShare(life, 1 - 1e-15), share);
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
