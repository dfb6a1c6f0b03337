/** Torque, preload and stress of a bolt, and the strength of the thread it is screwed into. Source: shigley-bolts. */

/**
 * Preload aimed for: F = x S_p A_t.
 * @param share x of the proof load [1] @param proof S_p, proof stress [Pa] @param area A_t, stress area [m2] @returns F [N]
 * Example: M8 8.8 at 75 % -> 15.92 kN. Source: shigley-bolts.
 */
export function preload(share: number, proof: number, area: number): number {
  return share * proof * area;
}

/**
 * Torque for a preload: T = K F d.
 * @param factor K [1] @param force F [N] @param diameter d [m] @returns T [N·m]
 * Example: M8, 15.92 kN, K 0.20 -> 25.5 N·m. Source: shigley-bolts.
 */
export function tighteningTorque(factor: number, force: number, diameter: number): number {
  return factor * force * diameter;
}

/**
 * The preload a torque gives: F = T / (K d).
 * @param torque T [N·m] @param factor K [1], > 0 @param diameter d [m], > 0 @returns F [N]
 * Example: 25.5 N·m, K 0.20, M8 -> 15.94 kN. Source: shigley-bolts.
 */
export function preloadAt(torque: number, factor: number, diameter: number): number {
  return torque / (factor * diameter);
}

/**
 * Stress area of a metric thread: A_t = pi / 4 (d - 0.9382 p)^2.
 * @param diameter d [m] @param pitch p [m], < d @returns A_t [m2]
 * Example: M10 x 1.5 -> 58.0 mm2. Source: shigley-bolts.
 */
export function stressArea(diameter: number, pitch: number): number {
  return (Math.PI / 4) * (diameter - 0.9382 * pitch) ** 2;
}

/**
 * Stress area of a unified inch thread: A_t = pi / 4 (d - 0.9743 p)^2, which counts the root a little deeper.
 * @param diameter d [m] @param pitch p [m], < d @returns A_t [m2]
 * Example: 1/4-20 -> 0.0318 in2. Source: memory; it gives back the printed torques of ifi-torque-table.
 */
export function inchStressArea(diameter: number, pitch: number): number {
  return (Math.PI / 4) * (diameter - 0.9743 * pitch) ** 2;
}

/**
 * Force that strips the thread out of a casting: F = 0.875 pi d L tau, the shear area of an internal thread of basic profile.
 * @param diameter d [m] @param engaged L, length of thread in mesh [m] @param shear tau, shear strength of the casting [Pa] @returns F [N]
 * Example: M6, 6 mm in 144 MPa -> 14.25 kN. Source: thread-shear.
 */
export function stripForce(diameter: number, engaged: number, shear: number): number {
  return 0.875 * Math.PI * diameter * engaged * shear;
}

/**
 * Torque factor from friction: K = d_m / (2 d) * (tan l + f sec 30) / (1 - f tan l sec 30) + 0.625 f_c.
 * @param diameter d [m] @param pitch p [m] @param thread friction in the thread f [1] @param head friction under the head f_c [1]
 * @returns K [1]
 * d_m is the mean of d and d - 1.2268 p; tan l = p / (pi d_m).
 * Example: M18 x 2.5, 0.15 and 0.13 -> 0.1834 (jindal-design, Ex. 9-3).
 */
export function torqueFactor(diameter: number, pitch: number, thread: number, head: number): number {
  const mean = diameter - 0.6134 * pitch;
  const lead = pitch / (Math.PI * mean);
  const sec = 1 / Math.cos(Math.PI / 6);
  return (mean / (2 * diameter)) * ((lead + thread * sec) / (1 - thread * lead * sec)) + 0.625 * head;
}
