/** Limits of bearing rings and of internal clearance, from the tables. */
import { clearanceRows, type Group } from './tables/clearance.ts';
import { ringBores, ringOutsides, type RingClass } from './tables/ring-tolerances.ts';

interface Row {
  readonly over: number;
  readonly upTo: number;
}

/** A billionth of a millimetre, so that a size typed in inches still finds its step. */
const slack = 1e-9;

function rowOf<T extends Row>(rows: readonly T[], size: number): T | undefined {
  const mm = size * 1000;
  return (
    rows.find((r) => mm > r.over + slack && mm <= r.upTo + slack) ??
    (Math.abs(mm - (rows[0]?.over ?? 0)) <= slack ? rows[0] : undefined)
  );
}

export type RingSide = 'bore' | 'outside';

export interface RingLimits {
  /** Deviations of the mean diameter from nominal [m]. */
  readonly upper: number;
  readonly lower: number;
  readonly source: 'iso-492' | 'iso-492-memory';
}

/**
 * Limits of the mean bore or mean outside diameter of a radial bearing.
 * @param side which diameter @param size nominal diameter [m], bores 0.0025 to 0.5, outsides 0.006 to 0.5
 * @param ringClass tolerance class @returns [m]; undefined outside the table
 * Example: 25 mm bore, Normal -> 0 / -10 µm. 52 mm outside, Normal -> 0 / -13 µm.
 * Source: iso-492. The step splits at 150 mm for outsides. Limits of a single reading are wider than these of the mean.
 */
export function ringLimits(side: RingSide, size: number, ringClass: RingClass): RingLimits | undefined {
  const row = rowOf(side === 'bore' ? ringBores : ringOutsides, size);
  return (
    row && {
      upper: 0,
      lower: row[ringClass] / 1e6,
      source: row.unseen.includes(ringClass) ? 'iso-492-memory' : 'iso-492',
    }
  );
}

export interface ClearanceLimits {
  /** [m] */
  readonly least: number;
  readonly most: number;
  readonly source: 'iso-5753-1' | 'iso-5753-1-memory';
}

/**
 * Radial internal clearance of a deep-groove ball bearing before it is fitted.
 * @param bore [m], 0.006 to 0.2 @param group clearance group @returns [m]; undefined outside the table
 * Example: 25 mm, CN -> 5 to 20 µm; C3 -> 13 to 28 µm.
 * Source: iso-5753-1. Its steps split at 24, 40 and 65 mm, where ISO 286 has none or others.
 */
export function clearanceLimits(bore: number, group: Group): ClearanceLimits | undefined {
  const row = rowOf(clearanceRows, bore);
  return (
    row && {
      least: row[group][0] / 1e6,
      most: row[group][1] / 1e6,
      source: row.unseen ? 'iso-5753-1-memory' : 'iso-5753-1',
    }
  );
}
