/** Grip of a belt on a pulley: the capstan law, the wedge of a groove and the arc factor. */

/** Tight to slack ratio the trade takes at half a turn of wrap. Source: bloch-geitner-v4 with machinery-handbook-arc. */
export const tradeRatio = 5;
/** Friction that gives a ratio of 5 at 180 degrees, ln 5 / pi = 0.5123: the groove's wedge is already in it. */
export const tradeFriction = Math.log(tradeRatio) / Math.PI;

/**
 * Friction of a belt wedged in a groove.
 * Formula: f = mu / sin(phi / 2).
 * @param base friction of belt on metal, mu [1], >= 0
 * @param groove full groove angle phi [rad]; pi for a flat belt
 * @returns f [1]
 * Example: 0.15 in a groove of 34 degrees -> 0.513. Source: khurmi-machines, Examples 11.17 to 11.19.
 */
export function wedgedFriction(base: number, groove: number): number {
  return base / Math.sin(groove / 2);
}

/**
 * Tight to slack ratio at the point of slip (both without the centrifugal part).
 * Formula: R = exp(f theta).
 * @param friction f, wedge included [1], >= 0 @param wrap theta [rad], >= 0
 * @returns R [1], >= 1
 * Example: f = 0.5123 at 180 degrees -> 5.0. Source: shigley-belts, Problem 17-19.
 */
export function tensionRatio(friction: number, wrap: number): number {
  return Math.exp(friction * wrap);
}

/**
 * Arc factor: what is left of a belt's pull when it wraps less than half a turn.
 * Formula: G = 1.25 (1 - 5^(-theta / pi)); the capstan law with ratio 5 at 180 degrees.
 * @param wrap theta [rad], 0 to 2 pi @returns G [1], below 1.25
 * Example: 157 degrees -> 0.943 (printed 0.94). Source: machinery-handbook-arc, Table 12, all rows within rounding.
 */
export function arcFactor(wrap: number): number {
  return 1.25 * (1 - tradeRatio ** (-wrap / Math.PI));
}

/**
 * Arc factor by the textbook's polynomial, for comparison; meant for 90 to 180 degrees.
 * Formula: K = 0.143543 + 0.007468 t - 0.000015052 t^2, t in degrees.
 * @param wrap [rad] @returns K [1]
 * Example: 156.5 degrees -> 0.944. Source: shigley-belts, footnote to Table 17-13.
 */
export function arcPolynomial(wrap: number): number {
  const t = (wrap * 180) / Math.PI;
  return 0.143543 + 0.007468 * t - 0.000015052 * t ** 2;
}
