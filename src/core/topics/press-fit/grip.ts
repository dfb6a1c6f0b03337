/** What a pressure holds, and what it takes to push the parts together. */

/** Area of the joint, pi * d * L [m2]. */
function area(diameter: number, length: number): number {
  return Math.PI * diameter * length;
}

/**
 * Force along the joint at which it slides: the most needed to push it in, and to push it out.
 * Formula: F = mu * pi * d * L * p.
 * @param diameter d [m] @param length L [m] @param p pressure [Pa] @param friction mu [1]
 * @returns F [N]
 * Example: d 100, L 100, 21.72 MPa, 0.15 -> 102.4 kN. Source: shigley-press-fits.
 */
export function slideForce(diameter: number, length: number, p: number, friction: number): number {
  return friction * area(diameter, length) * p;
}

/**
 * Torque at which a joint turns on its seat. Formula: T = F * d / 2, F as in `slideForce`.
 * @param diameter d [m] @param length L [m] @param p pressure [Pa] @param friction mu [1] @returns T [N·m]
 * Example: d 100, L 100, 21.72 MPa, 0.15 -> 5.12 kN·m. Source: shigley-press-fits.
 */
export function slideTorque(diameter: number, length: number, p: number, friction: number): number {
  return (slideForce(diameter, length, p, friction) * diameter) / 2;
}

/**
 * Interference lost as the peaks of both surfaces are pressed flat. Formula: 0.8 * (Rz_1 + Rz_2).
 * @param roughnessShaft Rz_1 [m] @param roughnessHub Rz_2 [m] @returns [m]
 * Example: 2 and 6.3 µm -> 6.64 µm. From memory (din-7190-smoothing): cold pressing flattens them, a warm joint far less.
 */
export function smoothing(roughnessShaft: number, roughnessHub: number): number {
  return 0.8 * (roughnessShaft + roughnessHub);
}

/** Friction of press fits, [low, high]. Source: press-friction (notes and slides, not a standard). */
export const frictions = { oiled: [0.05, 0.1], dry: [0.12, 0.2] } as const;

/** Which tool presses this honestly. Forces [N] up to which each serves; common practice, no source. */
export const tools = [
  { code: 'tool-vise', upTo: 5_000 },
  { code: 'tool-arbor', upTo: 20_000 },
  { code: 'tool-hydraulic', upTo: 150_000 },
] as const;
