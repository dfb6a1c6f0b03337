/** What to check next, and why. */
import { lowerBound } from './bound.ts';
import { expectedUnder } from './expected.ts';
import { exactChecks, exactSolver, exactSuspects, type Solver } from './exact.ts';
import { toSums, type FaultModel, type OrderOptions, type Seen, type Sums } from './model.ts';
import { byRatio, chanceFinds } from './ratio-rule.ts';
import { effortNow, found, isUseful, massOf, stateAfter, weigh, type Outcome, type State } from './state.ts';

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

export interface Plan {
  readonly belief: Belief;
  /** The suspect that counts as found; nothing when the search goes on, or has run out of checks. */
  readonly found?: { readonly id: string; readonly name: string; readonly how: 'shown' | 'excluded' };
  /** Best next check. */
  readonly next?: PlannedCheck;
  /** Every check that is still worth something, best first. */
  readonly ranking: readonly PlannedCheck[];
  /** The order as long as no check shows a fault. */
  readonly path: readonly PathStep[];
  readonly method: 'exact' | 'ratio-rule';
  /** Expected minutes of checking from here [min]. */
  readonly expectedMinutes: number;
  /** Sampling error of `expectedMinutes`, one standard deviation, on lists so long that it is drawn [min]; else 0. */
  readonly expectedError: number;
  /** No order can do better than this [min]. Equal to `expectedMinutes` when solved exactly. */
  readonly bound: number;
  /** Expected minutes if the checks were done in the order they are listed [min]. */
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
  const chances = contradiction ? sums.prior : weights.map((w) => w / mass);
  return {
    suspects: model.suspects.map((s, j) => ({ id: s.id, name: s.name, chance: chances[j] ?? 0 })),
    somethingElse: chances[sums.n] ?? 0,
    contradiction,
  };
}

/**
 * The order of checks with the least expected minutes, from where the search stands.
 * Solved exactly up to 12 suspects and 12 checks (see exact.ts for what that covers); beyond that by the
 * ratio rule, with a bound no order can beat beside it.
 * @param model suspects and checks
 * @param seen answers so far
 * @returns the plan; a contradiction among the answers leaves nothing to plan
 * Example: 80 % in 3 min, 20 % in 2 min -> the first first, 3.4 min.
 * Source: kadane-simon; dynamic programming.
 */
export function planOrder(model: FaultModel, seen: readonly Seen[] = [], options: OrderOptions = {}): Plan {
  const sums = toSums(model, options);
  const at = stateAfter(model, sums, seen);
  const belief = beliefOf(model, sums, at);
  const exact = sums.n <= exactSuspects && sums.effort.length <= exactChecks;
  const fixMinutes = belief.suspects.reduce((sum, s, j) => sum + s.chance * (model.suspects[j]?.fixMinutes ?? 0), 0);
  const nothing = {
    belief,
    ranking: [],
    path: [],
    method: exact ? ('exact' as const) : ('ratio-rule' as const),
    expectedMinutes: 0,
    expectedError: 0,
    bound: 0,
    listedMinutes: 0,
    fixMinutes,
  };
  if (belief.contradiction) return nothing;
  const one = found(sums, at.outcomes, at.weights, massOf(at.weights));
  const who = model.suspects[one];
  if (who)
    return {
      ...nothing,
      found: { id: who.id, name: who.name, how: pointedAt(sums, at.outcomes, one) ? 'shown' : 'excluded' },
    };

  const solver = exact ? exactSolver(sums) : undefined;
  const rule = solver ? solver.best : (o: readonly Outcome[], w: Float64Array) => byRatio(sums, o, w);
  const expected = solver
    ? { minutes: solver.expected(at.outcomes, at.weights), error: 0 }
    : expectedUnder(sums, at.outcomes, at.weights, rule);
  const ranking = rank(model, sums, at, rule(at.outcomes, at.weights), solver);
  return {
    ...nothing,
    ...(ranking[0] ? { next: ranking[0] } : {}),
    ranking,
    path: pathOf(model, sums, at, rule),
    expectedMinutes: expected.minutes,
    expectedError: expected.error,
    bound: solver ? expected.minutes : lowerBound(sums, at.outcomes, at.weights),
    listedMinutes: expectedUnder(sums, at.outcomes, at.weights, (o, w) =>
      sums.effort.findIndex((_, c) => isUseful(sums, o, w, massOf(w), c)),
    ).minutes,
  };
}

function pointedAt(sums: Sums, outcomes: readonly Outcome[], j: number): boolean {
  return outcomes.some((o, c) => o === 1 && (sums.tells[c] ?? []).includes(j));
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
): PathStep[] {
  const steps: PathStep[] = [];
  const whole = massOf(start.weights);
  let at = start;
  for (let k = 0; k <= sums.effort.length; k++) {
    const mass = massOf(at.weights);
    if (mass < 1e-12 * whole || found(sums, at.outcomes, at.weights, mass) >= 0) break;
    const c = rule(at.outcomes, at.weights);
    if (c < 0) break;
    steps.push({ ...planned(model, sums, at, c), chanceReached: mass / whole });
    at = { outcomes: at.outcomes.map((o, i) => (i === c ? 2 : o)), weights: weigh(sums, at.weights, c, false) };
  }
  return steps;
}
