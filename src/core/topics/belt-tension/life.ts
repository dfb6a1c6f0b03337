/** Flex life of a V belt: what over-tightening costs. */

/** Exponent of the life law for classical sections. Source: shigley-belt-life, Problem 17-17. */
export const lifeExponent = 10.93;

/**
 * Passes a belt stands, by the durability law for two pulleys.
 * Formula: N = 1 / ((K / T_a)^-b + (K / T_b)^-b).
 * @param limit K [N] @param exponent b [1] @param peakSmall, peakLarge peak tension on each pulley, strand plus bending [N], > 0
 * @returns N, passes [1]; counts above 10^9 are only "more than 10^9"
 * Example: 1193 lbf, 10.929, 150.1 and 105.2 lbf -> 6.76e9. Source: shigley-belt-life, Problem 17-17.
 */
export function flexPasses(limit: number, exponent: number, peakSmall: number, peakLarge: number): number {
  return 1 / ((limit / peakSmall) ** -exponent + (limit / peakLarge) ** -exponent);
}

/**
 * Hours those passes last.
 * Formula: t = N L / v.
 * @param passes N [1] @param length L [m] @param speed v [m/s], > 0 @returns t [s]
 * Example: 1e9 passes, 2.33 m, 25.6 m/s -> 25 340 h. Source: shigley-belt-life, Problem 17-17.
 */
export function flexLife(passes: number, length: number, speed: number): number {
  return (passes * length) / speed;
}

/**
 * Life against life at another tension, from the peak tension alone.
 * Formula: k = (T_ref / T)^b.
 * @param peak T [N], > 0 @param reference T_ref [N] @returns k [1]
 * Assumes the bending part of the peak is small; where it is not, the true loss is less.
 * Example: 10 % over -> 0.35.
 */
export function lifeShare(peak: number, reference: number): number {
  return (reference / peak) ** lifeExponent;
}
