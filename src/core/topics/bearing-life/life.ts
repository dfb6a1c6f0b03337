/** Basic and modified rating life of radial ball bearings. Source: iso-281. */

/**
 * Basic rating life in revolutions: (C / P)^3 million. Nine in ten bearings reach it.
 * Example: C 5050, P 2400 (any unit) -> 9.32 million. Source: iso-281.
 */
export function basicRevolutions(dynamicRating: number, load: number): number {
  return 1e6 * (dynamicRating / load) ** 3;
}

/** @param speed [1/s] @returns [s]. Example: C 5050, P 2400 at 1750 rpm -> 88.73 h (wentzell-design, Ex. 20.1). */
export function basicLife(dynamicRating: number, load: number, speed: number): number {
  return basicRevolutions(dynamicRating, load) / speed;
}

/** Dynamic rating that gives a number of revolutions under a load [N]. */
export function ratingNeeded(load: number, revolutions: number): number {
  return load * (revolutions / 1e6) ** (1 / 3);
}

/**
 * Viscosity the lubricant should have at running temperature.
 * Formula: nu_1 = 45000 * n^-0.83 * D_pw^-0.5 below 1000 rpm, 4500 * n^-0.5 * D_pw^-0.5 from there; n in rpm, D_pw in mm, result in mm2/s.
 * @param speed [1/s] @param pitch mean diameter D_pw [m] @returns [m2/s]
 * The two branches differ by 2 % at 1000 rpm: the step is in the standard.
 * Example: 3000 rpm, 38.5 mm -> 13.24 mm2/s.
 */
export function referenceViscosity(speed: number, pitch: number): number {
  const [n, D] = [speed * 60, pitch * 1000];
  return (n < 1000 - 1e-9 ? 45000 * n ** -0.83 : 4500 * n ** -0.5) * D ** -0.5 * 1e-6;
}

/**
 * Load below which the steel would not tire in clean oil: C_0 / 22 up to 100 mm mean diameter, less above.
 * The reduction above 100 mm is from memory (iso-281-memory).
 */
export function fatigueLimit(staticRating: number, pitch: number): number {
  return (staticRating / 22) * (pitch > 0.1 ? (0.1 / pitch) ** 0.5 : 1);
}

/** Constants of the three branches of viscosity ratio: [c, exponent]. */
export function branchOf(kappa: number): readonly [number, number] {
  if (kappa < 0.4) return [2.2649, 0.054381];
  return kappa < 1 ? [1.9987, 0.19087] : [1.9987, 0.071739];
}

export const kappaLimits = { least: 0.1, most: 4 } as const;
export const greatestFactor = 50;

/**
 * Life factor for lubrication and dirt.
 * Formula: a = 0.1 * (1 - (2.5671 - c / kappa^q)^0.83 * (e_C * C_u / P)^(1/3))^-9.3, at most 50.
 * @param kappa viscosity over reference viscosity, 0.1 and more; above 4 counts as 4
 * @param clean e_C * C_u / P, >= 0
 * @returns undefined below kappa 0.1, where the standard gives none
 * Example: kappa 1, 0.1 -> 2.43. kappa 0.5, 0 -> 0.1.
 */
export function lifeFactor(kappa: number, clean: number): number | undefined {
  if (!(kappa >= kappaLimits.least)) return undefined;
  const k = Math.min(kappa, kappaLimits.most);
  const [c, q] = branchOf(k);
  const bracket = 1 - (2.5671 - c / k ** q) ** 0.83 * Math.cbrt(clean);
  return bracket <= 0 ? greatestFactor : Math.min(greatestFactor, 0.1 * bracket ** -9.3);
}
