/** A centrifugal clutch: shoes thrown out against springs, gripping a drum. Rotation is in 1/s. */

export interface Shoe {
  /** Mass of one shoe, m [kg]. */
  readonly mass: number;
  /** Radius of its center of mass when it touches the drum, r [m]. */
  readonly radius: number;
  /** Inward spring force on one shoe when it touches the drum, F [N]. */
  readonly spring: number;
}

/**
 * A shoe that has moved out to touch the drum: r = r_0 + c, F = F_0 + k c.
 * @param mass [kg] @param restRadius r_0 [m] @param restForce F_0 [N] @param rate k [N/m] @param travel c [m], >= 0
 * @returns mass, radius and spring force at the drum, SI
 * Example: 22 mm, 150 N, 12 N/mm, 1 mm -> 23 mm, 162 N. Source: khurmi-clutch, Example 10.36.
 */
export function shoeAtDrum(mass: number, restRadius: number, restForce: number, rate: number, travel: number): Shoe {
  return { mass, radius: restRadius + travel, spring: restForce + rate * travel };
}

/**
 * Speed at which the shoes begin to press on the drum.
 * Formula: n_1 = sqrt(F / (m r)) / (2 pi): with the square root of the spring force.
 * @param shoe at the drum; mass and radius > 0 @returns n_1 [1/s]
 * Example: 700 N, 1.5 kg, 110 mm -> 621.98 rpm. Source: bhandari-elements, Example 11.13.
 */
export function engagement({ mass, radius, spring }: Shoe): number {
  return Math.sqrt(spring / (mass * radius)) / (2 * Math.PI);
}

/**
 * Force of one shoe on the drum.
 * Formula: N = m r (2 pi n)^2 - F.
 * @param shoe at the drum @param rotation n [1/s] @returns N [N], 0 below engagement
 * Example: 1.5 kg, 110 mm, 700 N at 1440 rpm -> 3052 N. Source: bhandari-elements, Example 11.13.
 */
export function shoeForce({ mass, radius, spring }: Shoe, rotation: number): number {
  return Math.max(0, mass * radius * (2 * Math.PI * rotation) ** 2 - spring);
}

/**
 * Torque the clutch holds before it slips.
 * Formula: T = z mu N R.
 * @param shoe at the drum @param shoes z @param friction mu [1] @param drum inside radius R [m] @param rotation n [1/s]
 * @returns T [N m]
 * Example: 4 shoes, 0.3, 140 mm, 1440 rpm -> 512.74 N m. Source: bhandari-elements, Example 11.13.
 */
export function heldTorque(shoe: Shoe, shoes: number, friction: number, drum: number, rotation: number): number {
  return shoes * friction * drum * shoeForce(shoe, rotation);
}

/**
 * Speed from which the clutch holds a torque without slipping.
 * Formula: n = sqrt((F + T / (z mu R)) / (m r)) / (2 pi).
 * @param shoe at the drum @param shoes z @param friction mu [1], > 0 @param drum inside radius R [m], > 0 @param torque T [N m]
 * @returns n [1/s]
 * Example: no torque -> the engagement speed. Source: khurmi-clutch.
 */
export function gripSpeed(shoe: Shoe, shoes: number, friction: number, drum: number, torque: number): number {
  return engagement({ ...shoe, spring: shoe.spring + torque / (shoes * friction * drum) });
}

/**
 * Shoe mass a clutch needs to carry a torque.
 * Formula: m = T / (z mu R r ((2 pi n)^2 - (2 pi n_1)^2)).
 * @param torque T [N m] @param shoes z @param friction mu [1], > 0 @param drum R [m], > 0 @param radius r [m], > 0
 * @param rotation n [1/s] @param engages n_1 [1/s], < n
 * @returns m [kg]; below zero or without end from n_1 = n on, callers refuse that
 * Example: 20 kW at 750 rpm, engaging at 500 -> 2.6806 kg. Source: bhandari-elements, Example 11.12.
 */
export function shoeMassFor(
  torque: number,
  shoes: number,
  friction: number,
  drum: number,
  radius: number,
  rotation: number,
  engages: number,
): number {
  return torque / (shoes * friction * drum * radius * (2 * Math.PI) ** 2 * (rotation ** 2 - engages ** 2));
}

/**
 * Lining: length along the drum l = R arc, and the width that keeps a pressure b = N / (p R arc).
 * @param force N [N] @param pressure p [Pa], > 0 @param drum R [m], > 0 @param arc [rad], > 0 @returns l and b [m]
 * Example: the clutch of 20 kW -> 201.6 x 63.8 mm. Source: bhandari-elements, Example 11.12.
 */
export function lining(
  force: number,
  pressure: number,
  drum: number,
  arc: number,
): { readonly length: number; readonly width: number } {
  return { length: drum * arc, width: force / (pressure * drum * arc) };
}
