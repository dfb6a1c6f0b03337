/** Oil in two-stroke fuel. A ratio of 50 means 50 parts of gasoline to 1 part of oil. */

/**
 * Oil for an amount of gasoline: o = f / r.
 * @param fuel f [m3] @param ratio r [1], > 0 @returns o [m3]
 * Example: 1 L at 50:1 -> 20 mL; 1 US gal at 32:1 -> 4 fl oz. Source: fuel-mix-arithmetic.
 */
export function oilForFuel(fuel: number, ratio: number): number {
  return fuel / ratio;
}

/** Gasoline for an amount of oil: f = o r [m3]. */
export function fuelForOil(oil: number, ratio: number): number {
  return oil * ratio;
}

export interface Parts {
  readonly fuel: number;
  readonly oil: number;
}

/** What is in a can of mix: f = V r / (r + 1), o = V / (r + 1) [m3]. */
export function partsOf(can: number, ratio: number): Parts {
  return { fuel: (can * ratio) / (ratio + 1), oil: can / (ratio + 1) };
}

/**
 * What turns a can mixed at one ratio into another: oil if it is too lean, gasoline if it is too rich.
 * Formulas: oil = f / r - o where positive; gasoline = o r - f where positive.
 * @returns [m3]; at least one of the two is always 0
 */
export function correction({ fuel, oil }: Parts, ratio: number): Parts {
  // A can already right must not come out as wrong by the last bit of a division.
  if (Math.abs(fuel / ratio - oil) <= oil * 1e-9) return { oil: 0, fuel: 0 };
  return { oil: Math.max(0, fuel / ratio - oil), fuel: Math.max(0, oil * ratio - fuel) };
}
