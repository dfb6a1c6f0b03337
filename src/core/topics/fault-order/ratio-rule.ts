/**
 * The order by most found per minute: a named rule for lists too long to solve exactly.
 * With single suspects, sure checks and no shared strip-down it is the best order there is (Kadane and Simon:
 * chance over cost). A strip-down is judged as a block: the best start of its checks, all their chances over
 * all their minutes with the strip-down once.
 */
import { isOver } from '../../thresholds/index.ts';
import type { Sums } from './model.ts';
import { blockRatio } from './single-checks.ts';
import { effortNow, isUseful, massOf, type Outcome } from './state.ts';

/** Chance that a check shows a fault and is right about it [1]; suspects it shows less often than a sound machine do not count. */
export function chanceFinds(sums: Sums, weights: Float64Array, check: number): number {
  const mass = massOf(weights);
  const q = sums.shows[check] ?? weights;
  return (sums.tells[check] ?? [])
    .filter((j) => isOver(q[j] ?? 0, q[sums.n] ?? 0))
    .reduce((sum, j) => sum + ((weights[j] ?? 0) * (q[j] ?? 0)) / mass, 0);
}

/**
 * Next check by the ratio rule, or -1.
 * Ties: fewer minutes first, then the order of the list.
 */
export function byRatio(sums: Sums, outcomes: readonly Outcome[], weights: Float64Array): number {
  const mass = massOf(weights);
  const useful = sums.effort.map((_, c) => c).filter((c) => isUseful(sums, outcomes, weights, mass, c));
  let best = -1;
  let bestRatio = -1;
  for (const c of useful) {
    const ratio = ratioOf(sums, outcomes, weights, useful, c);
    const tie = Math.abs(ratio - bestRatio) <= 1e-12 * Math.max(ratio, bestRatio) && best >= 0;
    if (tie ? effortNow(sums, outcomes, c) < effortNow(sums, outcomes, best) : ratio > bestRatio)
      [best, bestRatio] = [c, ratio];
  }
  return best;
}

/** Found per minute: of the check alone, or of the best block that starts with it behind a closed strip-down. */
function ratioOf(
  sums: Sums,
  outcomes: readonly Outcome[],
  weights: Float64Array,
  useful: readonly number[],
  c: number,
): number {
  const own = (k: number) => sums.effort[k] ?? 0;
  const gain = (k: number) => chanceFinds(sums, weights, k);
  const opening = effortNow(sums, outcomes, c) - own(c);
  if (opening === 0) return gain(c) / Math.max(own(c), 1e-9);
  const others = useful
    .filter((k) => k !== c && sums.group[k] === sums.group[c])
    .sort((a, b) => gain(b) / own(b) - gain(a) / own(a));
  return blockRatio([c, ...others].map(gain), [c, ...others].map(own), opening);
}
