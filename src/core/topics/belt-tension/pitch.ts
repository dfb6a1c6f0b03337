/** The note in a stretch of sound: finds the frequency of a plucked belt from the samples of a microphone. */

export interface Pitch {
  /** [Hz] */
  readonly frequency: number;
  /** How much the sound repeats itself, 0 (noise) to 1 (a pure steady note). */
  readonly clarity: number;
}

export interface PitchRange {
  readonly lowest: number;
  readonly highest: number;
}

/** Belt spans of saws sound within this. Lower, a phone hears little; higher, the span is too short to judge by its note. */
export const beltNotes: PitchRange = { lowest: 15, highest: 400 };

/** Samples kept for each turn of the highest note; enough for the parabola, few enough for a phone. */
const perTurn = 20;
/** A peak this close to the best one is as good, and the first such peak is the fundamental. */
const asGood = 0.9;

/**
 * Frequency of the loudest repeating sound, from how like itself the sound is when moved by k samples:
 *   n(k) = sum x(j) x(j + k) / sqrt(sum x(j)^2 sum x(j + k)^2).
 * The first peak of n beyond its first dip that is nearly the highest gives the period; a parabola through three
 * points places it between samples. Each part has its own sum of squares, so a note that dies away evenly is
 * still 1 at its own period: the usual square difference would pull a dying note up by some tenths of a percent.
 * @param samples sound as it comes from the microphone, any loudness
 * @param rate samples each second [Hz]
 * @param range lowest and highest note looked for [Hz]
 * @returns nothing when there is silence, when the stretch is shorter than two turns of the lowest note,
 *   or when nothing in it repeats
 * Assumes one note at a time. Overtones do no harm, even louder than the fundamental.
 * Example: 112 Hz with overtones, dying away in 0.3 s, at 48 kHz -> 112.0 Hz, clarity above 0.9.
 * Source: choice of the peak and parabola after mcleod-wyvill-2005.
 */
export function findPitch(samples: ArrayLike<number>, rate: number, range: PitchRange = beltNotes): Pitch | undefined {
  const keepEvery = Math.max(1, Math.floor(rate / (range.highest * perTurn)));
  const x = thinned(samples, keepEvery);
  const kept = rate / keepEvery;
  const longest = Math.ceil(kept / range.lowest) + 1;
  if (x.length < 2 * longest) return undefined;
  const n = likeness(x, longest);
  const peak = firstGoodPeak(n, Math.max(2, Math.floor(kept / range.highest) - 1));
  if (peak === undefined) return undefined;
  const { at, height } = parabola(n, peak);
  const frequency = kept / at;
  if (frequency < range.lowest || frequency > range.highest) return undefined;
  return { frequency, clarity: Math.min(1, Math.max(0, height)) };
}

/** Means of neighbouring samples, less their mean: fewer samples, no hiss above the notes wanted, no standing offset. */
function thinned(samples: ArrayLike<number>, keepEvery: number): Float64Array {
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

/** n(k) for k from 0 to `longest`; 0 where there is no sound at all. */
function likeness(x: Float64Array, longest: number): Float64Array {
  const n = new Float64Array(longest + 1);
  for (let k = 0; k <= longest; k += 1) {
    let [product, early, late] = [0, 0, 0];
    for (let j = 0; j + k < x.length; j += 1) {
      const [a, b] = [x[j] ?? 0, x[j + k] ?? 0];
      product += a * b;
      early += a * a;
      late += b * b;
    }
    const both = Math.sqrt(early * late);
    n[k] = both > 0 ? product / both : 0;
  }
  return n;
}

/** The highest point of each hill above nought, then the first hill nearly as high as the highest of them. */
function firstGoodPeak(n: Float64Array, from: number): number | undefined {
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
  const highest = Math.max(...peaks.map((p) => n[p] ?? 0));
  return peaks.find((p) => (n[p] ?? 0) >= asGood * highest);
}

/** Top of the parabola through a point and its two neighbours. */
function parabola(n: Float64Array, k: number): { readonly at: number; readonly height: number } {
  const [a, b, c] = [n[k - 1] ?? 0, n[k] ?? 0, n[k + 1] ?? 0];
  const bend = a - 2 * b + c;
  const shift = bend < 0 ? (0.5 * (a - c)) / bend : 0;
  return { at: k + shift, height: b - 0.25 * (a - c) * shift };
}
