/**
 * The order of least expected minutes, without approximation.
 * State: for every check whether it is open, showed a fault, or showed none - 3^m of them for m checks.
 * From the state follow the chances of all suspects and which strip-downs are done, so working backwards
 * over the states (dynamic programming) finds the best next check after every possible answer.
 * Exact covers: one fault at a time, each check done at most once (doing it again says the same), errors of
 * different checks independent, shared strip-downs, checks that tell about several suspects, stopping
 * when a suspect is as likely as `sure`, and giving up for the way out where the checks cost more than that.
 * It does not cover several faults at once.
 */
import type { Pieces } from '../../contract/pieces.ts';
import { isOver } from '../../thresholds/index.ts';
import type { Sums } from './model.ts';
import { effortNow, found, isUseful, massOf, weigh, type Outcome } from './state.ts';

/** 3^12 states take a second or so on one core of a bench laptop, more when it is busy; one more check takes three times that. */
export const exactChecks = 12;
export const exactSuspects = 12;

/** So many open checks, 3^6 states at most, are solved in one piece: some milliseconds on a slow phone. */
const pieceChecks = 6;

export interface Solver {
  /** Solves a state piece by piece; whatever is asked of it or of what can follow it then stands ready. */
  readonly ahead: (outcomes: readonly Outcome[], weights: Float64Array) => Pieces<void>;
  /** Expected minutes from a state on. */
  readonly expected: (outcomes: readonly Outcome[], weights: Float64Array) => number;
  /** Best next check, or -1 when the search ends here: found, given up, or out of checks. */
  readonly best: (outcomes: readonly Outcome[], weights: Float64Array) => number;
  /** Expected minutes when a given check comes next. */
  readonly expectedWith: (outcomes: readonly Outcome[], weights: Float64Array, check: number) => number;
}

/**
 * Least expected minutes by trying every order over all states of knowledge.
 * @param start where the search stands; only it and what can follow it may be asked for
 */
export function exactSolver(sums: Sums, start: readonly Outcome[]): Solver {
  const m = sums.effort.length;
  const open = start.flatMap((o, c) => (o === 0 && !sums.skipped[c] ? [c] : []));
  const states = 3 ** open.length;
  const memo = new Float64Array(states).fill(NaN);
  const choice = new Int8Array(states).fill(-1);
  /** Chance of each solved state's answers together with the start's. It and the way to it are asked for many times. */
  const masses = new Float64Array(states);
  const scratch = Array.from({ length: m + 1 }, () => new Float64Array(sums.n + 1));
  // What can't change any more takes no room. The last check changes most often: its states lie side by side, where
  // they are found at once.
  const place = start.map((_, c) => (open.includes(c) ? 3 ** (open.length - 1 - open.indexOf(c)) : 0));
  const codeOf = (outcomes: readonly Outcome[]) =>
    outcomes.reduce((code: number, o, c) => code + o * (place[c] ?? 0), 0);

  function solve(outcomes: Outcome[], code: number, weights: Float64Array, mass: number, depth: number): number {
    const known = memo[code] ?? NaN;
    if (!Number.isNaN(known)) return known;
    let least = Infinity;
    if (found(sums, outcomes, weights, mass) >= 0) least = 0;
    else {
      for (let c = 0; c < m; c++) {
        if (!isUseful(sums, outcomes, weights, mass, c)) continue;
        const value = withCheck(outcomes, code, weights, mass, c, depth);
        if (isBetter(value, least, outcomes, c, choice[code] ?? -1)) {
          least = value;
          choice[code] = c;
        }
      }
      if (least === Infinity || (sums.fallback > 0 && isOver(least, sums.fallback))) {
        least = sums.fallback;
        choice[code] = -1;
      }
    }
    memo[code] = least;
    return least;
  }

  /** Ties, down to rounding, go to the cheaper check and then to the order of the list. */
  function isBetter(value: number, least: number, outcomes: readonly Outcome[], c: number, holder: number): boolean {
    if (holder < 0) return true;
    const tie = Math.abs(value - least) <= 1e-11 * Math.max(1, least);
    return tie ? effortNow(sums, outcomes, c) < effortNow(sums, outcomes, holder) - 1e-12 : value < least;
  }

  function withCheck(
    outcomes: Outcome[],
    code: number,
    weights: Float64Array,
    mass: number,
    c: number,
    depth: number,
  ): number {
    const shown = answered(outcomes, code, weights, mass, c, 1, depth);
    return effortNow(sums, outcomes, c) + shown + answered(outcomes, code, weights, mass, c, 2, depth);
  }

  /** What is left to do after one answer, times the chance of it. */
  function answered(
    outcomes: Outcome[],
    code: number,
    weights: Float64Array,
    mass: number,
    c: number,
    answer: 1 | 2,
    depth: number,
  ): number {
    const next = code + answer * (place[c] ?? 0);
    const solved = memo[next] ?? NaN;
    if (!Number.isNaN(solved)) {
      const share = (masses[next] ?? 0) / mass;
      return share > 1e-14 ? share * solved : 0;
    }
    const after = weigh(sums, weights, c, answer === 1, scratch[depth]);
    const afterMass = massOf(after);
    masses[next] = afterMass;
    if (afterMass / mass <= 1e-14) return 0;
    outcomes[c] = answer;
    const left = solve(outcomes, next, after, afterMass, depth + 1);
    outcomes[c] = 0;
    return (afterMass / mass) * left;
  }

  /** Solves what can follow a state in the order `solve` comes to it, so that every figure is the same to the last bit. */
  function* solveAhead(
    outcomes: Outcome[],
    code: number,
    weights: Float64Array,
    mass: number,
    depth: number,
  ): Pieces<void> {
    if (!Number.isNaN(memo[code] ?? NaN)) return;
    if (open.length - depth <= pieceChecks) yield;
    else if (found(sums, outcomes, weights, mass) < 0)
      for (let c = 0; c < m; c++) {
        if (!isUseful(sums, outcomes, weights, mass, c)) continue;
        for (const answer of [1, 2] as const) {
          const next = code + answer * (place[c] ?? 0);
          if (!Number.isNaN(memo[next] ?? NaN)) continue;
          const after = weigh(sums, weights, c, answer === 1, scratch[depth]);
          const afterMass = massOf(after);
          masses[next] = afterMass;
          if (afterMass / mass <= 1e-14) continue;
          outcomes[c] = answer;
          yield* solveAhead(outcomes, next, after, afterMass, depth + 1);
          outcomes[c] = 0;
        }
      }
    solve(outcomes, code, weights, mass, depth);
  }

  const solveAt = (outcomes: readonly Outcome[], weights: Float64Array) =>
    solve([...outcomes], codeOf(outcomes), weights, massOf(weights), 0);
  return {
    ahead: (outcomes, weights) => solveAhead([...outcomes], codeOf(outcomes), weights, massOf(weights), 0),
    expected: solveAt,
    best: (outcomes, weights) => {
      solveAt(outcomes, weights);
      return choice[codeOf(outcomes)] ?? -1;
    },
    expectedWith: (outcomes, weights, check) =>
      withCheck([...outcomes], codeOf(outcomes), weights, massOf(weights), check, 0),
  };
}
