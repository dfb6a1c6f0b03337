/** A Weibull law from the shop's own records. */
import type { Life } from './weibull.ts';

export interface LifeRecord {
  /** Hours (or any unit) the part had run. */
  readonly time: number;
  /** True when it failed then; false when it was still good, or taken out for another reason. */
  readonly failed: boolean;
}

/**
 * Shape and scale that make the records most likely (maximum likelihood), parts still running counted in.
 * Formulas: sum t^b ln t / sum t^b - 1/b = mean of ln t over the failures; eta = (sum t^b / r)^(1/b), r failures.
 * Method: halving on b between 0.05 and 60; times are scaled by the longest so that powers stay in range.
 * @param records times > 0
 * @returns shape and scale; undefined with fewer than two different failure times, which no law can be fitted to
 * Example: 23 ball bearings of Lieblein and Zelen -> 2.102 and 81.88 million turns.
 * Source: lieblein-zelen-1956.
 */
export function fitLife(records: readonly LifeRecord[]): Life | undefined {
  const failures = records.filter((r) => r.failed).map((r) => r.time);
  if (new Set(failures).size < 2) return undefined;
  const longest = Math.max(...records.map((r) => r.time));
  const times = records.map((r) => r.time / longest);
  const meanLog = failures.reduce((sum, t) => sum + Math.log(t / longest), 0) / failures.length;
  const excess = (b: number) => {
    let [powers, logs] = [0, 0];
    for (const t of times) {
      powers += t ** b;
      logs += t ** b * Math.log(t);
    }
    return logs / powers - 1 / b - meanLog;
  };
  let [low, high] = [0.05, 60];
  if (excess(low) > 0 || excess(high) < 0) return undefined;
  for (let k = 0; k < 100; k++) {
    const middle = (low + high) / 2;
    if (excess(middle) < 0) low = middle;
    else high = middle;
  }
  const shape = (low + high) / 2;
  const scale = longest * (times.reduce((sum, t) => sum + t ** shape, 0) / failures.length) ** (1 / shape);
  return { shape, scale };
}
