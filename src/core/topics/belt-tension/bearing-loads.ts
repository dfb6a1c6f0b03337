/** What each of two bearings carries when the pulley overhangs on one side of them. */

export interface BearingLoads {
  /** On the bearing next to the pulley [N]. */
  readonly near: number;
  /** On the far bearing [N]; it pulls the other way. */
  readonly far: number;
}

/**
 * Loads on the two bearings of a shaft with an overhung pulley.
 * Formula (moments about each bearing): near = F (a + b) / b, far = F a / b.
 * @param pull pull of the belt on the shaft, F [N], >= 0
 * @param overhang from the middle of the pulley to the middle of the near bearing, a [m], >= 0; 0 puts it all on the near one
 * @param apart between the middles of the bearings, b [m], > 0
 * @returns both loads [N]; their difference is F
 * Assumes a stiff shaft and no other load on it.
 * Example: 600 N, 25 mm out, bearings 50 mm apart -> 900 N near, 300 N far.
 * Source: statics (arithmetic).
 */
export function bearingLoads(pull: number, overhang: number, apart: number): BearingLoads {
  return { near: (pull * (overhang + apart)) / apart, far: (pull * overhang) / apart };
}
