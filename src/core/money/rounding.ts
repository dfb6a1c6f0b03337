/**
 * The one rounding policy of the almanac: amounts are added exactly, and an invoice is rounded once,
 * at its total, half a cent going up. Lines on paper are rounded for reading only; where they do not
 * add up to the total, the cent between them is shown as a line of its own.
 */

/**
 * Whole cents of an amount.
 * Formula: floor(100 x + 1/2), the same for amounts below zero with the sign kept.
 * @param amount [currency]
 * @returns cents, a whole number
 * Binary fractions such as 1.005 are held a hair too small; a millionth of a cent is added so that they round as written.
 * Example: 285.1333 -> 28513.
 * Source: arithmetic.
 */
export function toCents(amount: number): number {
  const cents = Math.floor(Math.abs(amount) * 100 + 0.5 + 1e-6);
  return amount < 0 && cents > 0 ? -cents : cents;
}

/**
 * An amount rounded to the cent.
 * @param amount [currency]
 * @returns [currency]
 * Example: 7.4667 -> 7.47.
 * Source: arithmetic.
 */
export function roundMoney(amount: number): number {
  return toCents(amount) / 100;
}
