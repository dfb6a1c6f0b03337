/** Checks that miss and are worth repeating. */

/**
 * Order for checks that may miss and can be repeated with fresh luck: always the one with the largest
 * chance of finding per minute, then Bayes.
 * Formula: next = argmax a_i P_i / c_i; after a miss P_i becomes P_i (1 - a_i), scaled.
 * @param chances P_i, against each other: the fault is known to be one of them, so they are scaled to add to 1 [1]
 * @param finds a_i, chance that a check finds its fault when it is there [1], 0.001 or more
 * @param minutes c_i [min]
 * @param steps how many checks to name
 * @returns indices, and the expected minutes until found (summed until less than 1e-12 is left)
 * Checks that find less often than one in a thousand would be repeated past any bound: they are not taken.
 * Example: P = 0.6, 0.4; a = 0.5, 0.9; c = 2, 3 -> 1st, 2nd, 1st, 1st, 1st, 2nd; 5.82837 min.
 * Source: blackwell-search.
 */
export function repeatedSearch(
  chances: readonly number[],
  finds: readonly number[],
  minutes: readonly number[],
  steps: number,
): { readonly order: readonly number[]; readonly expected: number } {
  const whole = chances.reduce((a, b) => a + b, 0);
  const able = finds.map((a) => (a >= 0.001 ? a : 0));
  const left = chances.map((p) => p / whole);
  const order: number[] = [];
  let [expected, remaining] = [0, 1];
  while (remaining > 1e-12 || order.length < steps) {
    let [next, best] = [-1, 0];
    for (let i = 0; i < left.length; i++) {
      const ratio = ((able[i] ?? 0) * (left[i] ?? 0)) / (minutes[i] ?? 1);
      if (ratio > best) [next, best] = [i, ratio];
    }
    if (next < 0) break;
    if (order.length < steps) order.push(next);
    expected += remaining * (minutes[next] ?? 0);
    left[next] = (left[next] ?? 0) * (1 - (able[next] ?? 0));
    remaining = left.reduce((a, b) => a + b, 0);
  }
  return { order, expected };
}
