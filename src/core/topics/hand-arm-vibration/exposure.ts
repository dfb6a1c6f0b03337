/** A day's hand-arm vibration: values of several tools and the time the hands hold them running. */
import { eightHours } from '../../exposure/index.ts';

/** Directive 2002/44/EC, article 3 [m/s2]. Source: eu-2002-44. */
export const actionValue = 2.5;
export const limitValue = 5;
/** Points of a day at the two values. Source: hse-vibration-points. */
export const actionPoints = 100;
export const limitPoints = 400;

export interface ToolUse {
  /** a [m/s2] */
  readonly value: number;
  /** [s] with hands on the running tool */
  readonly time: number;
}

/**
 * A tool's part of the day: A_i(8) = a sqrt(T / 8 h) [m/s2].
 * Example: 6.5 for 2 h -> 3.25. Source: eu-2002-44.
 */
export function partial({ value, time }: ToolUse): number {
  return value * Math.sqrt(time / eightHours);
}

/**
 * The day: A(8) = sqrt(sum of a^2 T / 8 h) [m/s2].
 * Example: 6 for 1.5 h and 9 for 0.5 h -> 3.437. Source: eu-2002-44.
 */
export function daily(uses: readonly ToolUse[]): number {
  return Math.sqrt(uses.reduce((sum, u) => sum + partial(u) ** 2, 0));
}

/**
 * Points: P = 100 (a / 2.5)^2 T / 8 h, which is 2 a^2 an hour [1]. They add up; P = 16 A(8)^2.
 * Example: 5 for 3 h -> 150. Source: hse-vibration-points.
 */
export function points({ value, time }: ToolUse): number {
  return actionPoints * (value / actionValue) ** 2 * (time / eightHours);
}

const wholeDay = 86400;

/**
 * Time left at a value before the day's points reach a number: t = (P_lim - P) / P an hour.
 * @returns [s], from nothing to 24 h
 * Example: 64 points done, next 6 -> 30 min to 100. Source: hse-vibration-points.
 */
export function timeLeft(done: number, value: number, limit: number): number {
  const anHour = points({ value, time: 3600 });
  return Math.min(wholeDay, (Math.max(0, limit - done) / anHour) * 3600);
}

/** Three axes into one: a = sqrt(x^2 + y^2 + z^2) [m/s2]. Example: 2, 3, 6 -> 7. Source: iso-5349-1. */
export function totalValue(x: number, y: number, z: number): number {
  return Math.hypot(x, y, z);
}

/** Share of a declared value taken for its uncertainty where none is given. Source: hse-oc-246-31. */
export const assumedUncertainty = 0.4;

/** Value to reckon with for a declared one: a + K, K being 0.4 a where it is not given [m/s2]. Source: hse-oc-246-31. */
export function withUncertainty(value: number, uncertainty?: number): number {
  return value + (uncertainty ?? assumedUncertainty * value);
}

/** The other way, where only the handbook's figure is known: 2 a [m/s2]. Never on top of K. Source: hse-double-declared. */
export function doubled(value: number): number {
  return 2 * value;
}

/**
 * Years of such days until a tenth of a group shows white fingers: 31.8 A(8)^-1.06, A(8) in m/s2 [s].
 * For a group, not for a person, and no promise. Example: 5 -> 5.8 years. Source: iso-5349-1-annex-c.
 */
export function yearsToWhiteFinger(day: number): number {
  return 31.8 * day ** -1.06 * 31557600;
}
