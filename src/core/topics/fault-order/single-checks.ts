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
export function orderBySingles(
  chances: readonly number[],
  minutes: readonly number[],
  fallback = 0,
): { readonly order: readonly number[]; readonly expected: number } {
  const order = chances
    .map((_, k) => k)
    .sort(
      (a, b) =>
        (chances[b] ?? 0) * (minutes[a] ?? 0) - (chances[a] ?? 0) * (minutes[b] ?? 0) ||
        (minutes[a] ?? 0) - (minutes[b] ?? 0) ||
        a - b,
    );
  return { order, expected: expectedOfOrder(order, chances, minutes, fallback) };
}

/** Expected minutes of any fixed order of such checks [min]. */
export function expectedOfOrder(
  order: readonly number[],
  chances: readonly number[],
  minutes: readonly number[],
  fallback = 0,
): number {
  let left = 1;
  let sum = 0;
  for (const k of order) {
    sum += left * (minutes[k] ?? 0);
    left -= chances[k] ?? 0;
  }
  return sum + Math.max(0, left) * fallback;
}

/**
 * Most found per minute behind a closed strip-down: the best start of its checks, in the order given.
 * Formula: max over k of (p_1 + ... + p_k) / (opening + c_1 + ... + c_k).
 * @param chances p_i [1]
 * @param minutes c_i [min]
 * @param opening minutes of the strip-down [min], paid once; 0 when it is open
 * @returns [1/min]; 0 for no checks. The best start of all when the checks stand by chance over cost.
 * Example: 30 % and 35 % in 2 and 3 min behind 12 min -> 0.65 / 17 = 0.038235.
 * Source: kadane-simon; the shared cost after Ottosen and Jensen, arXiv 1203.3502.
 */
export function blockRatio(chances: readonly number[], minutes: readonly number[], opening: number): number {
  let [found, spent, best] = [0, opening, 0];
  chances.forEach((p, k) => {
    found += p;
    spent += minutes[k] ?? 0;
    best = Math.max(best, found / Math.max(spent, 1e-9));
  });
  return best;
}

/**
 * What a finding says about one suspect.
 * Formulas: PPV = Se p / (Se p + (1 - Sp)(1 - p)); NPV = Sp (1 - p) / (Sp (1 - p) + (1 - Se) p); LR+ = Se / (1 - Sp);
 * Youden's index = Se + Sp - 1.
 * @param before p [1]
 * @param finds Se, chance of a finding when it is at fault [1]
 * @param falseAlarm 1 - Sp, chance of one when it is sound [1]
 * @returns chance of a finding, and of one that is right; the chance of the fault after a finding and after none,
 * and of none after none [1], left out where they can't occur; how many times likelier a finding is with the fault
 * than without (left out with no false alarms); Youden's index, 0 for a check that tells nothing [1]
 * Example: 1 %, 90 %, 2 % -> 31.25 % after a finding. 5 %, 95 %, 20 % -> 20 %, 99.67 % sound after none, 4.75 times.
 * Source: bayes-rule.
 */
export function afterFinding(before: number, finds: number, falseAlarm: number) {
  const shows = finds * before + falseAlarm * (1 - before);
  return {
    shows,
    rightly: finds * before,
    ...(shows > 0 ? { ifShown: (finds * before) / shows } : {}),
    ...(shows < 1
      ? { ifClear: ((1 - finds) * before) / (1 - shows), soundIfClear: ((1 - falseAlarm) * (1 - before)) / (1 - shows) }
      : {}),
    ...(falseAlarm > 0 ? { times: finds / falseAlarm } : {}),
    youden: finds - falseAlarm,
  };
}
