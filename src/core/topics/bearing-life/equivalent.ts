/** Radial and axial load as one load. Source: shigley-ratings (Table 11-1). */

import { isOver } from '../../thresholds/index.ts';

/** [axial load over static rating; e; Y when axial over radial exceeds e]. X is then 0.56; else X = 1, Y = 0. */
const rows = [
  [0.014, 0.19, 2.3],
  [0.021, 0.21, 2.15],
  [0.028, 0.22, 1.99],
  [0.042, 0.24, 1.85],
  [0.056, 0.26, 1.71],
  [0.07, 0.27, 1.63],
  [0.084, 0.28, 1.55],
  [0.11, 0.3, 1.45],
  [0.17, 0.34, 1.31],
  [0.28, 0.38, 1.15],
  [0.42, 0.42, 1.04],
  [0.56, 0.44, 1],
] as const;

/** Rotation factor where the outer ring turns. */
const outerTurning = 1.2;

export interface Factors {
  readonly e: number;
  readonly X: number;
  readonly Y: number;
  /** Rotation factor: 1.2 when the outer ring turns. */
  readonly V: number;
}

/**
 * Factors for radial and axial load. Straight lines between the printed rows; the first or last row outside them.
 * @param radial [N], > 0 @param axial [N], >= 0 @param staticRating C_0 [N] @param outerTurns the outer ring turns
 * Example: 7 kN and 3 kN, C_0 34 kN, outer ring turns -> X 0.56, Y 1.53.
 */
export function loadFactors(radial: number, axial: number, staticRating: number, outerTurns: boolean): Factors {
  const V = outerTurns ? outerTurning : 1;
  const { e, Y } = between(axial / staticRating);
  return isOver(axial / (V * radial), e) ? { e, X: 0.56, Y, V } : { e, X: 1, Y: 0, V };
}

function between(share: number): { e: number; Y: number } {
  const [first, last] = [rows[0], rows[rows.length - 1] ?? rows[0]];
  if (share <= first[0]) return { e: first[1], Y: first[2] };
  const at = rows.findIndex((r) => r[0] >= share);
  if (at < 0) return { e: last[1], Y: last[2] };
  const [a, b] = [rows[at - 1] ?? first, rows[at] ?? last];
  const t = (share - a[0]) / (b[0] - a[0]);
  return { e: a[1] + t * (b[1] - a[1]), Y: a[2] + t * (b[2] - a[2]) };
}

/**
 * Radial and axial load as one. Formula: P = X * V * F_r + Y * F_a.
 * @param radial F_r [N] @param axial F_a [N] @param factors from `loadFactors` @returns P [N]
 * Example: 7 kN and 3 kN, X 0.56, Y 1.53, V 1.2 -> 9.29 kN. Source: shigley-ratings.
 */
export function equivalentLoad(radial: number, axial: number, { X, Y, V }: Omit<Factors, 'e'>): number {
  return X * V * radial + Y * axial;
}
