/** From one reading after another to a speed to write down, with how sure it is, or to the plain word that it can't be told. */
import { isOver, isUnder } from '../thresholds/index.ts';
import type { EngineNote, Heard, NoSpeed } from './engine-note.ts';

/** Readings looked at together: some three seconds. Fewer than half of them say nothing yet. */
export const readingsKept = 24;
const readingsNeeded = 12;
/** From here a reading counts. Below it the sound repeats too poorly to go by. */
export const clearFrom = 0.75;
/** So many of the readings must be clear. */
const clearShare = 2 / 3;
/** From this share of clear readings that fit a second speed, both are said. */
const eitherShare = 1 / 4;
/** Readings further than this from the middle belong to another sound; so many of them, and nothing is said. */
const strayBy = 0.1;
const strayShare = 1 / 5;
/** Half the width that four readings of five lie in, as a share of the speed. */
export const steadyWithin = 0.01;
export const unsteadyFrom = 0.04;
/** What the sum itself may be off by in a note of uneven firing. Source: measured with made notes, tests/bench/engine.ts. */
export const leastError = 0.005;

export interface Speed {
  readonly kind: 'speed';
  /** [1/s] */
  readonly rotation: number;
  /** Plus or minus [1/s]. */
  readonly within: number;
  readonly sure: 'sure' | 'fair';
}

export type Settled =
  | { readonly kind: 'listening' }
  | Speed
  | { readonly kind: 'either'; readonly rotation: number; readonly other: number }
  | { readonly kind: 'cannot-tell'; readonly why: NoSpeed | 'jumps' | 'unsteady' };

/**
 * What the newest readings say together: the middle of the clear ones and how far four of five spread.
 * @param readings newest last; the last 24 are looked at
 * @returns `listening` below 12 readings; `cannot-tell` with the reason where fewer than two in three are clear, where they jump
 *   between speeds or where the speed wanders by 4 % and more; `either` where two speeds fit; else the speed
 * Example: 24 clear readings of 45.0 1/s -> 45.0, plus or minus 0.225, sure.
 */
export function settled(readings: readonly Heard[]): Settled {
  const newest = readings.slice(-readingsKept);
  if (newest.length < readingsNeeded) return { kind: 'listening' };
  const clear = newest.filter((r): r is EngineNote => r.kind === 'speed' && !isUnder(r.clarity, clearFrom));
  if (isUnder(clear.length, clearShare * newest.length)) return { kind: 'cannot-tell', why: mainReason(newest) };
  const speeds = clear.map((r) => r.rotation).sort((a, b) => a - b);
  const rotation = at(speeds, 0.5);
  const strays = speeds.filter((s) => isOver(Math.abs(s / rotation - 1), strayBy));
  const others = clear.flatMap((r) => (r.other === undefined ? [] : [r.other])).sort((a, b) => a - b);
  if (!isUnder(others.length, eitherShare * clear.length)) return { kind: 'either', rotation, other: at(others, 0.5) };
  if (isOver(strays.length, strayShare * speeds.length)) return { kind: 'cannot-tell', why: 'jumps' };
  const spread = (at(speeds, 0.9) - at(speeds, 0.1)) / 2;
  if (!isUnder(spread, unsteadyFrom * rotation)) return { kind: 'cannot-tell', why: 'unsteady' };
  return {
    kind: 'speed',
    rotation,
    within: Math.max(spread, leastError * rotation),
    sure: isUnder(spread, steadyWithin * rotation) ? 'sure' : 'fair',
  };
}

/** The reason given most often; readings that were not clear count as sound that does not repeat. */
function mainReason(readings: readonly Heard[]): NoSpeed {
  const given = readings.flatMap((r): NoSpeed[] =>
    r.kind === 'none' ? [r.why] : isUnder(r.clarity, clearFrom) ? ['nothing-repeats'] : [],
  );
  const reasons: readonly NoSpeed[] = ['nothing-repeats', 'out-of-range', 'hum', 'silent'];
  const count = (why: NoSpeed) => given.filter((g) => g === why).length;
  return reasons.reduce((most, why) => (count(why) > count(most) ? why : most));
}

/** The value at a share of a sorted list, 0 the least, 1 the greatest. */
function at(sorted: readonly number[], share: number): number {
  return sorted[Math.round(share * (sorted.length - 1))] ?? 0;
}
