/** The textbook case: one check for each suspect, never wrong, nothing shared. */

/**
 * Order by chance over cost, and what it costs on average.
 * Formula: sort by p_i / c_i, largest first; expected = sum of c_k (1 - sum of p before k), plus what is left of the chances times the fallback.
 * @param chances p_i [1], adding to 1 at most
 * @param minutes c_i [min]
 * @param fallback cost when none of them is at fault [min]
 * @returns indices, and the expected minutes
 * Example: no-start with five suspects -> 19.75 min.
 * Source: kadane-simon.
 */
export function orderBySingles(chances: readonly number[], minutes: readonly number[], fallback = 0): { readonly order: readonly number[]; readonly expected: number } {
  const order = chances.map((_, k) => k).sort((a, b) => (chances[b] ?? 0) * (minutes[a] ?? 0) - (chances[a] ?? 0) * (minutes[b] ?? 0) || (minutes[a] ?? 0) - (minutes[b] ?? 0) || a - b);
  return { order, expected: expectedOfOrder(order, chances, minutes, fallback) };
}

/** Expected minutes of any fixed order of such checks [min]. */
export function expectedOfOrder(order: readonly number[], chances: readonly number[], minutes: readonly number[], fallback = 0): number {
  let left = 1;
  let sum = 0;
  for (const k of order) {
    sum += left * (minutes[k] ?? 0);
    left -= chances[k] ?? 0;
  }
  return sum + Math.max(0, left) * fallback;
}

/**
 * What a finding says about one suspect.
 * Formulas: PPV = Se p / (Se p + (1 - Sp)(1 - p)); NPV = Sp (1 - p) / (Sp (1 - p) + (1 - Se) p).
 * @param before p [1]
 * @param finds Se, chance of a finding when it is at fault [1]
 * @param falseAlarm 1 - Sp, chance of one when it is sound [1]
 * @returns chance of a finding, and the chance of the fault after a finding and after none [1]; the latter two undefined where they can't occur
 * Example: 1 %, 90 %, 2 % -> 31.25 % after a finding.
 * Source: bayes-rule.
 */
export function afterFinding(before: number, finds: number, falseAlarm: number) {
  const shows = finds * before + falseAlarm * (1 - before);
  return {
    shows,
    ...(shows > 0 ? { ifShown: (finds * before) / shows } : {}),
    ...(shows < 1 ? { ifClear: ((1 - finds) * before) / (1 - shows) } : {}),
  };
}
