/**
 * Lives of parts as a Weibull law: `shape` b says how they fail (below 1 early faults, 1 by chance,
 * above 1 wear), `scale` eta is the age by which 63.2 % have failed. Ages and lives are in one unit of
 * the caller's choice (seconds in core, hours on the page); shape > 0, scale > 0, ages >= 0.
 */
import { gamma, gammaShare, scaledUpperGamma } from './gamma.ts';

export interface Life {
  readonly shape: number;
  readonly scale: number;
}

/**
 * Chance that a part which has reached an age runs on for a further time.
 * Formula: R(t | T) = exp((T/eta)^b - ((T + t)/eta)^b).
 * @param life shape b [1] and scale eta [time]
 * @param time further time t [time], >= 0
 * @param age age already reached T [time], >= 0; 0 for a new part
 * @returns R [1], 0 to 1
 * Assumes a part that has not failed yet and the same duty as before.
 * Example: survival({ shape: 2.5, scale: 1000 }, 200, 600) -> 0.745591.
 * Source: weibull-conditional.
 */
export function survival(life: Life, time: number, age = 0): number {
  const run = (age / life.scale) ** life.shape;
  // So many lives old that the exponents overflow: nothing is left running.
  return Number.isFinite(run) ? Math.exp(run - ((age + time) / life.scale) ** life.shape) : 0;
}

/**
 * Chance that a part which has reached an age fails within a further time: 1 - R(t | T), kept exact where R is close to 1.
 * Formula: F(t | T) = 1 - exp((T/eta)^b - ((T + t)/eta)^b).
 * @param life shape b [1] and scale eta [time]
 * @param time further time t [time], >= 0
 * @param age age already reached T [time], >= 0; 0 for a new part
 * @returns F [1], 0 to 1
 * Example: failure({ shape: 2.5, scale: 1000 }, 200, 600) -> 0.254409.
 * Source: weibull-conditional.
 */
export function failure(life: Life, time: number, age = 0): number {
  const run = (age / life.scale) ** life.shape;
  return Number.isFinite(run) ? -Math.expm1(run - ((age + time) / life.scale) ** life.shape) : 1;
}

/**
 * Rate of failing at an age.
 * Formula: h = (b/eta) (t/eta)^(b-1).
 * @param age t [time], > 0 (for b below 1 the rate at 0 has no bound)
 * @returns h [1/time]
 * Example: hazardRate({ shape: 1, scale: 500 }, 70) -> 0.002.
 * Source: weibull-conditional.
 */
export function hazardRate(life: Life, age: number): number {
  return (life.shape / life.scale) * (age / life.scale) ** (life.shape - 1);
}

/**
 * Mean life of a new part.
 * Formula: eta Gamma(1 + 1/b).
 * @returns mean life [time]
 * Example: meanLife({ shape: 2.5, scale: 1000 }) -> 887.264.
 * Source: weibull-conditional.
 */
export function meanLife(life: Life): number {
  return life.scale * gamma(1 + 1 / life.shape);
}

/**
 * Mean time in service until a part fails or reaches an age, whichever comes first.
 * Formula: integral of R from 0 to T = (eta/b) gamma_lower(1/b, (T/eta)^b).
 * @param until T [time], >= 0
 * @returns mean time [time]
 * Example: meanServiceUpTo({ shape: 2.5, scale: 1000 }, 493.047) -> 470.1517.
 * Source: weibull-conditional.
 */
export function meanServiceUpTo(life: Life, until: number): number {
  return meanLife(life) * gammaShare(1 / life.shape, (until / life.scale) ** life.shape);
}

/**
 * Mean life still ahead of a part that has reached an age.
 * Formula: (eta/b) Gamma(1/b, x) e^x, x = (T/eta)^b. Young parts: mean life less mean service so far, over R(T);
 * from x = 1 + 1/b on: (T/b) times the scaled upper gamma, so that a part of many lives still has its mean.
 * @param age T [time], >= 0
 * @returns mean remaining life [time]
 * Example: meanRemainingLife({ shape: 2.5, scale: 1000 }, 600) -> 438.012.
 * Example: meanRemainingLife({ shape: 1, scale: 400 }, 12000) -> 400.000.
 * Source: weibull-conditional.
 */
export function meanRemainingLife(life: Life, age: number): number {
  const [a, x] = [1 / life.shape, (age / life.scale) ** life.shape];
  if (x < a + 1) return (meanLife(life) - meanServiceUpTo(life, age)) / survival(life, age);
  return age * a * scaledUpperGamma(a, x);
}

/**
 * Age by which a given share has failed.
 * Formula: t = eta (-ln(1 - F))^(1/b).
 * @param failed F [1], 0 to below 1
 * @returns t [time]
 * Example: ageAtShare({ shape: 2, scale: 75000 }, 0.3756) -> 51470.
 * Source: bloch-machinery-reliability.
 */
export function ageAtShare(life: Life, failed: number): number {
  return life.scale * (-Math.log(1 - failed)) ** (1 / life.shape);
}
