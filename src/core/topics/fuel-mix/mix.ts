import { isOver, isUnder } from '../../thresholds/index.ts';

/** Oil in two-stroke fuel. A ratio of 50 means 50 parts of gasoline to 1 part of oil. */

/**
 * Oil for an amount of gasoline: o = f / r.
 * @param fuel f [m3] @param ratio r [1], > 0 @returns o [m3]
 * Example: 1 L at 50:1 -> 20 mL; 1 US gal at 32:1 -> 4 fl oz. Source: fuel-mix-arithmetic.
 */
export function oilForFuel(fuel: number, ratio: number): number {
  return fuel / ratio;
}

/**
 * Gasoline for an amount of oil: f = o r.
 * @param oil o [m3] @param ratio r [1] @returns f [m3]
 * Example: 100 mL at 50:1 -> 5 L. Source: fuel-mix-arithmetic.
 */
export function fuelForOil(oil: number, ratio: number): number {
  return oil * ratio;
}

export interface Parts {
  readonly fuel: number;
  readonly oil: number;
}

/**
 * What is in a can of mix: f = V r / (r + 1), o = V / (r + 1).
 * @param can V [m3] @param ratio r [1], > 0 @returns f and o [m3]
 * Example: 5.1 L at 50:1 -> 5 L and 100 mL. Source: fuel-mix-arithmetic.
 */
export function partsOf(can: number, ratio: number): Parts {
  return { fuel: (can * ratio) / (ratio + 1), oil: can / (ratio + 1) };
}

/**
 * What turns a can mixed at one ratio into another: oil if it is too lean, gasoline if it is too rich.
 * Formulas: oil = f / r - o where positive; gasoline = o r - f where positive.
 * @param parts what is in the can, f and o [m3] @param ratio r wanted [1], > 0
 * @returns [m3]; at least one of the two is always 0, both where the can is right but for the last bits of a division
 * Example: 5 L with 100 mL for 25:1 -> 100 mL of oil. Source: fuel-mix-arithmetic.
 */
export function correction({ fuel, oil }: Parts, ratio: number): Parts {
  const wanted = oilForFuel(fuel, ratio);
  return {
    oil: isOver(wanted, oil) ? wanted - oil : 0,
    fuel: isUnder(wanted, oil) ? fuelForOil(oil, ratio) - fuel : 0,
  };
}
