/**
 * Greatest depth of cut.
 * Formula: h = (D - F) / 2 - c.
 * @param blade blade diameter D [m]
 * @param obstacle largest diameter that meets the work, F: flange, arm or guard edge [m], 0 <= F < D
 * @param clearance gap kept between that part and the work, c [m], >= 0
 * @returns h [m]; below zero when nothing of the blade is left to cut with
 * Example: a 12 in blade that cuts 3 1/4 in has lost 2 3/4 in of radius: F = 5 1/2 in, c = 0.
 */
export function cutDepth(blade: number, obstacle: number, clearance: number): number {
  return (blade - obstacle) / 2 - clearance;
}
