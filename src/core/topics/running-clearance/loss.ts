/** Clearance a bearing loses to its fits and to heat. */
import { hubFactor, pressure, shaftFactor, type Joint } from '../press-fit/index.ts';
import { growth } from '../../materials/index.ts';

export interface RingJoint {
  /** Bore or outside diameter of the bearing [m]. */
  readonly diameter: number;
  /** Diameter of the raceway of that ring [m]. */
  readonly raceway: number;
  readonly ringE: number;
  readonly ringNu: number;
  readonly otherE: number;
  readonly otherNu: number;
}

/**
 * Growth of the inner raceway when the ring sits on an oversize shaft.
 * Formula: u = 2 * p * d^2 * F / (E * (F^2 - d^2)), p from thick-cylinder theory, the ring taken as a plain tube from d to F.
 * @param j ring and shaft @param shaftBore hole through the shaft [m] @param interference on the diameter [m]; clearance gives 0
 * @returns u [m]
 * Example: 25 mm bore, raceway 31 mm, 15 µm on solid steel -> 12.1 µm, which is delta * d / F. Source: shigley-press-fits.
 */
export function innerGrowth(j: RingJoint, shaftBore: number, interference: number): number {
  const joint: Joint = {
    diameter: j.diameter,
    hubOutside: j.raceway,
    shaftBore,
    hubE: j.ringE,
    hubNu: j.ringNu,
    shaftE: j.otherE,
    shaftNu: j.otherNu,
  };
  // (k_h - 1) = 2 d^2 / (F^2 - d^2)
  return (pressure(joint, interference) * (hubFactor(joint) - 1) * j.raceway) / j.ringE;
}

/**
 * Shrink of the outer raceway when the ring sits in an undersize housing.
 * Formula: u = 2 * p * D^2 * G / (E * (D^2 - G^2)).
 * @param j ring and housing @param housingOutside [m]; `Infinity` for a wall far thicker than the bore
 * @returns u [m]
 * Example: 52 mm, raceway 46.5 mm, 25 µm in an 80 mm aluminium boss -> 13.2 µm. Source: shigley-press-fits.
 */
export function outerShrink(j: RingJoint, housingOutside: number, interference: number): number {
  const joint: Joint = {
    diameter: j.diameter,
    hubOutside: housingOutside,
    shaftBore: j.raceway,
    hubE: j.otherE,
    hubNu: j.otherNu,
    shaftE: j.ringE,
    shaftNu: j.ringNu,
  };
  // (k_s + 1) = 2 D^2 / (D^2 - G^2)
  return (pressure(joint, interference) * (shaftFactor(joint) + 1) * j.raceway) / j.ringE;
}

/**
 * Clearance lost because the inner ring runs warmer than the outer. Formula: u = alpha * G * dT.
 * @param outerRaceway G [m] @param alpha [1/K] @param difference inner minus outer temperature [K]
 * @returns u [m]; below zero when the outer ring is the warmer. Example: 46.5 mm, 12.5e-6, 10 K -> 5.8 µm. Source: arithmetic.
 */
export function heatLoss(outerRaceway: number, alpha: number, difference: number): number {
  return growth(outerRaceway, alpha, difference);
}

/** Shares of a measured interference that count: d / (d + 2 mm) ground, d / (d + 3 mm) turned. From memory (fit-smoothing-memory). */
export type Surface = 'ground' | 'turned' | 'ideal';

/**
 * Share of a measured interference that counts once the peaks of the surfaces are flat.
 * Formula: d / (d + 2 mm) ground, d / (d + 3 mm) turned. @param diameter [m] @returns [1]
 * Example: 25 mm ground -> 0.926. Source: fit-smoothing-memory.
 */
export function countedShare(diameter: number, surface: Surface): number {
  const flattened = { ground: 2e-3, turned: 3e-3, ideal: 0 }[surface];
  return diameter / (diameter + flattened);
}

/**
 * Raceway diameters where nobody measured them. Formulas: F = (4 d + D) / 5, G = (4 D + d) / 5.
 * @param bore d [m] @param outside D [m], > d @returns F and G [m]
 * Example: 25 and 52 mm -> 30.4 and 46.6 mm. From memory (raceway-rule).
 */
export function racewayGuess(bore: number, outside: number): { readonly inner: number; readonly outer: number } {
  return { inner: (4 * bore + outside) / 5, outer: (4 * outside + bore) / 5 };
}
