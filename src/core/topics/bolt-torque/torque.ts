/** Torque, preload and stress of a bolt. Source: shigley-bolts. */

/** F = x * S_p * A_t [N]. Example: M8 8.8 at 75 % -> 15.92 kN. */
export function preload(share: number, proof: number, area: number): number {
  return share * proof * area;
}

/** T = K * F * d [N·m]. Example: M8, 15.92 kN, K 0.20 -> 25.5 N·m. */
export function tighteningTorque(factor: number, force: number, diameter: number): number {
  return factor * force * diameter;
}

/** The preload a torque gives: F = T / (K * d) [N]. */
export function preloadAt(torque: number, factor: number, diameter: number): number {
  return torque / (factor * diameter);
}

/**
 * Stress area of a thread from its diameter and pitch: pi / 4 * (d - 0.9382 p)^2 [m2].
 * Example: M10 x 1.5 -> 58.0 mm2.
 */
export function stressArea(diameter: number, pitch: number): number {
  return (Math.PI / 4) * (diameter - 0.9382 * pitch) ** 2;
}

/**
 * Torque factor from friction: K = d_m / (2 d) * (tan l + f sec 30) / (1 - f tan l sec 30) + 0.625 f_c.
 * @param diameter d [m] @param pitch p [m] @param thread friction in the thread f @param head friction under the head f_c
 * d_m is the mean of d and d - 1.2268 p; tan l = p / (pi d_m).
 * Example: M18 x 2.5, 0.15 and 0.13 -> 0.1834 (jindal-design, Ex. 9-3).
 */
export function torqueFactor(diameter: number, pitch: number, thread: number, head: number): number {
  const mean = diameter - 0.6134 * pitch;
  const lead = pitch / (Math.PI * mean);
  const sec = 1 / Math.cos(Math.PI / 6);
  return (mean / (2 * diameter)) * ((lead + thread * sec) / (1 - thread * lead * sec)) + 0.625 * head;
}
