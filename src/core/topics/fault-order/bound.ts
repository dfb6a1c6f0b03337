/** A number of minutes no order can beat, to judge a rule by when the best order is out of reach. */
import type { Sums } from './model.ts';
import { isUseful, massOf, type Outcome } from './state.ts';

/**
 * Lower bound on the expected minutes of any order.
 * A suspect is found only after a check that tells about it. In t minutes the checks done cover at most what
 * the best filling of t minutes by chance over cost covers, F(t), parts of checks allowed and strip-downs for
 * nothing. So the expected minutes are at least the integral of P - F(t) - slack where that is above 0: P is
 * the chance of the suspects on the list; slack is what may be named without its check: wrongly (1 - sure,
 * if checks can raise false alarms), by exclusion, because a check has pointed at it
 * already, or because it has no check.
 * Where every check tells about one suspect and slack is nothing, chance over cost with strip-downs for
 * nothing is itself such a bound, and a closer one.
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
  let bound = 0;
  for (const { gain, minutes } of items) {
    if (left <= 0 || gain <= 0) break;
    const share = Math.min(1, left / gain);
    bound += share * minutes * (left - (share * gain) / 2);
    left -= share * gain;
  }
  const single = slack === 0 && useful.every((c) => (sums.tells[c] ?? []).length === 1);
  return single ? Math.max(bound, cheapestSingles(sums, useful, p)) : bound;
}

function slackOf(sums: Sums, outcomes: readonly Outcome[], useful: readonly number[], p: readonly number[]): number {
  const suspects = p.slice(0, sums.n);
  const falseAlarms = sums.shows.some((q, c) => q.some((x, j) => x > 0 && !(sums.tells[c] ?? []).includes(j)));
  const tellsOf = (c: number) => sums.tells[c] ?? [];
  const pointedAt = (j: number) => outcomes.some((o, c) => o === 1 && tellsOf(c).includes(j));
  const unasked = suspects.reduce(
    (sum, x, j) => (useful.some((c) => tellsOf(c).includes(j)) && !pointedAt(j) ? sum : sum + x),
    0,
  );
  return (falseAlarms ? 1 - sums.sure : 0) + (sums.confirmLast ? 0 : Math.max(0, ...suspects)) + unasked;
}

function cheapestSingles(sums: Sums, useful: readonly number[], p: readonly number[]): number {
  const cheapest = new Map<number, number>();
  for (const c of useful) {
    const j = sums.tells[c]?.[0] ?? 0;
    cheapest.set(j, Math.min(cheapest.get(j) ?? Infinity, sums.effort[c] ?? 0));
  }
  const order = [...cheapest]
    .map(([j, minutes]) => ({ chance: p[j] ?? 0, minutes }))
    .sort((a, b) => b.chance * a.minutes - a.chance * b.minutes);
  let left = order.reduce((sum, x) => sum + x.chance, 0);
  return order.reduce((sum, x) => {
    const paid = x.minutes * left;
    left -= x.chance;
    return sum + paid;
  }, 0);
}
