/** A V belt between two cones that move along their axle. */

/**
 * How far the belt climbs when the halves close.
 * Formula: x = g / (2 tan(phi / 2)).
 * @param gap axial movement g [m] @param angle full angle of the V, phi [rad], 0 to pi
 * @returns x, gain of pitch radius [m]
 * Example: 1 mm at 38 degrees -> 1.452 mm. Source: geometry.
 */
export function climb(gap: number, angle: number): number {
  return gap / (2 * Math.tan(angle / 2));
}

export interface Cones {
  /** Pitch radius of a belt of nominal width with the halves closed [m]. */
  readonly closed: number;
  /** Full angle of the V [rad]. */
  readonly angle: number;
  /** Width the pulley is made for [m], at the same height as `belt`. */
  readonly nominal: number;
  /** Width of the belt that lies in it [m]. */
  readonly belt: number;
}

/**
 * Pitch radius at a gap. The belt lies where the cones stand as far apart as it is wide.
 * Formula: r = r_c - (g + w - w_b) / (2 tan(phi / 2)).
 * @param c pulley and belt @param gap between the faces that meet when closed, g [m], >= 0
 * @returns r [m]; a narrow belt lies lower, a wide one higher; below 0 where the belt would lie past the axle
 * Example: closed 50 mm, 38 degrees, 5 mm gap, belt as wide as made for -> 42.74 mm. Source: geometry.
 */
export function pitchRadius(c: Cones, gap: number): number {
  return c.closed - climb(gap + c.nominal - c.belt, c.angle);
}

/**
 * Turns of the pulley that carry the whole belt round once.
 * Formula: k = L / (2 pi r).
 * @param length L [m] @param radius r [m], > 0 @returns k [1]
 * Example: 900 mm on 50 mm -> 2.86. Source: geometry.
 */
export function turnsForLoop(length: number, radius: number): number {
  return length / (2 * Math.PI * radius);
}

/**
 * Tilt of a half that is nipped on the belt on one side and closed on the other.
 * Formula: epsilon = atan(g / d). @param gap left at the belt [m] @param diameter across which it acts, the pitch diameter [m]
 * @returns epsilon [rad]
 * Example: 0.5 mm across 100 mm -> 0.286 degrees. Source: geometry.
 */
export function tilt(gap: number, diameter: number): number {
  return Math.atan(gap / diameter);
}

/**
 * Run-out at the rim of a blade that sits tilted.
 * Formula: y = D tan(epsilon).
 * @param blade D [m] @param angle epsilon [rad] @returns y [m], total reading of a dial indicator
 * Example: 230 mm, 0.286 degrees -> 1.15 mm. Source: geometry.
 */
export function runOut(blade: number, angle: number): number {
  return blade * Math.tan(angle);
}
