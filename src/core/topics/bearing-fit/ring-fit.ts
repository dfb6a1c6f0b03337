/** A bearing ring on its seat: both parts' limits and what they make together. */
import { ringLimits, type RingClass, type RingLimits } from '../bearing-size/index.ts';
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
