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

/**
 * Blade that reaches a wanted depth.
 * Formula: D = 2 (h + c) + F.
 * @param depth h [m], >= 0 @param obstacle F [m], >= 0 @param clearance c [m], >= 0
 * @returns D [m] Example: 3 1/4 in with F = 5 1/2 in -> 12 in.
 */
export function bladeForDepth(depth: number, obstacle: number, clearance: number): number {
  return 2 * (depth + clearance) + obstacle;
}

/**
 * Depth of a twin-blade head: two cuts, the core between them broken out, the arm follows into the slot.
 * Formula: h = A + D / 2 - c.
 * @param blade D [m], > 0 @param reach A, from the part that stops on the surface to the blade shaft [m] @param clearance c [m], >= 0
 * @returns h [m]; more than half the blade once A is more than c
 * Example: 230 mm, 280 mm reach, no gap -> 395 mm. Source: geometry.
 */
export function twinDepth(blade: number, reach: number, clearance: number): number {
  return reach + blade / 2 - clearance;
}

/**
 * Length of the cut at the surface with the blade standing at a depth.
 * Formula: l = 2 sqrt(h (D - h)).
 * @param depth h [m], 0 to D @returns l [m]; the blade's full diameter from half its depth on
 * Example: 350 mm, 125 mm deep -> 335 mm long at the top and nothing at the bottom.
 */
export function cutLength(blade: number, depth: number): number {
  const h = Math.min(Math.max(depth, 0), blade / 2);
  return 2 * Math.sqrt(h * (blade - h));
}

/**
 * Least flange diameter as a share of the blade.
 * @param share 1/3 in general (osha-1910-215); cutting-off wheels have rules of their own (cut-off-flange-share, memory)
 * @returns [m] Example: 4 in, one third -> 1.33 in.
 */
export function leastFlange(blade: number, share: number): number {
  return blade * share;
}
