/**
 * OSHA's printed table of times, 29 CFR 1910.95 Appendix A, Table G-16a. Its figures are rounded, and a level between
 * two rows takes the next higher one, so that a dose by the table comes out a little above the formula's.
 */
import type { Period } from './dose.ts';

const hour = 3600;

/** Hours from 80 dB(A) up, one row a decibel. Source: osha-1910-95. */
// prettier-ignore
const hours: readonly number[] = [
  32, 27.9, 24.3, 21.1, 18.4, 16, 13.9, 12.1, 10.6, 9.2,
  8, 7.0, 6.1, 5.3, 4.6, 4, 3.5, 3.0, 2.6, 2.3,
  2, 1.7, 1.5, 1.3, 1.1, 1, 0.87, 0.76, 0.66, 0.57,
  0.5, 0.44, 0.38, 0.33, 0.29, 0.25, 0.22, 0.19, 0.16, 0.14,
  0.125, 0.11, 0.095, 0.082, 0.072, 0.063, 0.054, 0.047, 0.041, 0.036, 0.031,
];
const first = 80;
const last = first + hours.length - 1;

/**
 * Time a day at a level by the printed table, the level rounded up to the next whole decibel.
 * @param level [dB(A)] @returns [s]; Infinity below 80, where the table begins, undefined over 130, where it ends
 * Example: 95 -> 4 h; 98.5 -> the row of 99, 2.3 h. Source: osha-1910-95.
 */
export function tableTime(level: number): number | undefined {
  if (level < first) return Infinity;
  const row = hours[Math.ceil(level - 1e-9) - first];
  return row === undefined ? undefined : row * hour;
}

/**
 * Dose of a day by the printed table: D = sum of C / T [1].
 * @returns undefined where a level lies beyond the table
 * Example: 80.5, 81, 82, 95 dB(A) for 3, 2, 2, 1 h -> 0.5115. Source: osha-1910-95.
 */
export function tableDose(periods: readonly Period[]): number | undefined {
  const times = periods.map((p) => tableTime(p.level));
  if (times.includes(undefined)) return undefined;
  return periods.reduce((sum, p, k) => sum + p.time / (times[k] ?? Infinity), 0);
}

/** Highest level of the table [dB(A)]. */
export const tableEnd = last;
