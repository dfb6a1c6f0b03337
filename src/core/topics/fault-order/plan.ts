/** What to check next, and why. */
import { toEnd, type Pieces } from '../../contract/pieces.ts';
import { isOver } from '../../thresholds/index.ts';
import { lowerBound } from './bound.ts';
import { expectedUnder } from './expected.ts';
import { exactChecks, exactSolver, exactSuspects, type Solver } from './exact.ts';
import { toSums, type FaultModel, type OrderOptions, type Seen, type Sums } from './model.ts';
import { byRatio, chanceFinds } from './ratio-rule.ts';
import {
  canConfirm,
  effortNow,
  found,
  isUseful,
  massOf,
  pointedAt,
  stateAfter,
  weigh,
  type Outcome,
  type State,
} from './state.ts';

export interface SuspectChance {
  readonly id: string;
  readonly name: string;
  /** Chance that it is this one, after what was seen [1]. */
  readonly chance: number;
}

export interface Belief {
  /** In the order of the model. */
  readonly suspects: readonly SuspectChance[];
  /** Chance that it is something that is not on the list [1]. */
  readonly somethingElse: number;
  /** True when the answers can't all be right: the chances are then those from before the checks. */
  readonly contradiction: boolean;
}

export interface PlannedCheck {
  readonly id: string;
  readonly name: string;
  /** From where the search stands: with its strip-down, if that is still closed [min]. */
  readonly minutes: number;
  /** Chance that it shows a fault [1]. */
  readonly chanceShows: number;
  /** Chance that it shows the fault that is there, for each minute [1/min]; with strip-down counted in. */
  readonly perMinute: number;
  /** Expected minutes to the end if this check comes next; only when solved exactly. */
  readonly expectedIfNext?: number;
}

export interface PathStep extends PlannedCheck {
  /** Chance that the search gets this far [1]. */
  readonly chanceReached: number;
}

export interface FoundSuspect {
  readonly id: string;
  readonly name: string;
  /** Chance that it is this one [1]. */
  readonly chance: number;
  /**
   * shown: a finding has raised it. excluded: the answers have cleared the others so far that it is left.
   * unchecked: no answer has raised it; it is likely by the list alone, and no open check could confirm it.
   */
  readonly how: 'shown' | 'excluded' | 'unchecked';
  /** The open check that tells most about this suspect for its time, to make sure before a part is ordered. */
  readonly confirm?: PlannedCheck;
}

/** Where a search ends: with a suspect, at the way out, or with nothing left that tells anything. */
export type PathEnd = FoundSuspect['how'] | 'stop' | 'none-left';

export interface Plan {
  readonly belief: Belief;
  /** The suspect the search ends with; nothing while it goes on, or when it has run out of checks. */
  readonly found?: FoundSuspect;
  /** Best next check; nothing when found, when it is better to stop, and when no check tells anything. */
  readonly next?: PlannedCheck;
  /**
   * Given when a way out is (`fallbackMinutes` above 0) and the search is not over: what it takes, what going on
   * by the best check takes on average [min], and whether to take the way out now because that is longer.
   */
  readonly stop?: { readonly minutes: number; readonly goingOn: number; readonly advised: boolean };
  /** Checks answered so far. With 0 an empty `next` says nothing about the machine: nothing was looked at. */
  readonly answered: number;
  /** Every check that is still worth something, best first; also where it is better to stop. */
  readonly ranking: readonly PlannedCheck[];
  /** The order as long as no check shows a fault. */
  readonly path: readonly PathStep[];
  /** How `path` ends when none of its checks shows a fault. */
  readonly pathEnd: PathEnd;
  readonly method: 'exact' | 'ratio-rule';
  /** Expected minutes of checking from here, the way out counted in [min]. */
  readonly expectedMinutes: number;
  /** Sampling error of `expectedMinutes`, one standard deviation, on lists so long that it is drawn [min]; else 0. */
  readonly expectedError: number;
  /** No order can do better than this [min]. Equal to `expectedMinutes` when solved exactly. */
  readonly bound: number;
  /** Expected minutes if the checks were done in the order they are listed, to the end [min]. */
  readonly listedMinutes: number;
  /** Expected minutes of putting the fault right, the same whatever the order [min]. */
  readonly fixMinutes: number;
}

/**
 * How likely each suspect is after some answers.
 * Formula (Bayes): chance before times chance of the answers if it is this one, scaled to 1.
 * @param model suspects and checks
 * @param seen answers so far; answers to unknown checks are left out
 * Example: bearing 30 %, belt 50 %, other 20 %; a bearing test (90 % / 20 %) shows a fault -> 65.9, 24.4, 9.8 %.
 * Source: bayes-rule.
 */
export function updateAfter(model: FaultModel, seen: readonly Seen[] = [], options: OrderOptions = {}): Belief {
  const sums = toSums(model, options);
  return beliefOf(model, sums, stateAfter(model, sums, seen));
}

