/**
 * The one comparison of a figure with a limit. Two figures that are equal on paper may differ in the last
 * bit once they have gone through products and unit changes; 1e-9 of the larger one is far below what any
 * instrument of a shop can tell, and far above what arithmetic loses.
 */
const slack = 1e-9;

/**
 * True when a figure lies over a limit: v > l + 1e-9 max(|v|, |l|).
 * @param value v, any unit @param limit l, the same unit @returns false for exactly the limit, and where either is not a number
 * Example: isOver(4160.000000000001, 4160) -> false; isOver(4160.1, 4160) -> true. Source: arithmetic.
 */
export function isOver(value: number, limit: number): boolean {
  // An endless wall or a life without end leaves no room for a share of itself.
  if (!Number.isFinite(value - limit)) return value > limit;
  return value - limit > slack * Math.max(Math.abs(value), Math.abs(limit));
}

/**
 * True when a figure lies under a limit: v < l - 1e-9 max(|v|, |l|).
 * @param value v, any unit @param limit l, the same unit @returns false for exactly the limit, and where either is not a number
 * Example: isUnder(0.1 + 0.2, 0.3) -> false; isUnder(0.29, 0.3) -> true. Source: arithmetic.
 */
export function isUnder(value: number, limit: number): boolean {
  return isOver(limit, value);
}
