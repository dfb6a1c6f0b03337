/** Where the search stands: which checks said what, and how likely each suspect is by now. */
import { isOver } from '../../thresholds/index.ts';
import type { FaultModel, Seen, Sums } from './model.ts';

/** 0 not done, 1 showed a fault, 2 showed none. */
export type Outcome = 0 | 1 | 2;

export interface State {
  readonly outcomes: readonly Outcome[];
  /** Chance of each suspect together with what was seen; not scaled to 1. */
  readonly weights: Float64Array;
}

/** Sum of the weights: the chance of everything that was seen [1]. */
export function massOf(weights: Float64Array): number {
  let sum = 0;
  for (const w of weights) sum += w;
  return sum;
}

/** Weights after one more answer. Formula (Bayes): w_j q_j when it shows, w_j (1 - q_j) when not. `into` may be `weights`. */
export function weigh(
  sums: Sums,
  weights: Float64Array,
  check: number,
  shows: boolean,
  into = new Float64Array(weights.length),
): Float64Array {
  const q = sums.shows[check] ?? weights;
  // Asked for hundreds of thousands of times where a long list is solved exactly.
  if (shows) for (let j = 0; j < weights.length; j++) into[j] = (weights[j] ?? 0) * (q[j] ?? 0);
  else for (let j = 0; j < weights.length; j++) into[j] = (weights[j] ?? 0) * (1 - (q[j] ?? 0));
  return into;
}

/** Answers in the order they came; a later answer to the same check takes the place of the earlier one. */
export function stateAfter(model: FaultModel, sums: Sums, seen: readonly Seen[]): State {
  const outcomes: Outcome[] = model.checks.map(() => 0);
  for (const { check, shows } of seen) {
    const k = model.checks.findIndex((c) => c.id === check);
    if (k >= 0) outcomes[k] = shows ? 1 : 2;
  }
  return { outcomes, weights: weightsOf(sums, outcomes) };
}

/** Weights from all answers, or from all but one check's. */
function weightsOf(sums: Sums, outcomes: readonly Outcome[], without = -1): Float64Array {
  const weights = sums.prior.slice();
  for (let k = 0; k < outcomes.length; k++)
    if (outcomes[k] !== 0 && k !== without) weigh(sums, weights, k, outcomes[k] === 1, weights);
  return weights;
}

/** A suspect whose share of the chances is below this has been cleared, as far as arithmetic can tell. */
const gone = 1e-12;

/**
 * True when a check that shows a fault makes a suspect likelier than it is without it: the likelihood ratio
 * P(shows | this suspect) / P(shows | any other) is above 1. With nobody else left it is measured against a
 * machine on which nobody listed is at fault.
 * @param weightsNow gives the chances without the check's own answer, where they are needed
 */
function raises(sums: Sums, weightsNow: () => Float64Array, check: number, j: number): boolean {
  const q = sums.shows[check] ?? sums.prior;
  const own = q[j] ?? 0;
  const tells = sums.tells[check] ?? [];
  if (!tells.includes(j) || !isOver(own, q[sums.n] ?? 0)) return false;
  // A check about one suspect shows as often with any of the others as with none: no need to weigh them.
  if (tells.length === 1) return true;
  const weights = weightsNow();
  let others = 0;
  let shown = 0;
  for (let k = 0; k < weights.length; k++) {
    if (k === j) continue;
    others += weights[k] ?? 0;
    shown += (weights[k] ?? 0) * (q[k] ?? 0);
  }
  return others > gone * (weights[j] ?? 0) ? isOver(own, shown / others) : true;
}

/** True when a finding has raised the suspect: a check that tells about it showed a fault, and that made it likelier. */
export function pointedAt(sums: Sums, outcomes: readonly Outcome[], j: number): boolean {
  for (let c = 0; c < outcomes.length; c++)
    if (outcomes[c] === 1 && raises(sums, () => weightsOf(sums, outcomes, c), c, j)) return true;
  return false;
}

/** True when a check that is still open would raise the suspect if it showed a fault. */
export function canConfirm(
  sums: Sums,
  outcomes: readonly Outcome[],
  weights: Float64Array,
  check: number,
  j: number,
): boolean {
  return outcomes[check] === 0 && raises(sums, () => weights, check, j);
}

/**
 * The suspect the search ends with, or -1: likely enough, and raised by a finding or with no check left that
 * could raise it.
 */
export function found(sums: Sums, outcomes: readonly Outcome[], weights: Float64Array, mass: number): number {
  for (let j = 0; j < sums.n; j++) {
    if ((weights[j] ?? 0) < sums.sure * mass - 1e-12 * mass) continue;
    if (!sums.confirmLast || pointedAt(sums, outcomes, j)) return j;
    let askable = false;
    for (let c = 0; c < outcomes.length && !askable; c++)
      askable = !sums.skipped[c] && canConfirm(sums, outcomes, weights, c, j);
    if (!askable) return j;
  }
  return -1;
}

/**
 * True when the check is not done, can be done, and tells something: its answer is not equally likely with
 * every suspect who may still be the one. With one suspect left it must be able to confirm that one.
 */
export function isUseful(
  sums: Sums,
  outcomes: readonly Outcome[],
  weights: Float64Array,
  mass: number,
  check: number,
): boolean {
  if (outcomes[check] !== 0 || sums.skipped[check]) return false;
  const q = sums.shows[check] ?? weights;
  const floor = gone * mass;
  let live = 0;
  let last = -1;
  let least = Infinity;
  let most = -Infinity;
  for (let j = 0; j < weights.length; j++) {
    if (!((weights[j] ?? 0) > floor)) continue;
    const chance = q[j] ?? 0;
    live++;
    last = j;
    if (chance < least) least = chance;
    if (chance > most) most = chance;
  }
  return live > 1 ? isOver(most, least) : canConfirm(sums, outcomes, weights, check, last);
}

/** Minutes of a check from here: its own, and its strip-down unless another check has opened that already. */
export function effortNow(sums: Sums, outcomes: readonly Outcome[], check: number): number {
  const own = sums.effort[check] ?? 0;
  const group = sums.group[check] ?? -1;
  if (group < 0) return own;
  for (let c = 0; c < outcomes.length; c++) if (outcomes[c] !== 0 && sums.group[c] === group) return own;
  return own + (sums.groupEffort[group] ?? 0);
}
