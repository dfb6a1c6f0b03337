/**
 * What stands in for money boxes left empty, in any currency: shares of the new price and of the hours, so that a
 * hobby saw, a hire yard and a floor saw each get figures of their own size. Bench estimates for cut-off saws,
 * common practice, no source; each one a figure of the reader's own takes the place of.
 */
import { step, type WorkingStep } from '../../contract/formula.ts';
import type { TableValue, Value } from '../../contract/result.ts';
import { roundMoney } from '../../money/index.ts';
import { dayShare, endShare, priceShare, upkeepShare } from './formulas.ts';
import type { WorthInputs } from './read-quote.ts';

/** Upkeep in 100 cutting hours, as a share of the new price: belts, filters, small repairs. */
export const upkeepRepaired = 0.07;
export const upkeepNew = 0.045;
/** What a new one fetches at the end, and what a comeback costs, as shares of the new price. */
export const resaleNew = 0.12;
export const comebackOfPrice = 0.12;
/** A day without the machine: a share of the new price for each 100 hours a year, at most what a day's hire costs. */
export const dayOfPrice = 0.02;
export const dayAtMost = 0.05;
/** What it fetches after the repair has been used up, as a share of what it fetches today, not working. */
export const endOfAsIs = 0.5;

export interface Amounts {
  readonly endValue: number;
  readonly repairRunning: number;
  readonly comebackCost: number;
  readonly newResale: number;
  readonly newRunning: number;
  readonly downtimeDay: number;
}

export interface Estimates {
  readonly amounts: Amounts;
  /** A table of what was taken for boxes left empty; nothing when all are filled. */
  readonly values: readonly Value[];
  readonly steps: readonly WorkingStep[];
}

/** Each amount as given, or estimated from the new price, the hours a year and what the machine fetches today. */
export function estimates(inputs: WorthInputs): Estimates {
  const [P, H, V] = [inputs.newPrice, inputs.hoursPerYear, inputs.asIs];
  const upkeep = (k: number) => (k * P * H) / 100;
  const guesses = {
    endValue: [V * endOfAsIs, step(endShare, { k: endOfAsIs, V }, V * endOfAsIs), 'half of what it fetches today'],
    repairRunning: [
      upkeep(upkeepRepaired),
      step(upkeepShare, { k: upkeepRepaired, P, H }, upkeep(upkeepRepaired)),
      '7 % of the new price in 100 hours',
    ],
    comebackCost: [
      comebackOfPrice * P,
      step(priceShare, { k: comebackOfPrice, P }, comebackOfPrice * P),
      '12 % of the new price',
    ],
    newResale: [resaleNew * P, step(priceShare, { k: resaleNew, P }, resaleNew * P), '12 % of the new price'],
    newRunning: [
      upkeep(upkeepNew),
      step(upkeepShare, { k: upkeepNew, P, H }, upkeep(upkeepNew)),
      '4.5 % of the new price in 100 hours',
    ],
    downtimeDay: [
      P * Math.min((dayOfPrice * H) / 100, dayAtMost),
      step(dayShare, { k: dayOfPrice, H, k_m: dayAtMost, P }, P * Math.min((dayOfPrice * H) / 100, dayAtMost)),
      '2 % of the new price for each 100 hours a year, at most 5 %',
    ],
  } as const;
  const keys = Object.keys(guesses) as (keyof Amounts)[];
  const empty = keys.filter((key) => inputs[key] === undefined && !(inputs.newYears && key.startsWith('newR')));
  const amounts = Object.fromEntries(keys.map((key) => [key, inputs[key] ?? guesses[key][0]])) as unknown as Amounts;
  return {
    amounts,
    values: empty.length === 0 ? [] : [taken(empty.map((key) => [labels[key], guesses[key][0], guesses[key][2]]))],
    steps: empty.map((key) => guesses[key][1]),
  };
}

/** As the boxes are labelled in fields.ts. */
const labels: Readonly<Record<keyof Amounts, string>> = {
  endValue: 'Fetches at the end of that service',
  repairRunning: 'Upkeep a year, repaired machine',
  comebackCost: 'What a comeback costs',
  newResale: 'The new one fetches at the end',
  newRunning: 'Upkeep a year, new machine',
  downtimeDay: 'A day without the machine costs',
};

function taken(rows: readonly (readonly [string, number, string])[]): TableValue {
  return {
    kind: 'table',
    key: 'taken',
    label: 'Taken for the boxes left empty: bench estimates, not this machine’s figures',
    columns: [
      { key: 'box', label: 'Box' },
      { key: 'amount', label: 'Taken', money: true },
      { key: 'how', label: 'From' },
    ],
    rows: rows.map(([label, amount, how]) => [label, roundMoney(amount), how]),
  };
}
