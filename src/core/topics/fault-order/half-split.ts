/** A chain of stages, one of them bad: a test between two stages tells which side the fault is on. */

export interface HalfSplit {
  /** Expected tests with the best cuts [1]. */
  readonly best: number;
  /** Test after this stage first, counted from 1; 0 when there is nothing to test. */
  readonly firstCut: number;
  /** Expected tests when the middle stage is always cut, the left part the smaller [1]. */
  readonly middle: number;
  /** Expected tests going from one end to the other [1]. */
  readonly sequential: number;
}

/**
 * Best place to cut the chain. Split the chance in half, not the count.
 * Formula: E(i..j) = 1 + min over cuts k of (P(i..k) E(i..k) + P(k+1..j) E(k+1..j)) / P(i..j), worked up from short chains.
 * @param chances of each stage, in order along the chain; scaled to 1
 * Assumes one bad stage and tests of equal cost that are never wrong.
 * Example: 8 equal stages -> 3 tests, against 4.375 from one end.
 * Source: half-split-method.
 */
export function halfSplit(chances: readonly number[]): HalfSplit {
  const n = chances.length;
  const sum = chances.reduce((a, b) => a + b, 0) || 1;
  const before = [0];
  for (const p of chances) before.push((before[before.length - 1] ?? 0) + p / sum);
  const mass = (i: number, j: number) => (before[j + 1] ?? 0) - (before[i] ?? 0);
  const table = new Map<number, number>();
  const cuts = new Map<number, number>();
  const weighted = (i: number, j: number): number => (i === j ? 0 : (table.get(i * n + j) ?? 0));
  for (let length = 2; length <= n; length++) {
    for (let i = 0; i + length <= n; i++) {
      const j = i + length - 1;
      let [least, at] = [Infinity, i];
      for (let k = i; k < j; k++) {
        const cost = weighted(i, k) + weighted(k + 1, j);
        if (cost < least - 1e-15) [least, at] = [cost, k];
      }
      table.set(i * n + j, mass(i, j) + least);
      cuts.set(i * n + j, at);
    }
  }
  const middle = (i: number, j: number): number => {
    if (i >= j) return 0;
    const k = i + Math.floor((j - i + 1) / 2) - 1;
    return mass(i, j) + middle(i, k) + middle(k + 1, j);
  };
  const sequential = chances.reduce((total, p, k) => total + (p / sum) * Math.min(k + 1, n - 1), 0);
  return {
    best: n > 1 ? weighted(0, n - 1) : 0,
    firstCut: n > 1 ? (cuts.get(n - 1) ?? 0) + 1 : 0,
    middle: middle(0, n - 1),
    sequential: n > 1 ? sequential : 0,
  };
}