function beliefOf(model: FaultModel, sums: Sums, { weights }: State): Belief {
  const mass = massOf(weights);
  const contradiction = !(mass > 0);
  const before = contradiction ? sums.listed : weights;
  const chances = before.map((w) => w / massOf(before));
  return {
    suspects: model.suspects.map((s, j) => ({ id: s.id, name: s.name, chance: chances[j] ?? 0 })),
    somethingElse: chances[sums.n] ?? 0,
    contradiction,
  };
}

/**
 * The order of checks with the least expected minutes, from where the search stands.
 * Solved exactly up to 12 suspects and 12 checks (see exact.ts for what that covers); beyond that by the
 * ratio rule, with a bound no order can beat beside it. The rule gives up only where finishing the list by it
 * takes longer than the way out.
 *
 * How a page works a complaint down with it:
 * - start: `planOrder(model, [], { fallbackMinutes })`; do `next`, or take the way out when `stop.advised`.
 * - an answer: add it to `seen`, plan again.
 * - a check that can't be made: add its id to `skipped`. It is never proposed; skipping clears nobody, so a
 *   plan with `answered` 0 and no `next`, or `found.how` "unchecked", is no diagnosis and must not read like one.
 * - `found`: offer `found.confirm` first, if given. "Yes, that is it" ends the search.
 * - "Not it, go on": add the suspect's id to `ruledOut` and plan again. Bayes' rule with that suspect at 0: what
 *   was seen stays, and the others take its share, each by how well it explains the answers.
 * - `belief.contradiction`: no single suspect explains the answers; one of them is wrong, or there are two faults.
 * @param model suspects and checks
 * @param seen answers so far
 * @param options see OrderOptions: how sure, the way out, what is ruled out, what is skipped
 * @returns the plan; a contradiction among the answers leaves nothing to plan
 * Example: 80 % in 3 min, 20 % in 2 min -> the first first, 3.4 min.
 * Source: kadane-simon; dynamic programming.
 */
export function planOrder(model: FaultModel, seen: readonly Seen[] = [], options: OrderOptions = {}): Plan {
  return toEnd(planning(model, seen, options, false));
}

/** The same plan, piece by piece: for a page that answers the hand while a long list is planned. */
export function planInPieces(model: FaultModel, seen: readonly Seen[] = [], options: OrderOptions = {}): Pieces<Plan> {
  return planning(model, seen, options, true);
}

/** @param ahead a long list is solved in pieces, which takes a sixth longer than at one go */
function* planning(model: FaultModel, seen: readonly Seen[], options: OrderOptions, ahead: boolean): Pieces<Plan> {
  const sums = toSums(model, options);
  const at = stateAfter(model, sums, seen);
  const belief = beliefOf(model, sums, at);
  const exact = sums.n <= exactSuspects && sums.effort.length <= exactChecks;
  const fixMinutes = belief.suspects.reduce((sum, s, j) => sum + s.chance * (model.suspects[j]?.fixMinutes ?? 0), 0);
  const nothing = {
    belief,
    answered: at.outcomes.filter((o) => o !== 0).length,
    ranking: [],
    path: [],
    pathEnd: 'none-left' as const,
    method: exact ? ('exact' as const) : ('ratio-rule' as const),
    expectedMinutes: 0,
    expectedError: 0,
    bound: 0,
    listedMinutes: 0,
    fixMinutes,
  };
  if (belief.contradiction) return nothing;
  const one = foundSuspect(model, sums, at);
  if (one) return { ...nothing, found: one, pathEnd: one.how };

  const solver = exact ? exactSolver(sums, at.outcomes) : undefined;
  const rule = solver ? solver.best : (o: readonly Outcome[], w: Float64Array) => byRatio(sums, o, w);
  if (solver && ahead) yield* solver.ahead(at.outcomes, at.weights);
  const going = solver
    ? { minutes: solver.expected(at.outcomes, at.weights), error: 0 }
    : yield* expectedUnder(sums, at.outcomes, at.weights, rule);
  const best = rule(at.outcomes, at.weights);
  const ranking = rank(model, sums, at, best, solver);
  const wayOut = sums.fallback > 0;
  const advised = wayOut && ranking.length > 0 && (solver ? best < 0 : isOver(going.minutes, sums.fallback));
  const expected = advised ? { minutes: sums.fallback, error: 0 } : going;
  const asListed = yield* expectedUnder(sums, at.outcomes, at.weights, (o, w) => firstUseful(sums, o, w));
  return {
    ...nothing,
    ...(ranking[0] && !advised ? { next: ranking[0] } : {}),
    ...(wayOut && ranking.length > 0
      ? { stop: { minutes: sums.fallback, goingOn: ranking[0]?.expectedIfNext ?? going.minutes, advised } }
      : {}),
    ranking,
    ...(advised ? { pathEnd: 'stop' as const } : pathOf(model, sums, at, rule)),
    expectedMinutes: expected.minutes,
    expectedError: expected.error,
    bound: solver ? expected.minutes : lowerBound(sums, at.outcomes, at.weights),
    listedMinutes: asListed.minutes,
  };
}

