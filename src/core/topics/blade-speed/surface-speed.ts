/** Speed at the rim of a turning blade, and the ways to reach it. */

/**
 * Surface speed of a blade.
 * Formula: v = pi * D * n.
 * @param diameter blade diameter D [m], > 0
 * @param rotation spindle speed n [1/s], >= 0
 * @returns v [m/s]; NaN in gives NaN out, callers check their inputs
 * Assumes a rigid blade of the stated diameter.
 * Example: 4 in at 9072 rpm -> 48.26 m/s (9500 ft/min).
 * Source: masonry-magazine-2004 (its operating speeds are all 9500 ft/min).
 */
export function surfaceSpeed(diameter: number, rotation: number): number {
  return Math.PI * diameter * rotation;
}

/**
 * Spindle speed at which a blade's rim reaches a given speed.
 * Formula: n = v / (pi * D).
 * @param speed v [m/s], >= 0
 * @param diameter D [m], > 0
 * @returns n [1/s]
 * Example: 80 m/s on 350 mm -> 4365 rpm (rounded down).
 */
export function rotationForSpeed(speed: number, diameter: number): number {
  return speed / (Math.PI * diameter);
}

/**
 * Blade-shaft speed behind a belt drive.
 * Formula: n_2 = n_1 * d_1 / d_2 * (1 - s).
 * @param rotation driving speed n_1 [1/s]
 * @param driving pitch diameter on the engine side d_1 [m], > 0
 * @param driven pitch diameter on the blade side d_2 [m], > 0
 * @param slip belt slip s [1], 0 to below 1
 * @returns n_2 [1/s]
 * Example: Khurmi 11.1, two stages at 2 % slip: 1500 -> 1440 rpm.
 * Source: khurmi-machines.
 */
export function drivenRotation(rotation: number, driving: number, driven: number, slip: number): number {
  return ((rotation * driving) / driven) * (1 - slip);
}
