/** Length, depth and pace of a cut, and the water and slurry that go with it. */

/** The whole number from a figure up; what arithmetic lost does not make one more. Example: 3.0000000001 -> 3. */
const wholeUp = (x: number) => Math.ceil(x - Math.min(1e-6, 1e-9 * x));

/**
 * Passes to reach a depth: whole number of steps, rounded up.
 * @param depth [m] @param step deepest a pass goes [m], > 0; undefined for one pass
 * Example: 120 mm in steps of 50 mm -> 3. Source: water-cut-arithmetic.
 */
export function passes(depth: number, step?: number): number {
  return step === undefined ? 1 : Math.max(1, wholeUp(depth / step));
}

/** Cutting time by the forward pace of a pass: t = n l / v [s]. @param pace v [m/s], > 0. Source: water-cut-arithmetic. */
export function timeByFeed(length: number, count: number, pace: number): number {
  return (count * length) / pace;
}

/** Cutting time by the area cut in a time: t = l d / r [s]. @param rate r [m2/s], > 0. Example: 12 m, 125 mm, 1.5 m2/h -> 60 min. */
export function timeByRate(length: number, depth: number, rate: number): number {
  return (length * depth) / rate;
}

/** Area cut in a time, from a cut that was timed: r = l d / t [m2/s]. @param time [s], > 0. Source: water-cut-arithmetic. */
export function rateOf(length: number, depth: number, time: number): number {
  return (length * depth) / time;
}

/** Flow by jug and watch: q = V / t [m3/s]. @param time [s], > 0. Example: 1 L in 100 s -> 0.6 L/min. Source: water-cut-arithmetic. */
export function flowOf(volume: number, time: number): number {
  return volume / time;
}

/** Stone taken out: V = l d w [m3]. Example: 10 m, 100 mm, 4 mm -> 4 L. Source: water-cut-arithmetic. */
export function stoneOf(length: number, depth: number, width: number): number {
  return length * depth * width;
}

/** Whole fills of a tank, rounded up. @returns 0 for no water, else 1 at least. Source: water-cut-arithmetic. */
export function fillsOf(water: number, tank: number): number {
  return water > 0 ? Math.max(1, wholeUp(water / tank)) : 0;
}
