import { step, type WorkingStep } from '../../contract/formula.ts';
import { annualCosts, economicLife, firstCostWithTradeIn } from './annual-cost.ts';
import {
  comebackTime,
  comebackWorth,
  mostWorthPaying,
  newYearly,
  repairYearly,
  type Comparison,
} from './comparison.ts';
import {
  comeback,
  mostWorth,
  newCost,
  newCostByYear,
  newFirstCost,
  recoveryFactor,
  recoveryFree,
  repairCost,
  serviceFromHours,
} from './formulas.ts';
import type { Amounts } from './estimates.ts';
import type { WorthInputs } from './read-quote.ts';
import { capitalRecovery, isNoInterest, presentWorth } from '../../money/index.ts';

/** Inputs as the figures of a comparison; boxes left empty as estimated. */
export function readComparison(inputs: WorthInputs, toPay: number, amounts: Amounts): Comparison {
  return {
    ...amounts,
    rate: inputs.rate,
    repair: toPay,
    asIs: inputs.asIs,
    service: inputs.serviceAs === 'years' ? (inputs.serviceYears ?? 1) : serviceByHours(inputs),
    repairDown: inputs.repairDays * amounts.downtimeDay,
    comebackChance: inputs.comebackChance,
    newFirst:
      firstCostWithTradeIn(inputs.newPrice, inputs.tradeIn ?? inputs.asIs, inputs.asIs) +
      inputs.newDays * amounts.downtimeDay,
    newLife: inputs.newLife,
    newYears: inputs.newYears,
  };
}

/** Years of service when it is given in cutting hours. */
export function serviceByHours(inputs: WorthInputs): number {
  return (inputs.serviceHours ?? 1) / inputs.hoursPerYear;
}

/** The lines of working from interest to the most worth paying, in the order a person would do them. */
export function comparisonWorking(c: Comparison, inputs: WorthInputs, amounts: Amounts): WorkingStep[] {
  const r = c.rate;
  const a = capitalRecovery(r, c.service);
  const K = comebackWorth(c);
  const [V, Q, D, E, A] = [c.asIs, c.repair, c.repairDown, c.endValue, c.repairRunning];
  const [H_s, H] = [inputs.serviceHours ?? 1, inputs.hoursPerYear];
  return [
    ...(inputs.serviceAs === 'hours' ? [step(serviceFromHours, { H_s, H }, c.service)] : []),
    recovery(r, c.service, a),
    step(comeback, { p: c.comebackChance, C_c: c.comebackCost, r, t: comebackTime(c.service) }, K),
    step(repairCost, { V, Q, D, K, a, E, r, A }, repairYearly(c)),
    step(
      newFirstCost,
      { P: inputs.newPrice, T: inputs.tradeIn ?? V, V, D: inputs.newDays * amounts.downtimeDay },
      c.newFirst,
    ),
    ...newWorking(c),
    step(mostWorth, { C_n: newYearly(c), A, a, E, r, V, D, K }, mostWorthPaying(c)),
  ];
}

function newWorking(c: Comparison): WorkingStep[] {
  const r = c.rate;
  const years = c.newYears ?? [];
  if (years.length === 0) {
    const a = capitalRecovery(r, c.newLife);
    return [
      recovery(r, c.newLife, a),
      step(newCost, { N: c.newFirst, a, S: c.newResale, r, A: c.newRunning }, newYearly(c)),
    ];
  }
  const best = economicLife(c.newFirst, years, r);
  const n = best.years;
  const a = capitalRecovery(r, n);
  const W = years.slice(0, n).reduce((sum, y, k) => sum + y.cost * presentWorth(r, k + 1), 0);
  return [
    recovery(r, n, a),
    step(
      newCostByYear,
      { N: c.newFirst, W, S: years[n - 1]?.resale ?? 0, r, n, a },
      annualCosts(c.newFirst, years, r)[n - 1] ?? 0,
    ),
  ];
}

function recovery(r: number, n: number, a: number): WorkingStep {
  return isNoInterest(r) ? step(recoveryFree, { n }, a) : step(recoveryFactor, { r, n }, a);
}