function firstUseful(sums: Sums, outcomes: readonly Outcome[], weights: Float64Array): number {
  const mass = massOf(weights);
  return sums.effort.findIndex((_, c) => isUseful(sums, outcomes, weights, mass, c));
}

function foundSuspect(model: FaultModel, sums: Sums, at: State): FoundSuspect | undefined {
  const mass = massOf(at.weights);
  const j = found(sums, at.outcomes, at.weights, mass);
  const who = model.suspects[j];
  if (!who) return undefined;
  const confirm = bestConfirmation(model, sums, at, j);
  return {
    id: who.id,
    name: who.name,
    chance: (at.weights[j] ?? 0) / mass,
    how: howFound(sums, at, j),
    ...(confirm ? { confirm } : {}),
  };
}

function howFound(sums: Sums, { outcomes, weights }: State, j: number): FoundSuspect['how'] {
  if (pointedAt(sums, outcomes, j)) return 'shown';
  // Nothing seen leaves the listed chance; answers about others, or a suspect ruled out by eye, raise what is left.
  return isOver((weights[j] ?? 0) / massOf(weights), sums.listed[j] ?? 0) ? 'excluded' : 'unchecked';
}

/** Of the open checks that could raise the suspect, the one with the largest Youden's index for each minute. */
function bestConfirmation(model: FaultModel, sums: Sums, at: State, j: number): PlannedCheck | undefined {
  const others = at.weights.map((w, k) => (k === j ? 0 : w));
  const mass = massOf(others);
  const worth = (c: number) => {
    const q = sums.shows[c] ?? others;
    const falseAlarm = mass > 0 ? massOf(weigh(sums, others, c, true)) / mass : (q[sums.n] ?? 0);
    return ((q[j] ?? 0) - falseAlarm) / Math.max(effortNow(sums, at.outcomes, c), 1e-9);
  };
  const open = sums.effort
    .map((_, c) => c)
    .filter((c) => !sums.skipped[c] && canConfirm(sums, at.outcomes, at.weights, c, j))
    .sort((a, b) => worth(b) - worth(a) || a - b);
  return open[0] === undefined ? undefined : planned(model, sums, at, open[0]);
}

function planned(model: FaultModel, sums: Sums, { outcomes, weights }: State, c: number): PlannedCheck {
  const minutes = effortNow(sums, outcomes, c);
  const mass = massOf(weights);
  const check = model.checks[c];
  return {
    id: check?.id ?? '',
    name: check?.name ?? '',
    minutes,
    chanceShows: massOf(weigh(sums, weights, c, true)) / mass,
    perMinute: chanceFinds(sums, weights, c) / Math.max(minutes, 1e-9),
  };
}

function rank(model: FaultModel, sums: Sums, at: State, best: number, solver: Solver | undefined): PlannedCheck[] {
  const mass = massOf(at.weights);
  const useful = sums.effort.map((_, c) => c).filter((c) => isUseful(sums, at.outcomes, at.weights, mass, c));
  const all = useful.map((c) => ({
    c,
    shown: {
      ...planned(model, sums, at, c),
      ...(solver ? { expectedIfNext: solver.expectedWith(at.outcomes, at.weights, c) } : {}),
    },
  }));
  const key = (x: PlannedCheck) => x.expectedIfNext ?? -x.perMinute;
  return all
    .sort((a, b) => Number(b.c === best) - Number(a.c === best) || key(a.shown) - key(b.shown))
    .map((x) => x.shown);
}

function pathOf(
  model: FaultModel,
  sums: Sums,
  start: State,
  rule: (o: readonly Outcome[], w: Float64Array) => number,
): Pick<Plan, 'path' | 'pathEnd'> {
  const path: PathStep[] = [];
  const whole = massOf(start.weights);
  let at = start;
  for (;;) {
    const mass = massOf(at.weights);
    if (mass < 1e-12 * whole) return { path, pathEnd: 'none-left' };
    const j = found(sums, at.outcomes, at.weights, mass);
    if (j >= 0) return { path, pathEnd: howFound(sums, at, j) };
    const c = rule(at.outcomes, at.weights);
    if (c < 0) return { path, pathEnd: firstUseful(sums, at.outcomes, at.weights) < 0 ? 'none-left' : 'stop' };
    path.push({ ...planned(model, sums, at, c), chanceReached: mass / whole });
    at = { outcomes: at.outcomes.map((o, i) => (i === c ? 2 : o)), weights: weigh(sums, at.weights, c, false) };
  }
}
