/** Where the search stands: which checks said what, and how likely each suspect is by now. */
import type { FaultModel, Seen, Sums } from './model.ts';

/** 0 not done, 1 showed a fault, 2 showed none. */
export type Outcome = 0 | 1 | 2;

export interface State {
  readonly outcomes: readonly Outcome[];
  /** Chance of each suspect together with what was seen; not scaled to 1. */
  readonly weights: Float64Array;
}

export function massOf(weights: Float64Array): number {
  let sum = 0;
  for (let j = 0; j < weights.length; j++) sum += weights[j] ?? 0;
  return sum;
}

/** Weights after one more answer. Formula (Bayes): w_j q_j when it shows, w_j (1 - q_j) when not. */
export function weigh(
  sums: Sums,
  weights: Float64Array,
  check: number,
  shows: boolean,
  into = new Float64Array(weights.length),
): Float64Array {
  const q = sums.shows[check] ?? weights;
  for (let j = 0; j < weights.length; j++) into[j] = (weights[j] ?? 0) * (shows ? (q[j] ?? 0) : 1 - (q[j] ?? 0));
  return into;
}

/** Answers in the order they came; a later answer to the same check takes the place of the earlier one. */
export function stateAfter(model: FaultModel, sums: Sums, seen: readonly Seen[]): State {
  const outcomes: Outcome[] = model.checks.map(() => 0);
  for (const { check, shows } of seen) {
    const k = model.checks.findIndex((c) => c.id === check);
    if (k >= 0) outcomes[k] = shows ? 1 : 2;
  }
  let weights = Float64Array.from(sums.prior);
  outcomes.forEach((o, k) => {
    if (o !== 0) weights = Float64Array.from(weigh(sums, weights, k, o === 1));
  });
  return { outcomes, weights };
}

/** The suspect that counts as found, or -1: likely enough, and pointed at by a check, or with no check left that could. */
export function found(sums: Sums, outcomes: readonly Outcome[], weights: Float64Array, mass: number): number {
  for (let j = 0; j < sums.n; j++) {
    if ((weights[j] ?? 0) < sums.sure * mass - 1e-12 * mass) continue;
    if (!sums.confirmLast) return j;
    let pointedAt = false;
    let askable = false;
    for (let c = 0; c < outcomes.length; c++) {
      if (!(sums.tells[c] ?? []).includes(j)) continue;
      if (outcomes[c] === 1) pointedAt = true;
      if (outcomes[c] === 0) askable = true;
    }
    if (pointedAt || !askable) return j;
  }
  return -1;
}

/** True when the check is not done yet and tells about somebody who may still be the one. */
export function isUseful(
  sums: Sums,
  outcomes: readonly Outcome[],
  weights: Float64Array,
  mass: number,
  check: number,
): boolean {
  return outcomes[check] === 0 && (sums.tells[check] ?? []).some((j) => (weights[j] ?? 0) > 1e-12 * mass);
}

/** Minutes of a check from here: its own, and its strip-down unless another check has opened that already. */
export function effortNow(sums: Sums, outcomes: readonly Outcome[], check: number): number {
  const own = sums.effort[check] ?? 0;
  const group = sums.group[check] ?? -1;
  if (group < 0) return own;
  for (let c = 0; c < outcomes.length; c++) if (outcomes[c] !== 0 && sums.group[c] === group) return own;
  return own + (sums.groupEffort[group] ?? 0);
}
