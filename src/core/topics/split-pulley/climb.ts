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
 * @param gap between the faces that meet when closed, g [m], >= 0
 * @returns r [m]; a narrow belt lies lower, a wide one higher
 */
export function pitchRadius(c: Cones, gap: number): number {
  return c.closed - climb(gap + c.nominal - c.belt, c.angle);
}

/**
 * Turns of the pulley that carry the whole belt round once.
 * Formula: k = L / (2 pi r). @returns [1]
 */
export function turnsForLoop(length: number, radius: number): number {
  return length / (2 * Math.PI * radius);
}

/**
 * Tilt of a half that is nipped on the belt on one side and closed on the other.
 * Formula: epsilon = atan(g / d). @param gap left at the belt [m] @param diameter across which it acts, the pitch diameter [m]
 * @returns [rad]
 */
export function tilt(gap: number, diameter: number): number {
  return Math.atan(gap / diameter);
}

/**
 * Run-out at the rim of a blade that sits tilted.
 * Formula: y = D tan(epsilon). @returns [m], total reading of a dial gauge
 */
export function runOut(blade: number, angle: number): number {
  return blade * Math.tan(angle);
}
