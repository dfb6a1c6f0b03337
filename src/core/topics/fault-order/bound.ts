/** A number of minutes no order can beat, to judge a rule by when the best order is out of reach. */
import { isOver } from '../../thresholds/index.ts';
import type { Sums } from './model.ts';
import { isUseful, massOf, type Outcome } from './state.ts';

/**
 * Lower bound on the expected minutes of any order.
 * A suspect is found only after a check that tells about it. In t minutes the checks done cover at most what
 * the best filling of t minutes by chance over cost covers, F(t), parts of checks allowed and strip-downs for
 * nothing. So the expected minutes are at least the integral of P - F(t) - slack where that is above 0: P is
 * the chance of the suspects on the list; slack is what may be named without its check: wrongly (1 - sure,
 * if checks can raise false alarms), by exclusion, because a check has pointed at it already, or because
 * no check settles it alone. Whoever gives up pays the way out in full, so the integral ends there.
 * Where every check tells about one suspect and slack is nothing, chance over cost with strip-downs for
 * nothing, given up where it pays best, is itself such a bound, and a closer one.
 * @returns [min], >= 0
 * Source: kadane-simon (the order); the bound is worked out from it.
 */
export function lowerBound(sums: Sums, outcomes: readonly Outcome[], weights: Float64Array): number {
  const mass = massOf(weights);
  const p = Array.from(weights, (w) => w / mass);
  const useful = sums.effort.map((_, c) => c).filter((c) => isUseful(sums, outcomes, weights, mass, c));
  const covers = (c: number) => (sums.tells[c] ?? []).reduce((sum, j) => sum + (p[j] ?? 0), 0);
  const slack = slackOf(sums, outcomes, useful, p);
  const items = useful
    .map((c) => ({ gain: covers(c), minutes: sums.effort[c] ?? 0 }))
    .sort((a, b) => b.gain * a.minutes - a.gain * b.minutes);
  let left = p.slice(0, sums.n).reduce((a, b) => a + b, 0) - slack;
  let [bound, spent] = [0, 0];
  const end = sums.fallback > 0 ? sums.fallback : Infinity;
  for (const { gain, minutes } of items) {
    if (left <= 0 || gain <= 0 || spent >= end) break;
    const share = Math.min(1, left / gain, (end - spent) / minutes);
    bound += share * minutes * (left - (share * gain) / 2);
    left -= share * gain;
    spent += share * minutes;
  }
  const single = slack === 0 && useful.every((c) => (sums.tells[c] ?? []).length === 1);
  return single ? Math.max(bound, cheapestSingles(sums, useful, p)) : bound;
}

function slackOf(sums: Sums, outcomes: readonly Outcome[], useful: readonly number[], p: readonly number[]): number {
  const suspects = p.slice(0, sums.n);
  const tellsOf = (c: number) => sums.tells[c] ?? [];
  const falseAlarms = sums.shows.some((q, c) => q.some((x, j) => x > 0 && !tellsOf(c).includes(j)));
  const wasShown = (j: number) => outcomes.some((o, c) => o === 1 && tellsOf(c).includes(j));
  // Only a check about this suspect alone is sure to stay worth asking, whoever else is cleared on the way.
  const settles = (c: number, j: number) =>
    tellsOf(c).length === 1 && tellsOf(c)[0] === j && isOver(sums.shows[c]?.[j] ?? 0, sums.shows[c]?.[sums.n] ?? 0);
  const unasked = suspects.reduce(
    (sum, x, j) => (useful.some((c) => settles(c, j)) && !wasShown(j) ? sum : sum + x),
    0,
  );
  return (falseAlarms ? 1 - sums.sure : 0) + (sums.confirmLast ? 0 : Math.max(0, ...suspects)) + unasked;
}

/** Each suspect by its cheapest check, chance over cost, given up for the way out after whichever check is best. */
function cheapestSingles(sums: Sums, useful: readonly number[], p: readonly number[]): number {
  const cheapest = new Map<number, number>();
  for (const c of useful) {
    const j = sums.tells[c]?.[0] ?? 0;
    cheapest.set(j, Math.min(cheapest.get(j) ?? Infinity, sums.effort[c] ?? 0));
  }
  const order = [...cheapest]
    .map(([j, minutes]) => ({ chance: p[j] ?? 0, minutes }))
    .sort((a, b) => b.chance * a.minutes - a.chance * b.minutes);
  const others = 1 - order.reduce((sum, x) => sum + x.chance, 0);
  let [left, paid] = [1 - others, 0];
  let least = sums.fallback > 0 ? left * sums.fallback : Infinity;
  for (const { chance, minutes } of order) {
    paid += minutes * left;
    left -= chance;
    if (sums.fallback > 0) least = Math.min(least, paid + left * sums.fallback);
  }
  return Math.min(least, paid);
}
