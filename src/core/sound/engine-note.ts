/** The speed of an engine from its sound: one stretch of a third of a second at a time. */
import { isUnder } from '../thresholds/index.ts';
import { cycleTurns, firingFrequency, type Engine, type RotationRange } from './engine.ts';
import { firstGoodHill, hills, likeness, likenessAt, thinned, topAt } from './repeats.ts';

/** A speed that one stretch of sound fits. */
export interface EngineNote {
  readonly kind: 'speed';
  /** [1/s] */
  readonly rotation: number;
  /** How much the sound repeats itself, 0 (noise) to 1. */
  readonly clarity: number;
  /** Another speed that the sound fits nearly as well, as half or twice [1/s]. */
  readonly other?: number;
}

/** Why a stretch of sound gives no speed. */
export type NoSpeed = 'silent' | 'nothing-repeats' | 'hum' | 'out-of-range';

export type Heard = EngineNote | { readonly kind: 'none'; readonly why: NoSpeed };

/** Samples kept for each firing at the highest speed, and the fewest a second before the bursts are smoothed. */
const perFiring = 20;
const leastRate = 4000;
/** Bursts come a little early and a little late: smoothed over this share of the shortest time between firings they still agree. */
const smoothed = 1 / 5;
/** A saw's note wavers more than a belt's: a hill this near to the highest is taken for the period. */
const asGood = 0.85;
/** Below this likeness a sound does not repeat at all: hiss has hills too. */
const repeats = 0.5;
/** An earlier hill of this share of the period's height may be the period itself. */
const nearlyAsGood = 0.7;
/** A hill halfway to the period, at least so high, says that something happens twice in it. */
const halfway = 0.4;
/** Rumble of wind and of the hand that holds the device is slower than this mean [s]. */
const rumble = 0.05;
/** Speeds that differ by less are one. */
const alike = 0.03;
/** A plain tone is its own opposite after half a period; bursts of an engine, with pauses between them, are far from that. */
const plainTone = -0.9;

/**
 * Speed of an engine from its firing. The sound repeats once in a working cycle, or once a firing where all firings are alike;
 * its shift of best fit is that time, whatever overtones the muffler makes and whether or not the fundamental came through.
 * Two cylinders alike repeat twice in a cycle. A two-stroke that fires weakly every second turn (rich, without load)
 * repeats once in two turns. Where two speeds fit, the range decides; where both lie in it, both are given.
 * @param samples sound as it comes from the microphone, any loudness @param rate samples each second [Hz]
 * @param engine strokes and cylinders @param range speeds looked for [1/s]
 * @returns a speed, or why there is none: `silent` also for a stretch shorter than two cycles of the lowest speed; `hum` for
 *   a plain tone without bursts, as a transformer or a fan makes; `out-of-range` when it repeats, but at no speed in the range
 * Assumes that the engine is the loudest thing that repeats. A second machine as loud as it can pass for it.
 * Example: a two-stroke at 9300 rpm, second overtone the loudest -> 155.0 1/s. Source: mcleod-wyvill-2005 for the fit.
 */
export function engineNote(samples: ArrayLike<number>, rate: number, engine: Engine, range: RotationRange): Heard {
  const firing = firingFrequency(range.highest, engine);
  const keepEvery = Math.max(1, Math.floor(rate / Math.max(leastRate, perFiring * firing)));
  const kept = rate / keepEvery;
  const sound = lessRumble(thinned(samples, keepEvery), Math.round(rumble * kept));
  const x = bursts(sound, Math.round((smoothed * kept) / firing / 2));
  const cycle = (kept * cycleTurns(engine)) / range.lowest;
  if (x.length < 2 * cycle || !x.some((v) => v !== 0)) return none('silent');
  const n = likeness(x, Math.min(Math.ceil(2 * cycle) + 1, Math.floor(x.length / 2)));
  const peaks = hills(n, Math.max(2, Math.floor(kept / (1.1 * firing))));
  const peak = firstGoodHill(n, peaks, asGood);
  if (peak === undefined) return none('nothing-repeats');
  const { at, height } = topAt(n, peak);
  if (isUnder(height, repeats)) return none('nothing-repeats');
  if (isUnder(likenessAt(sound, Math.round(at / 2)), plainTone * likenessAt(sound, peak))) return none('hum');
  const early = peaks.filter((p) => p < 0.9 * peak && (n[p] ?? 0) >= nearlyAsGood * height);
  const speeds = [
    ...cyclesThatFit(at, hillHalfway(n, at), engine),
    ...early.flatMap((p) => cyclesThatFit(topAt(n, p).at, hillHalfway(n, p), engine)),
  ]
    .map((c) => ({ ...c, rotation: (cycleTurns(engine) * kept) / c.cycle }))
    .filter((c) => c.rotation >= range.lowest && c.rotation <= range.highest);
  const [first] = speeds;
  if (first === undefined) return none('out-of-range');
  const found = { kind: 'speed' as const, rotation: first.rotation, clarity: Math.min(1, Math.max(0, height)) };
  const second = speeds.find((c) => c.mayBe && Math.abs(c.rotation / first.rotation - 1) > alike);
  return second ? { ...found, other: second.rotation } : found;
}

function none(why: NoSpeed): Heard {
  return { kind: 'none', why };
}

interface Cycle {
  /** In samples. */
  readonly cycle: number;
  /** It may be so even where a likelier cycle lies in the range. */
  readonly mayBe: boolean;
}

/**
 * Cycles that a period may be, the likelier first.
 * @param period of the sound, in samples @param half how well the sound fits itself halfway
 */
function cyclesThatFit(period: number, half: number, engine: Engine): Cycle[] {
  const once = { cycle: period, mayBe: true };
  if (engine.cylinders === 1)
    return engine.strokes === 2 && half >= halfway ? [once, { cycle: period / 2, mayBe: false }] : [once];
  // Two cylinders alike sound twice in a cycle. Unlike ones, or a V with uneven firing, once.
  const twice = { cycle: 2 * period, mayBe: true };
  if (half >= halfway) return [once, twice];
  return [twice, { ...once, mayBe: engine.strokes === 4 }];
}

/** Highest likeness within a twentieth of half the period. */
function hillHalfway(n: Float64Array, period: number): number {
  const reach = Math.max(1, Math.round(period / 40));
  const middle = Math.round(period / 2);
  return Math.max(...n.slice(middle - reach, middle + reach + 1));
}

function lessRumble(x: Float64Array, reach: number): Float64Array {
  const slow = movingMean(x, reach);
  return x.map((v, i) => v - (slow[i] ?? 0));
}

/**
 * The upper half of the sound, smoothed: a burst at each firing, whatever the muffler rings with. Of both halves a low note
 * would come twice in its period.
 */
function bursts(sound: Float64Array, reach: number): Float64Array {
  const upper = movingMean(
    sound.map((v) => Math.max(0, v)),
    reach,
  );
  const mean = upper.reduce((sum, v) => sum + v, 0) / upper.length;
  return upper.map((v) => v - mean);
}

/** Mean of each sample and `reach` neighbors on both sides. */
function movingMean(x: Float64Array, reach: number): Float64Array {
  const sums = new Float64Array(x.length + 1);
  for (let i = 0; i < x.length; i += 1) sums[i + 1] = (sums[i] ?? 0) + (x[i] ?? 0);
  return x.map((_, i) => {
    const [from, to] = [Math.max(0, i - reach), Math.min(x.length, i + reach + 1)];
    return ((sums[to] ?? 0) - (sums[from] ?? 0)) / (to - from);
  });
}
