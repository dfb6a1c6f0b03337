/** Basic rating life of rolling bearings, modified rating life of radial ball bearings. Source: iso-281. */
import { isOver, isUnder } from '../../thresholds/index.ts';

/** Exponent p of the life sum: point contact of balls, line contact of rollers. Source: iso-281. */
export const lifeExponents = { ball: 3, roller: 10 / 3 } as const;
export type Rolling = keyof typeof lifeExponents;

/**
 * Basic rating life in revolutions. Nine in ten bearings reach it.
 * Formula: L = (C / P)^p million, p = 3 for balls, 10/3 for rollers.
 * @param dynamicRating C [N] @param load equivalent load P [N], > 0 @param rolling what rolls @returns [1]
 * Holds up to P = C / 2; above it the sum promises too much.
 * Example: C 5050, P 2400 (any unit) -> 9.32 million; with rollers 11.94 million. Source: iso-281.
 */
export function basicRevolutions(dynamicRating: number, load: number, rolling: Rolling = 'ball'): number {
  return 1e6 * (dynamicRating / load) ** lifeExponents[rolling];
}

/**
 * Basic rating life in time. Formula: L_h = L / n.
 * @param dynamicRating C [N] @param load P [N], > 0 @param speed n [1/s], > 0 @param rolling what rolls @returns [s]
 * Example: C 5050, P 2400 at 1750 rpm -> 88.73 h (wentzell-design, Ex. 20.1). Source: iso-281.
 */
export function basicLife(dynamicRating: number, load: number, speed: number, rolling: Rolling = 'ball'): number {
  return basicRevolutions(dynamicRating, load, rolling) / speed;
}

/**
 * Dynamic rating that gives a number of revolutions under a load; the reverse of `basicRevolutions`.
 * Formula: C = P * (L / 1 million)^(1/p). @param load P [N] @param revolutions L [1] @param rolling what rolls @returns [N]
 * Example: 2400 lbf, 21 million -> 6621 lbf (wentzell-design, Ex. 20.2). Source: iso-281.
 */
export function ratingNeeded(load: number, revolutions: number, rolling: Rolling = 'ball'): number {
  return load * (revolutions / 1e6) ** (1 / lifeExponents[rolling]);
}

/** Speed at which the sum for the viscosity changes its branch, 1000 rpm [1/s]. */
export const branchSpeed = 1000 / 60;

/** Mean diameter from which the tables and the fatigue limit know a large bearing [m]. */
export const largePitch = 0.1;

/**
 * Viscosity the lubricant should have at running temperature.
 * Formula: nu_1 = 45000 * n^-0.83 * D_pw^-0.5 below 1000 rpm, 4500 * n^-0.5 * D_pw^-0.5 from there; n in rpm, D_pw in mm, result in mm2/s.
 * @param speed [1/s] @param pitch mean diameter D_pw [m] @returns [m2/s]
 * The two branches differ by 2 % at 1000 rpm: the step is in the standard.
 * Example: 3000 rpm, 38.5 mm -> 13.24 mm2/s.
 */
export function referenceViscosity(speed: number, pitch: number): number {
  const [n, D] = [speed * 60, pitch * 1000];
  return (isUnder(speed, branchSpeed) ? 45000 * n ** -0.83 : 4500 * n ** -0.5) * D ** -0.5 * 1e-6;
}

/**
 * Load below which the steel would not tire in clean oil.
 * Formula: C_u = C_0 / 22 up to 100 mm mean diameter, times (100 mm / D_pw)^0.5 above.
 * @param staticRating C_0 [N] @param pitch mean diameter D_pw [m], > 0 @returns C_u [N]
 * Example: 6950 N, 38.5 mm -> 316 N. Source: iso-281; the reduction above 100 mm is from memory (iso-281-memory).
 */
export function fatigueLimit(staticRating: number, pitch: number): number {
  return (staticRating / 22) * (isOver(pitch, largePitch) ? (largePitch / pitch) ** 0.5 : 1);
}

/** Constants of the three branches of viscosity ratio: [c, exponent]; they meet, to under 1 %, at 0.4 and 1. Source: iso-281. */
export function branchOf(kappa: number): readonly [number, number] {
  if (kappa < 0.4) return [2.2649, 0.054381];
  return kappa < 1 ? [1.9987, 0.19087] : [1.9987, 0.071739];
}

/** Viscosity ratios the standard has a factor for: none below the least, no more above the most. Source: iso-281. */
export const kappaLimits = { least: 0.1, most: 4 } as const;
/** Largest life factor the standard allows. Source: iso-281. */
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
  if (Number.isNaN(kappa) || isUnder(kappa, kappaLimits.least)) return undefined;
  const k = Math.min(kappa, kappaLimits.most);
  const [c, q] = branchOf(k);
  const bracket = 1 - (2.5671 - c / k ** q) ** 0.83 * Math.cbrt(clean);
  return bracket <= 0 ? greatestFactor : Math.min(greatestFactor, 0.1 * bracket ** -9.3);
}
