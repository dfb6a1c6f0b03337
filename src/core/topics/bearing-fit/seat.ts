/** A ring on its seat: from the limits of both, and from readings of the seat. */
import { ringLimits, type RingClass, type RingLimits } from '../bearing-size/index.ts';
import type { Problem } from '../../contract/result.ts';
import { isOver } from '../../thresholds/index.ts';
import { fitOf, limitsAt, type Fit, type Limits } from '../limits-fits/index.ts';

export type Seat = 'shaft' | 'housing';

export interface RingFit {
  readonly seat: Limits;
  readonly ring: RingLimits;
  /** Interference [m]; below zero is clearance. */
  readonly fit: Fit;
}

/**
 * Interference of a bearing ring on a seat made to a tolerance zone.
 * Formulas: shaft I_max = es - t_l, I_min = ei - t_u; housing I_max = t_u - EI, I_min = t_l - ES.
 * @param seat which seat @param size bore or outside diameter [m] @param zone tolerance zone of the seat @param ringClass class of the bearing
 * @returns undefined when the zone or the ring is not in the tables at this size, or the zone is of the other kind
 * Example: 25 k5, Normal -> +21 / +2 µm. 52 N7, Normal -> +39 / -4 µm. Sources: iso-286-1, iso-492.
 */
export function ringFit(seat: Seat, size: number, zone: string, ringClass: RingClass): RingFit | undefined {
  const limits = limitsAt(size, zone);
  const ring = ringLimits(seat === 'shaft' ? 'bore' : 'outside', size, ringClass);
  if (!limits || !ring || !isFor(seat, zone)) return undefined;
  return { seat: limits, ring, fit: seat === 'shaft' ? fitOf(ring, limits) : fitOf(limits, ring) };
}

/** Shaft zones have small letters, housing zones capitals. */
export function isFor(seat: Seat, zone: string): boolean {
  const first = zone.trim()[0] ?? '';
  return (first === first.toLowerCase()) === (seat === 'shaft');
}

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

/** No seat worth measuring is worn by more than half a millimeter and a fiftieth of its size: our choice. */
const farApart = 5e-4;
const farShare = 0.02;

/**
 * Readings that can't be of a seat of this size: a slip of the thimble or the wrong seat, not wear.
 * @param size nominal [m] @param rows readings [m]
 * @param ring measured ring, if it was [m]
 * @returns one problem for each reading more than 0.5 mm and 2 % of the size away; a choice, wide enough for any seat worth measuring
 */
export function farReadings(size: number, rows: readonly Reading[], ring?: number): Problem[] {
  const far = (field: string, got: number): Problem[] =>
    isOver(Math.abs(got - size), farApart + farShare * size)
      ? [{ field, code: 'reading-far', data: { got, size } }]
      : [];
  const ofRows = rows.flatMap((r, i) => [
    ...far(`readings.${i + 1}.across`, r.across),
    ...far(`readings.${i + 1}.quarter`, r.quarter),
  ]);
  return ring === undefined ? ofRows : [...ofRows, ...far('ring', ring)];
}

/** Smallest and largest size a ring may have [m]; the same twice when it was measured. */
export interface RingSpan {
  readonly smallest: number;
  readonly largest: number;
}

/**
 * Interference of a measured seat with a ring between two sizes.
 * Formulas: shaft I = d_s - d_r, housing I = d_r - d_s; the mean from the means, the ends from the farthest pairs.
 * @param seat which seat @param form of the readings [m] @param ring [m] @returns [m]; below zero is clearance
 * Example: shaft 25.006 to 25.008, mean 25.007, ring 24.996 -> 10 to 12 µm, mean 11. Source: arithmetic.
 */
export function measuredInterference(seat: Seat, form: SeatForm, ring: RingSpan): Fit {
  const middle = (ring.smallest + ring.largest) / 2;
  return seat === 'shaft'
    ? { mean: form.mean - middle, least: form.smallest - ring.largest, most: form.largest - ring.smallest }
    : { mean: middle - form.mean, least: ring.smallest - form.largest, most: ring.largest - form.smallest };
}
