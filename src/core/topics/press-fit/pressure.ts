/** Two rings, one pressed into the other: thick-cylinder theory of unlike and hollow parts. All SI. */

export interface Joint {
  /** Diameter where the parts meet, d [m]. */
  readonly diameter: number;
  /** Outside of the hub, D_o [m], > d. `Infinity` for a hub far larger than the bore. */
  readonly hubOutside: number;
  /** Hole in the shaft or inside of the inner ring, d_i [m], 0 <= d_i < d. */
  readonly shaftBore: number;
  readonly hubE: number;
  readonly hubNu: number;
  readonly shaftE: number;
  readonly shaftNu: number;
}

/** Hub shape factor (D_o^2 + d^2) / (D_o^2 - d^2) [1], > 1; 1 for an endless hub. Diameters [m]. Example: 50 in 100 -> 1.667. Source: shigley-press-fits. */
export function hubFactor({ diameter, hubOutside }: Pick<Joint, 'diameter' | 'hubOutside'>): number {
  const r = (diameter / hubOutside) ** 2;
  return (1 + r) / (1 - r);
}

/** Shaft shape factor (d^2 + d_i^2) / (d^2 - d_i^2) [1], > 1; 1 for a solid shaft. Diameters [m]. Example: 20 in 50 -> 1.381. Source: shigley-press-fits. */
export function shaftFactor({ diameter, shaftBore }: Pick<Joint, 'diameter' | 'shaftBore'>): number {
  const r = (shaftBore / diameter) ** 2;
  return (1 + r) / (1 - r);
}

/** How much the fit gives for each pascal of pressure and metre of diameter [1/Pa]. */
function compliance(j: Joint): number {
  return (hubFactor(j) + j.hubNu) / j.hubE + (shaftFactor(j) - j.shaftNu) / j.shaftE;
}

/**
 * Pressure between the parts.
 * Formula: p = delta / (d * ((k_h + nu_h) / E_h + (k_s - nu_s) / E_s)), k_h and k_s the shape factors.
 * @param interference on the diameter, delta [m]; clearance gives 0
 * @returns p [Pa]
 * Assumes elastic parts of equal length, no end effects, no speed, one temperature.
 * Example: Boresi & Schmidt 11.3, d 50, 100 outside, 20 inside, 0.144 mm, 200 GPa -> 189 MPa. Source: shigley-press-fits.
 */
export function pressure(j: Joint, interference: number): number {
  return Math.max(0, interference) / (j.diameter * compliance(j));
}

/** Interference on the diameter that gives a pressure [m]; the reverse of `pressure`. */
export function interferenceFor(j: Joint, p: number): number {
  return p * j.diameter * compliance(j);
}

export interface Hoop {
  /** Stress round the hub at its bore and at its outside; pull is positive [Pa]. */
  readonly hubBore: number;
  readonly hubOutside: number;
  /** Stress round the shaft at the joint and at its own bore; push is negative [Pa]. A solid shaft has -p throughout. */
  readonly shaftSurface: number;
  readonly shaftBore: number;
}

/**
 * Stress round the hub and the shaft.
 * Formulas: hub bore p * k_h; hub outside p * (k_h - 1); shaft surface -p * k_s; shaft bore -p * (k_s + 1), for a solid shaft -p.
 * Example: Boresi & Schmidt 11.3 -> hub +315 / +126, shaft -261 at the joint and -450 at its bore (MPa).
 */
export function hoop(j: Joint, p: number): Hoop {
  const [kh, ks] = [hubFactor(j), shaftFactor(j)];
  return {
    hubBore: p * kh,
    hubOutside: p * (kh - 1),
    shaftSurface: -p * ks,
    shaftBore: j.shaftBore > 0 ? -p * (ks + 1) : -p,
  };
}

/**
 * Largest equivalent stress in the hub, at its bore (maximum shear theory).
 * Formula: s = p * (k_h + 1): the pull round the bore plus the push across it. [Pa]
 */
export function hubEquivalent(j: Joint, p: number): number {
  return p * (hubFactor(j) + 1);
}
