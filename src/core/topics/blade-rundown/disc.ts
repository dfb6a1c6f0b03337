/** A flat disc with a hole: mass, inertia, energy, run-down and stress. Rotation is in 1/s. */

/**
 * Mass of a flat ring: m = rho pi / 4 (D^2 - d^2) t.
 * @param outer D [m] @param bore d [m], < D @param thickness t [m] @param density rho [kg/m3] @returns [kg]
 * Example: 350 x 25.4 x 3 mm steel -> 2.254 kg. Source: disc-energy.
 */
export function ringMass(outer: number, bore: number, thickness: number, density: number): number {
  return ((density * Math.PI) / 4) * (outer ** 2 - bore ** 2) * thickness;
}

/**
 * Inertia of a flat ring about its axle: I = m (D^2 + d^2) / 8.
 * @param mass m [kg] @param outer D [m] @param bore d [m], 0 for a disc without one @returns I [kg m2]
 * Example: 1 kg, 400 mm, no bore -> 0.02 kg m2. Source: disc-energy.
 */
export function ringInertia(mass: number, outer: number, bore: number): number {
  return (mass * (outer ** 2 + bore ** 2)) / 8;
}

/**
 * Energy of anything turning: E = I (2 pi n)^2 / 2.
 * @param inertia I [kg m2] @param rotation n [1/s] @returns E [J]
 * Example: 2500 kg m2 at 6 rad/s -> 45 kJ. Source: khurmi-machines, Example 3.1.
 */
export function spinEnergy(inertia: number, rotation: number): number {
  return (inertia * (2 * Math.PI * rotation) ** 2) / 2;
}

/**
 * Time to stop under a constant friction torque: t = I 2 pi n / M.
 * @param inertia I [kg m2] @param rotation n [1/s] @param torque M [N m], > 0; 0 never stops it @returns t [s]
 * Example: 300 N disc of 0.5 m radius, 1500 rpm, 120 s -> 5.0038 N m. Source: tayal-mechanics, Example 22.1.
 */
export function stopTime(inertia: number, rotation: number, torque: number): number {
  return (inertia * 2 * Math.PI * rotation) / torque;
}

/**
 * Friction torque from a measured stop: M = I 2 pi n / t.
 * @param inertia I [kg m2] @param rotation n [1/s] @param time t [s], > 0 @returns M [N m]
 * Example: see `stopTime`, of which it is the inverse. Source: tayal-mechanics.
 */
export function frictionTorque(inertia: number, rotation: number, time: number): number {
  return (inertia * 2 * Math.PI * rotation) / time;
}

/**
 * Turns until it stands, slowing evenly: N = n t / 2.
 * @param rotation n [1/s] @param time t [s] @returns N [1]
 * Example: 1500 rpm, 120 s -> 1500. Source: tayal-mechanics, Example 22.1.
 */
export function turnsToStop(rotation: number, time: number): number {
  return (rotation * time) / 2;
}

/**
 * Hoop stress at the bore of a spinning flat ring, its greatest.
 * Formula: s = (3 + nu) / 4 rho w^2 (b^2 + (1 - nu) / (3 + nu) a^2), a and b bore and outer radius.
 * @param outer 2 b [m] @param bore 2 a [m], < outer @param rotation n, w = 2 pi n [1/s] @param density rho [kg/m3] @param poisson nu [1], 0 to 0.5
 * @returns s [Pa]
 * Example: 50 and 250 mm radius, 6900 rpm, 7800 kg/m3, nu 0.3 -> 211.76 MPa. Source: ugural-disc.
 * Slots and segments are not in it: at the root of a slot the stress is higher.
 */
export function hoopAtBore(outer: number, bore: number, rotation: number, density: number, poisson: number): number {
  return (
    ((3 + poisson) / 4) *
    density *
    (2 * Math.PI * rotation) ** 2 *
    ((outer / 2) ** 2 + ((1 - poisson) / (3 + poisson)) * (bore / 2) ** 2)
  );
}

/**
 * Hoop stress of a thin ring: s = rho v^2.
 * @param density rho [kg/m3] @param speed v at the ring [m/s] @returns s [Pa]
 * Example: 7850 kg/m3 at 80 m/s -> 50.24 MPa. Source: disc-energy.
 */
export function ringStress(density: number, speed: number): number {
  return density * speed ** 2;
}

export interface LostGrip {
  /** Radial interference the speed takes away [m]. */
  readonly interference: number;
  /** Pressure that interference makes at rest [Pa]. */
  readonly pressure: number;
  /** Hoop stress at the bore at rest from it [Pa]. */
  readonly hoop: number;
}

/**
 * Interference a spinning disc loses on a solid shaft of the same material, which grows a little too.
 * Formulas: delta = s a / E - (1 - nu) rho w^2 a^3 / (4 E); p = E delta (b^2 - a^2) / (2 a b^2); hoop = p (b^2 + a^2) / (b^2 - a^2).
 * @param outer 2 b [m] @param bore 2 a [m], > 0 and < outer @param rotation n [1/s] @param density rho [kg/m3] @param poisson nu [1] @param modulus E [Pa], > 0
 * Example: as above with 200 GPa -> 52.50 um, 100.79 MPa, 109.19 MPa. Source: ugural-disc.
 */
export function lostGrip(
  outer: number,
  bore: number,
  rotation: number,
  density: number,
  poisson: number,
  modulus: number,
): LostGrip {
  const [a, b, w] = [bore / 2, outer / 2, 2 * Math.PI * rotation];
  const ring = (hoopAtBore(outer, bore, rotation, density, poisson) * a) / modulus;
  const shaft = ((1 - poisson) * density * w ** 2 * a ** 3) / (4 * modulus);
  const interference = ring - shaft;
  const pressure = (modulus * interference * (b ** 2 - a ** 2)) / (2 * a * b ** 2);
  return { interference, pressure, hoop: (pressure * (b ** 2 + a ** 2)) / (b ** 2 - a ** 2) };
}
