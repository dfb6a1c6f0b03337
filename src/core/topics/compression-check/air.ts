/** Air at height, and what it does to a compression gauge, to power and to the carburetor. */

const sea = { pressure: 101325, temperature: 288.15, lapse: 0.0065 } as const;

/**
 * Pressure of the standard atmosphere.
 * Formula: p = 101325 (1 - 0.0065 h / 288.15)^5.25588.
 * @param height above sea level [m], -500 to 11000 @returns p [Pa]
 * Example: 11 000 m -> 22 632 Pa. Source: us-std-atm-1976.
 */
export function standardPressure(height: number): number {
  return sea.pressure * (1 - (sea.lapse * height) / sea.temperature) ** 5.25588;
}

/** Temperature of the standard atmosphere: T = 288.15 - 0.0065 h [K]. */
export function standardTemperature(height: number): number {
  return sea.temperature - sea.lapse * height;
}

/** Density against sea level, standard atmosphere: (p / p0) (T0 / T) [1]. */
export function densityRatio(height: number): number {
  return (standardPressure(height) / sea.pressure) * (sea.temperature / standardTemperature(height));
}

/**
 * What a gauge shows elsewhere, the engine unchanged: it falls in the ratio of the barometers.
 * Formula: g_2 = g_1 p_2 / p_1, since (g + p_1) p_2 / p_1 - p_2 = g p_2 / p_1.
 * @param gauge [Pa], above the air outside @returns [Pa]
 * Example: 120 psi at sea level -> 99.8 psi at 5000 ft.
 */
export function gaugeElsewhere(gauge: number, here: number, there: number): number {
  return (gauge * there) / here;
}

/**
 * Air to fuel ratio of a carburetor left as it was: it goes with the root of the density.
 * Formula: A_2 = A_1 sqrt(rho_2 / rho_1). @param density rho_2 / rho_1 [1]
 * Example: 14.7 at sea level, 22 degrees C -> 12.11 at 4000 m. Source: gupta-carburettor.
 */
export function mixtureElsewhere(airFuel: number, density: number): number {
  return airFuel * Math.sqrt(density);
}

/** Density ratio of air at two pressures and temperatures [K]: (p_2 / p_1) (T_1 / T_2) [1]. */
export function gasDensityRatio(p1: number, t1: number, p2: number, t2: number): number {
  return (p2 / p1) * (t1 / t2);
}
