/** Dose and average of a day's noise by the two rules of exchange: 5 dB (OSHA) and 3 dB (NIOSH, EU and most of the world). */
import { eightHours } from '../../exposure/index.ts';

export interface Period {
  /** [dB(A)] */
  readonly level: number;
  /** [s] */
  readonly time: number;
}

/** A rule for adding noise: the level a whole day may have, and by how many dB it may rise when the time is halved. */
export interface Rule {
  readonly criterion: number;
  readonly exchange: number;
  /** Levels below are left out [dB(A)]. */
  readonly threshold: number;
}

/** OSHA's hearing-conservation dose. Source: osha-1910-95. */
export const osha: Rule = { criterion: 90, exchange: 5, threshold: 80 };
/** OSHA's dose for the limit itself, which counts levels from 90 dB(A) up. Source: middendorf-1983. */
export const oshaLimit: Rule = { ...osha, threshold: 90 };
/** NIOSH's recommended limit. Source: niosh-98-126. */
export const niosh: Rule = { criterion: 85, exchange: 3, threshold: 80 };

/**
 * Time a day that a level may last: T = 8 h / 2^((L - L_c) / q).
 * @param level L [dB(A)] @returns T [s]; Infinity below the rule's threshold
 * Example: OSHA, 95 -> 4 h; NIOSH, 100 -> 15 min. Source: osha-1910-95, niosh-98-126.
 */
export function allowedTime(level: number, rule: Rule): number {
  return level < rule.threshold ? Infinity : eightHours / 2 ** ((level - rule.criterion) / rule.exchange);
}

/** Dose of a day: D = sum of C / T. @returns D [1]; 1 is the whole of it. Source: osha-1910-95, niosh-98-126. */
export function dose(periods: readonly Period[], rule: Rule): number {
  return periods.reduce((sum, p) => sum + p.time / allowedTime(p.level, rule), 0);
}

/**
 * OSHA's average level: TWA = 16.61 log10(D) + 90.
 * @param d D [1], > 0 @returns [dB(A)]; undefined for no dose at all
 * Example: 0.5 -> 85.0. Source: osha-1910-95.
 */
export function oshaAverage(d: number): number | undefined {
  return d > 0 ? 16.61 * Math.log10(d) + 90 : undefined;
}

/** NIOSH's average level: TWA = 10 log10(D) + 85 [dB(A)]; undefined for no dose. Example: 2.1787 -> 88.38. Source: niosh-98-126. */
export function nioshAverage(d: number): number | undefined {
  return d > 0 ? 10 * Math.log10(d) + 85 : undefined;
}

/** Energy of a day against 8 h at 0 dB(A): sum of T 10^(L/10) / 8 h [1]. */
export function energy(periods: readonly Period[]): number {
  return periods.reduce((sum, p) => sum + (p.time / eightHours) * 10 ** (p.level / 10), 0);
}

/**
 * Daily exposure level: L = 10 log10(sum of T 10^(L/10) / 8 h). No level is left out.
 * @returns [dB(A)]; undefined for no time at all
 * Example: 103 for 45 min and 82 for 6 h -> 92.99. Source: directive-2003-10-ec.
 */
export function dailyLevel(periods: readonly Period[]): number | undefined {
  const e = energy(periods);
  return e > 0 ? 10 * Math.log10(e) : undefined;
}

/** Points of a day: 100 x 10^((L - 85) / 10) [1]. Example: 90 -> 316. Source: hse-weekly-noise. */
export function noisePoints(daily: number): number {
  return 100 * 10 ** ((daily - 85) / 10);
}

/** A week's level: 10 log10(sum of 10^(L/10) / 5) [dB(A)], always over five days. Source: hse-weekly-noise. */
export function weeklyLevel(daily: readonly number[]): number {
  return 10 * Math.log10(daily.reduce((sum, l) => sum + 10 ** (l / 10), 0) / 5);
}

/** OSHA's action level for a long shift: 90 + 16.61 log10(50 / (12.5 h)) [dB(A)]. Example: 10 h -> 83.4. Source: osha-1910-95. */
export function oshaActionLevel(shift: number): number {
  return 90 + 16.61 * Math.log10(50 / (12.5 * (shift / 3600)));
}

const wholeDay = 86400;

/**
 * Time left today at a level before the dose is whole: t = (1 - D) T, never below nothing nor past the day.
 * @param used D so far [1] @returns [s]
 * Example: OSHA, 103 for 30 min, next 103 -> 49.17 min. Source: osha-1910-95.
 */
export function timeLeft(used: number, level: number, rule: Rule): number {
  return Math.min(wholeDay, Math.max(0, (1 - used) * allowedTime(level, rule)) || 0);
}

/**
 * Time left today at a level before the daily level stands at a limit:
 * t = 8 h (10^(L_lim/10) - E) / 10^(L/10), never below nothing nor past the day.
 * @param used E, energy so far, from `energy` [1] @returns [s]
 * Source: directive-2003-10-ec (inverse of the level).
 */
export function timeLeftToLevel(used: number, level: number, limit: number): number {
  return Math.min(wholeDay, Math.max(0, (eightHours * (10 ** (limit / 10) - used)) / 10 ** (level / 10)));
}
