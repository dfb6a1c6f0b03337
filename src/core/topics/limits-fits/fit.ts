/** A hole and a shaft together. */
import type { Limits } from './limits.ts';

export interface Fit {
  /** Shaft minus hole [m]: positive is interference, negative is clearance. */
  readonly least: number;
  readonly mean: number;
  readonly most: number;
}

/**
 * Interference of a shaft in a hole of the same nominal size, from both parts' limits.
 * Formulas: most = es - EI, least = ei - ES, mean halfway.
 * @param hole limit deviations of the hole [m] @param shaft limit deviations of the shaft [m]
 * @returns [m]; below zero is clearance
 * Example: 50 H7/s6 -> 59 - 0 = 59 µm at most, 43 - 25 = 18 µm at least (shigley-9, Ex. 7-7 takes the same fit).
 */
export function fitOf(hole: Limits, shaft: Limits): Fit {
  const most = shaft.upper - hole.lower;
  const least = shaft.lower - hole.upper;
  return { least, most, mean: (least + most) / 2 };
}

export type FitKind = 'clearance' | 'transition' | 'interference';

/** @returns `transition` when the limits allow both. A zero interference counts as clearance. */
export function kindOfFit({ least, most }: Fit): FitKind {
  if (most <= 1e-12) return 'clearance';
  return least > 1e-12 ? 'interference' : 'transition';
}

/** Zones usual for rolling-bearing seats, loosest first. Which one applies is in `bearing-fit`. */
// prettier-ignore
export const shaftSeats = ['g6', 'h6', 'h5', 'j6', 'j5', 'js6', 'k6', 'k5', 'm6', 'm5', 'n6', 'p6'] as const;
// prettier-ignore
export const housingSeats = ['G7', 'H8', 'H7', 'H6', 'JS7', 'J7', 'J6', 'K7', 'K6', 'M7', 'M6', 'N7', 'N6', 'P7', 'P6'] as const;
