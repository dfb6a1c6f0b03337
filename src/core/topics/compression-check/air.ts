/** Air at height, and what it does to a compression gauge, to power and to the carburetor. */

/** Standard atmosphere at sea level. Source: us-std-atm-1976. */
export const sea = { pressure: 101325, temperature: 288.15, lapse: 0.0065 } as const;
/** Height over which the standard temperature would fall to nothing, h_0 = 288.15 K / 0.0065 K/m [m]. Source: us-std-atm-1976. */
export const lapseHeight = sea.temperature / sea.lapse;
/** Exponent of pressure against height, g M / (R lapse) [1]. Source: us-std-atm-1976. */
const pressureExponent = 5.25588;

/**
 * Pressure of the standard atmosphere.
 * Formula: p = 101325 (1 - 0.0065 h / 288.15)^5.25588.
 * @param height geopotential height above sea level [m], -500 to 11000. A map gives geometric height z, which is larger by
 *   z / 6357000: 6 m at 6000 m, 0.08 % of the pressure. Above 11000 m the formula no longer holds.
 * @returns p [Pa]
 * Example: 11 000 m -> 22 632 Pa. Source: us-std-atm-1976.
 */
export function standardPressure(height: number): number {
  return sea.pressure * (1 - height / lapseHeight) ** pressureExponent;
}

/**
 * Temperature of the standard atmosphere: T = 288.15 - 0.0065 h.
 * @param height geopotential height [m], -500 to 11000 @returns T [K]
 * Example: 1000 m -> 281.65 K. Source: us-std-atm-1976.
 */
export function standardTemperature(height: number): number {
  return sea.temperature - sea.lapse * height;
}

/**
 * Density against sea level, standard atmosphere: (p / p0) (T0 / T).
 * @param height geopotential height [m], -500 to 11000 @returns [1]
 * Example: 0 m -> 1. Source: us-std-atm-1976.
 */
export function densityRatio(height: number): number {
  return (standardPressure(height) / sea.pressure) * (sea.temperature / standardTemperature(height));
}

/**
 * What a gauge shows elsewhere, the engine unchanged: it falls in the ratio of the barometers.
 * Formula: g_2 = g_1 p_2 / p_1, since (g + p_1) p_2 / p_1 - p_2 = g p_2 / p_1.
 * @param gauge g_1 [Pa], above the air outside @param here p_1 [Pa], > 0 @param there p_2 [Pa] @returns g_2 [Pa]
 * Example: 120 psi at sea level -> 99.8 psi at 5000 ft. Source: gauge-altitude.
 */
export function gaugeElsewhere(gauge: number, here: number, there: number): number {
  return (gauge * there) / here;
}

/**
 * Air to fuel ratio of a carburetor left as it was: it goes with the root of the density.
 * Formula: A_2 = A_1 sqrt(rho_2 / rho_1).
 * @param airFuel A_1, by mass [1] @param density rho_2 / rho_1 [1], >= 0 @returns A_2 [1]
 * Example: 14.7 at sea level, 22 degrees C -> 12.11 at 4000 m. Source: gupta-carburettor.
 */
export function mixtureElsewhere(airFuel: number, density: number): number {
  return airFuel * Math.sqrt(density);
}

/**
 * Density ratio of air at two pressures and temperatures: (p_2 / p_1) (T_1 / T_2).
 * @param p1 [Pa], > 0 @param t1 [K], > 0 @param p2 [Pa] @param t2 [K], > 0 @returns [1]
 * Example: the same temperature -> the ratio of the pressures. Source: the gas law.
 */
export function gasDensityRatio(p1: number, t1: number, p2: number, t2: number): number {
  return (p2 / p1) * (t1 / t2);
}
