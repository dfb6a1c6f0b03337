/** The note in a stretch of sound: finds the frequency of a plucked belt from the samples of a microphone. */
import { firstGoodHill, hills, likeness, thinned, topAt } from '../../sound/index.ts';

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
  const peak = firstGoodHill(n, hills(n, Math.max(2, Math.floor(kept / range.highest) - 1)), asGood);
  if (peak === undefined) return undefined;
  const { at, height } = topAt(n, peak);
  const frequency = kept / at;
  if (frequency < range.lowest || frequency > range.highest) return undefined;
  return { frequency, clarity: Math.min(1, Math.max(0, height)) };
}
