/**
 * The one rounding policy of the almanac: what a bill shows is what is charged. The price of one piece, each line,
 * labor and tax are rounded where they stand, half a unit going up, and the total is their sum: a price in thirds of
 * a cent can't be charged, and lines that multiply and add up need no line for a cent in between.
 */

/**
 * Whole cents of an amount.
 * Formula: floor(100 x + 1/2), the same for amounts below zero with the sign kept.
 * @param amount [currency]
 * @returns cents, a whole number
 * Binary fractions such as 1.005 are held a hair too small; a millionth of a cent is added so that they round as written.
 * Example: toCents(285.1333) -> 28513. Example: toCents(1.005) -> 101.
 * Source: arithmetic.
 */
export function toCents(amount: number): number {
  return unitsOf(amount, 0.01);
}

/**
 * An amount rounded to the smallest amount that can be charged.
 * @param amount [currency]
 * @param smallest [currency], > 0: 0.01 for cents, 1 for a currency without them, 5 where 5 is the smallest coin
 * @returns [currency]
 * Example: roundMoney(7.4667) -> 7.47; roundMoney(7.4667, 1) -> 7; roundMoney(7.4667, 5) -> 5.
 * Source: arithmetic.
 */
export function roundMoney(amount: number, smallest = 0.01): number {
  const units = unitsOf(amount, smallest);
  // Dividing by a whole number keeps 2851 cents at 28.51; multiplying by 0.01 would not.
  return smallest < 1 ? units / Math.round(1 / smallest) : units * smallest;
}

function unitsOf(amount: number, smallest: number): number {
  const scaled = smallest < 1 ? Math.abs(amount) * Math.round(1 / smallest) : Math.abs(amount) / smallest;
  const units = Math.floor(scaled + 0.5 + 1e-6);
  return amount < 0 && units > 0 ? -units : units;
}
