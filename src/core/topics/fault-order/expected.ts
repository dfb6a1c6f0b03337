/** What a rule for the next check costs on average. */
import type { Pieces } from '../../contract/pieces.ts';
import { randomFrom } from '../../chance/index.ts';
import type { Sums } from './model.ts';
import { effortNow, found, massOf, weigh, type Outcome } from './state.ts';

export type Rule = (outcomes: readonly Outcome[], weights: Float64Array) => number;

export interface Expected {
  readonly minutes: number;
  /** One standard deviation of `minutes`, when it was drawn and not added up [min]; 0 when added up. */
  readonly error: number;
}

/** So many turns are added up at most; a longer tree of answers is drawn from instead. */
const turns = 20000;
const draws = 2000;
/** Of these so many make a piece: a rule takes up to some tenths of a millisecond for each turn. */
const turnsInPiece = 20;
const drawsInPiece = 2;

/**
 * Expected minutes of a rule: all answers added up where the tree of answers is small, else the mean of 2,000
 * searches drawn with a fixed start number, so that the same list gives the same figure.
 * @returns piece by piece: [min]
 */
export function* expectedUnder(
  sums: Sums,
  outcomes: readonly Outcome[],
  weights: Float64Array,
  rule: Rule,
): Pieces<Expected> {
  let left = turns;
  function* walk(at: readonly Outcome[], w: Float64Array): Pieces<number> {
    if (left-- <= 0) return NaN;
    if (left % turnsInPiece === 0) yield;
    const mass = massOf(w);
    if (mass < 1e-14 || found(sums, at, w, mass) >= 0) return 0;
    const c = rule(at, w);
    if (c < 0) return mass * sums.fallback;
    const after = (o: Outcome) =>
      walk(
        at.map((x, k) => (k === c ? o : x)),
        weigh(sums, w, c, o === 1),
      );
    const shown = yield* after(1);
    return Number.isNaN(shown) ? NaN : mass * effortNow(sums, at, c) + shown + (yield* after(2));
  }
  const minutes = (yield* walk(outcomes, weights)) / massOf(weights);
  return Number.isNaN(minutes) ? yield* drawn(sums, outcomes, weights, rule) : { minutes, error: 0 };
}

function* drawn(sums: Sums, outcomes: readonly Outcome[], weights: Float64Array, rule: Rule): Pieces<Expected> {
  const random = randomFrom(1);
  let [sum, squares] = [0, 0];
  for (let k = 0; k < draws; k++) {
    if (k % drawsInPiece === 0) yield;
    const minutes = search(sums, outcomes, weights, rule, random);
    sum += minutes;
    squares += minutes * minutes;
  }
  const mean = sum / draws;
  return { minutes: mean, error: Math.sqrt(Math.max(0, squares / draws - mean * mean) / draws) };
}

/** One search for a fault that is drawn first. */
function search(
  sums: Sums,
  outcomes: readonly Outcome[],
  weights: Float64Array,
  rule: Rule,
  random: () => number,
): number {
  const fault = pick(weights, random() * massOf(weights));
  let [at, w, minutes] = [outcomes, weights, 0];
  for (;;) {
    if (found(sums, at, w, massOf(w)) >= 0) return minutes;
    const c = rule(at, w);
    if (c < 0) return minutes + sums.fallback;
    minutes += effortNow(sums, at, c);
    const shows = random() < (sums.shows[c]?.[fault] ?? 0);
    w = weigh(sums, w, c, shows);
    at = at.map((x, k) => (k === c ? (shows ? 1 : 2) : x));
  }
}

function pick(weights: Float64Array, at: number): number {
  let left = at;
  for (let j = 0; j < weights.length; j++) {
    left -= weights[j] ?? 0;
    if (left <= 0) return j;
  }
  return weights.length - 1;
}
