/** Limits of a zone at a size: one table a zone, worked out once, then only looked up. */
import { deviationAt, toleranceAt, type Deviation } from './deviation.ts';
import { stepEnds, stepIndex } from './steps.ts';
import { readZone, type Zone } from './zone.ts';

export interface Limits {
  /** Upper and lower limit deviation from the nominal size [m]. */
  readonly upper: number;
  readonly lower: number;
}

const tables = new Map<string, readonly (Limits | undefined)[]>();
const noZone: readonly (Limits | undefined)[] = [];
/** More names than the standard has zones (28 letters, 20 grades, holes and shafts): odd spellings stop being kept. */
const mostKept = 2000;

/**
 * Limit deviations of a tolerance zone.
 * @param size nominal size [m], over 0 up to 3.15
 * @param name zone, such as "H7" or "k5"
 * @returns [m]; undefined where the standard defines no such zone at this size, or the size is outside the table
 * Example: 25 mm, k5 -> +11 µm / +2 µm. 52 mm, N7 -> -9 µm / -39 µm. 600 mm, N7 -> -44 µm / -114 µm.
 * Source: iso-286-1.
 */
export function limitsAt(size: number, name: string): Limits | undefined {
  return (tables.get(name) ?? tableOf(name))[stepIndex(size)];
}

function tableOf(name: string): readonly (Limits | undefined)[] {
  const zone = readZone(name);
  const table = zone ? stepEnds.map((end) => limitsInStep(end, zone)) : noZone;
  if (tables.size < mostKept) tables.set(name, table);
  return table;
}

function limitsInStep(end: number, zone: Zone): Limits | undefined {
  const tolerance = toleranceAt(end, zone.grade);
  const deviation = deviationAt(end, zone);
  if (tolerance === undefined || deviation === undefined) return undefined;
  const { upper, lower } = bothLimits(deviation, tolerance);
  return { upper: metres(upper), lower: metres(lower) };
}

function bothLimits({ limit, value }: Deviation, tolerance: number): Limits {
  if (limit === 'both') return { upper: value, lower: -value };
  return limit === 'upper' ? { upper: value, lower: value - tolerance } : { upper: value + tolerance, lower: value };
}

/** Adding zero turns -0 into 0. */
function metres(micrometres: number): number {
  return micrometres / 1e6 + 0;
}

export interface Explained {
  readonly zone: Zone;
  readonly limits: Limits;
  /** [m] */
  readonly tolerance: number;
  readonly deviation: Deviation;
  /** The size step, mm. */
  readonly over: number;
  readonly upTo: number;
}

/** The limits with what they were made of, for the working. Same refusals as `limitsAt`. */
export function explainLimits(size: number, name: string): Explained | undefined {
  const index = stepIndex(size);
  const upTo = stepEnds[index];
  const zone = readZone(name);
  const limits = limitsAt(size, name);
  if (!zone || !limits || upTo === undefined) return undefined;
  const tolerance = toleranceAt(upTo, zone.grade);
  const deviation = deviationAt(upTo, zone);
  if (tolerance === undefined || deviation === undefined) return undefined;
  return { zone, limits, tolerance: metres(tolerance), deviation, over: stepEnds[index - 1] ?? 0, upTo };
}

/**
 * The older custom for js7 to js11: an odd tolerance in whole micrometres may be halved downwards (25 js7: 10, not 10.5).
 * @param tolerance IT value [m] @returns half of it [m]
 */
export function roundedHalf(tolerance: number): number {
  return Math.floor(Math.round(tolerance * 1e6) / 2) / 1e6;
}
