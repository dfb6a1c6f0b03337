/** Checks that miss and are worth repeating. */

/**
 * Order for checks that may miss and can be repeated with fresh luck: always the one with the largest
 * chance of finding per minute, then Bayes.
 * Formula: next = argmax a_i P_i / c_i; after a miss P_i becomes P_i (1 - a_i), scaled.
 * @param chances P_i [1], adding to 1
 * @param finds a_i, chance that a check finds its fault when it is there [1]
 * @param minutes c_i [min]
 * @param steps how many checks to name
 * @returns indices, and the expected minutes until found (summed until less than 1e-12 is left)
 * Example: P = 0.6, 0.4; a = 0.5, 0.9; c = 2, 3 -> 1st, 2nd, 1st, 1st, 1st, 2nd; 5.82837 min.
 * Source: blackwell-search.
 */
export function repeatedSearch(
  chances: readonly number[],
  finds: readonly number[],
  minutes: readonly number[],
  steps: number,
): { readonly order: readonly number[]; readonly expected: number } {
  const left = [...chances];
  const order: number[] = [];
  let [expected, remaining] = [0, left.reduce((a, b) => a + b, 0)];
  for (let k = 0; k < 100000 && (remaining > 1e-12 || k < steps); k++) {
    const ratios = left.map((p, i) => ((finds[i] ?? 0) * p) / (minutes[i] ?? 1));
    const next = ratios.indexOf(Math.max(...ratios));
    if (!((ratios[next] ?? 0) > 0)) break;
    if (k < steps) order.push(next);
    expected += remaining * (minutes[next] ?? 0);
    left[next] = (left[next] ?? 0) * (1 - (finds[next] ?? 0));
    remaining = left.reduce((a, b) => a + b, 0);
  }
  return { order, expected };
}
