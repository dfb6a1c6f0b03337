/** The gap of a piston ring in its bore: what is usual, how it grows with the bore, and what heat takes of it. */

/** Builders' rule for the gap, as shares of the bore. Source: common-practice. */
export const ringGapShare = { least: 0.0035, most: 0.0045 } as const;

/**
 * How much a gap grows when the bore wears: the ring follows the wall round.
 * Formula: dg = pi dD.
 * @param growth dD of the bore's diameter [m], any @returns dg [m]
 * Example: 0.127 mm -> 0.399 mm. Source: arithmetic.
 */
export function gapGrowth(growth: number): number {
  return Math.PI * growth;
}

/**
 * How much of a gap heat closes when the ring gets hotter than the wall.
 * Formula: dg = pi D a dT.
 * @param bore D [m], at least 0 @param alpha a, expansion of the ring [1/K]; cast iron about 11e-6 (memory)
 * @param rise dT, ring over wall [K], any @returns dg [m]
 * Example: 50 mm, 11e-6, 100 K -> 0.173 mm. Source: ring-heat.
 */
export function gapClosed(bore: number, alpha: number, rise: number): number {
  return Math.PI * bore * alpha * rise;
}

/** Under this share of the bore the ends meet when hot. Source: common-practice. */
export const gapButts = 0.003;
/** Wear of the bore at which a small two-stroke's cylinder is done, as growth of its diameter [m]. Source: army-tm-small-two-stroke. */
export const boreWearMost = 0.005 * 0.0254;

/**
 * The widest gap that a worn but usable bore explains: the rule's widest, and what the bore's wear adds.
 * Formula: g = 0.0045 D + pi 0.127 mm.
 * @param bore D [m], at least 0 @returns g [m]
 * Example: 50 mm -> 0.624 mm. Source: common-practice for the rule, army-tm-small-two-stroke for the wear.
 */
export function widestGap(bore: number): number {
  return ringGapShare.most * bore + gapGrowth(boreWearMost);
}
