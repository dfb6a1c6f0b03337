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
 * Method: halving on b between 0.05 and 1000; times are scaled by the longest so that powers stay in range.
 * @param records times > 0
 * @returns shape and scale; undefined with fewer than two different failure times, or with times so nearly equal that
 * the shape would pass 1000: no law can be fitted to those
 * Check: the 23 ball bearings of Lieblein and Zelen give 2.102 and 81.88 million turns.
 * Example: fitLife([{ time: 5, failed: true }]) -> undefined.
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
  let [low, high] = [0.05, 1000];
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

export interface ShapeRange {
  /** Shapes the records do not rule out at the given confidence [1]. */
  readonly low: number;
  readonly high: number;
  /** How many of the records are failures; the others only say "at least this long" [1]. */
  readonly failures: number;
}

/** Half of the 95 % point of chi-squared with one degree of freedom, 3.841459. */
const drop = 3.841459 / 2;

/**
 * Shapes a list of records leaves open: a likelihood-ratio range of 95 %.
 * Formula: all b with l(b*) - l(b) <= 1.92, l(b) = r ln b - r ln(sum t^b / r) + (b - 1) sum of ln t over the failures,
 * the likelihood with the scale at its best for each b; b* from fitLife.
 * @param records times > 0
 * @returns the range; undefined where fitLife fits no law. With few failures the true range is wider still: a law
 * that fits three failures says next to nothing.
 * Check: the 23 ball bearings of Lieblein and Zelen give 1.504 to 2.792 round 2.102.
 * Source: likelihood-ratio-range.
 */
export function shapeRange(records: readonly LifeRecord[]): ShapeRange | undefined {
  const life = fitLife(records);
  if (!life) return undefined;
  const longest = Math.max(...records.map((r) => r.time));
  const logs = records.map((r) => Math.log(r.time / longest));
  const failed = logs.filter((_, k) => records[k]?.failed);
  const r = failed.length;
  const sum = failed.reduce((a, b) => a + b, 0);
  const likelihood = (b: number) =>
    r * Math.log(b) - r * Math.log(logs.reduce((s, x) => s + Math.exp(b * x), 0) / r) + (b - 1) * sum;
  const most = likelihood(life.shape);
  const inside = (b: number) => most - likelihood(b) <= drop;
  const edge = (from: number, to: number) => {
    let [a, b] = [from, to];
    for (let k = 0; k < 100; k++) {
      const middle = (a + b) / 2;
      if (inside(middle)) a = middle;
      else b = middle;
    }
    return a;
  };
  return { low: edge(life.shape, 1e-3), high: edge(life.shape, 1e4), failures: r };
}
