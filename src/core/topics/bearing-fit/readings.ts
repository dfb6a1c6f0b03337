/** What a row of micrometer readings says about a seat. */
import type { Problem } from '../../contract/result.ts';

export interface Reading {
  /** Across the seat, and across it a quarter turn round, at the same place along it [m]. */
  readonly across: number;
  readonly quarter: number;
}

export interface SeatForm {
  readonly mean: number;
  readonly smallest: number;
  readonly largest: number;
  /** Difference between the places along the seat, of their means [m]. */
  readonly taper: number;
  /** Largest difference between the two readings at one place [m]. */
  readonly outOfRound: number;
}

/**
 * Mean, spread, taper and out-of-round of a seat.
 * @param rows at least one place along the seat @returns [m]
 * Assumes a two-point instrument: a three-lobed seat can read round and is not.
 * Example: 25.010/25.008 and 25.004/25.002 -> mean 25.006, taper 6 µm, out of round 2 µm.
 */
export function seatForm(rows: readonly Reading[]): SeatForm {
  const all = rows.flatMap((r) => [r.across, r.quarter]);
  const means = rows.map((r) => (r.across + r.quarter) / 2);
  return {
    mean: means.reduce((sum, m) => sum + m, 0) / Math.max(1, means.length),
    smallest: Math.min(...all),
    largest: Math.max(...all),
    taper: Math.max(...means) - Math.min(...means),
    outOfRound: Math.max(...rows.map((r) => Math.abs(r.across - r.quarter))),
  };
}

/**
 * Readings that can't be of a seat of this size: a slip of the thimble or the wrong seat, not wear.
 * @param size nominal [m] @param ring measured ring, if it was [m]
 * @returns one problem for each reading more than 0.5 mm and 2 % of the size away; a choice, wide enough for any seat worth measuring
 */
export function farReadings(size: number, rows: readonly Reading[], ring?: number): Problem[] {
  const far = (field: string, got: number): Problem[] =>
    Math.abs(got - size) > 5e-4 + 0.02 * size ? [{ field, code: 'reading-far', data: { got, size } }] : [];
  const ofRows = rows.flatMap((r, i) => [
    ...far(`readings.${i + 1}.across`, r.across),
    ...far(`readings.${i + 1}.quarter`, r.quarter),
  ]);
  return ring === undefined ? ofRows : [...ofRows, ...far('ring', ring)];
}

/** Interference of a measured seat with a ring between two sizes [m]. */
export function measuredInterference(
  seat: 'shaft' | 'housing',
  form: SeatForm,
  ring: { readonly smallest: number; readonly largest: number },
) {
  const middle = (ring.smallest + ring.largest) / 2;
  return seat === 'shaft'
    ? { mean: form.mean - middle, least: form.smallest - ring.largest, most: form.largest - ring.smallest }
    : { mean: middle - form.mean, least: ring.smallest - form.largest, most: ring.largest - form.smallest };
}
