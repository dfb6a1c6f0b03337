/**
 * How like itself a sound is when it is moved in time. A belt that was plucked and an engine that runs are both heard so:
 * the shift at which the sound fits best is the time of one repeat.
 */

/** A place where a sound fits itself: the shift, in samples, and how well, from -1 to 1. */
export interface Fit {
  readonly at: number;
  readonly height: number;
}

/**
 * Means of neighboring samples, less their mean: fewer samples, no hiss above the notes wanted, no standing offset.
 * @param samples sound, any loudness @param keepEvery how many samples become one, at least 1
 * @returns floor(length / keepEvery) samples
 * Example: three samples 1, 2, 6 kept one by one -> -2, -1, 3.
 */
export function thinned(samples: ArrayLike<number>, keepEvery: number): Float64Array {
  const x = new Float64Array(Math.floor(samples.length / keepEvery));
  let sum = 0;
  for (let i = 0; i < x.length; i += 1) {
    let part = 0;
    for (let j = 0; j < keepEvery; j += 1) part += samples[i * keepEvery + j] ?? 0;
    x[i] = part / keepEvery;
    sum += x[i] ?? 0;
  }
  const mean = x.length > 0 ? sum / x.length : 0;
  return x.map((v) => v - mean);
}

/**
 * The likeness of a sound to itself at one shift:
 *   n(k) = sum x(j) x(j + k) / sqrt(sum x(j)^2 sum x(j + k)^2).
 * Each part has its own sum of squares, so a note that dies away evenly is still 1 at its own period.
 * @param x samples @param k shift, in samples @returns n(k), -1 to 1; 0 where there is no sound at all
 * Source: mcleod-wyvill-2005, with a sum of squares for each part.
 */
export function likenessAt(x: Float64Array, k: number): number {
  let [product, early, late] = [0, 0, 0];
  for (let j = 0; j + k < x.length; j += 1) {
    const [a, b] = [x[j] ?? 0, x[j + k] ?? 0];
    product += a * b;
    early += a * a;
    late += b * b;
  }
  const both = Math.sqrt(early * late);
  return both > 0 ? product / both : 0;
}

/**
 * The likeness of a sound to itself at every shift.
 * @param x samples @param longest greatest shift, in samples @returns n(k) for k from 0 to `longest`
 */
export function likeness(x: Float64Array, longest: number): Float64Array {
  return Float64Array.from({ length: longest + 1 }, (_, k) => likenessAt(x, k));
}

/**
 * The highest point of each hill above nought, beyond the first dip.
 * @param n likeness by shift @param from hills before this shift do not count
 * @returns shifts, in order
 */
export function hills(n: Float64Array, from: number): number[] {
  const peaks: number[] = [];
  let k = 1;
  while (k < n.length && (n[k] ?? 0) > 0) k += 1;
  for (let best = 0; k < n.length - 1; k += 1) {
    if ((n[k] ?? 0) <= 0) best = 0;
    else if (k >= from && (n[k] ?? 0) > (n[k - 1] ?? 0) && (n[k] ?? 0) >= (n[k + 1] ?? 0)) {
      if (best === 0) peaks.push(k);
      else if ((n[k] ?? 0) > (n[best] ?? 0)) peaks[peaks.length - 1] = k;
      best = peaks.at(-1) ?? 0;
    }
  }
  return peaks;
}

/**
 * The first hill nearly as high as the highest: the period, and not a multiple of it.
 * @param n likeness by shift @param peaks its hills @param asGood share of the highest that counts as nearly, 0 to 1
 * @returns a shift; nothing where there is no hill
 */
export function firstGoodHill(n: Float64Array, peaks: readonly number[], asGood: number): number | undefined {
  const highest = Math.max(...peaks.map((p) => n[p] ?? 0));
  return peaks.find((p) => (n[p] ?? 0) >= asGood * highest);
}

/**
 * Top of the parabola through a point and its two neighbors: places a hill between samples.
 * @param n likeness by shift @param k shift of a hill, 1 to length - 2
 * @returns its place and height
 */
export function topAt(n: Float64Array, k: number): Fit {
  const [a, b, c] = [n[k - 1] ?? 0, n[k] ?? 0, n[k + 1] ?? 0];
  const bend = a - 2 * b + c;
  const shift = bend < 0 ? (0.5 * (a - c)) / bend : 0;
  return { at: k + shift, height: b - 0.25 * (a - c) * shift };
}
