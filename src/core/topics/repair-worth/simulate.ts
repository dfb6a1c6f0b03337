/** How sure the answer is, when the figures behind it are not. */
import { newYearly, repairYearly, type Comparison } from './comparison.ts';
import { randomFrom, triangle } from '../../chance/index.ts';
import { presentWorthOfPayments } from '../../money/index.ts';

/** Half-widths as a share of each figure: 0.4 means give or take 40 %. */
export interface Doubt {
  readonly repair: number;
  readonly service: number;
  readonly newFirst: number;
  readonly newLife: number;
  /** Chance that the engine is worn out and the repair money is lost; 0 once it has been checked. */
  readonly worn: number;
}

export interface Simulated {
  /** Share of the draws in which repair is the cheaper way [1]. */
  readonly chance: number;
  /** Sampling error of `chance`, one standard deviation [1]. */
  readonly error: number;
  /** A tenth, a half and nine tenths of the draws save less than this by repairing [currency a year]. */
  readonly saving: { readonly low: number; readonly middle: number; readonly high: number };
  /** Yearly cost of a line of such repairs: total cost over total service, both as worth today [currency a year]. */
  readonly repairYearly: number;
}

/**
 * Draws the figures many times and counts how often repair is cheaper.
 * Each figure follows a triangle around what was given; a comeback happens or does not; a worn engine
 * loses the repair money. Figures are drawn independently of each other.
 * The mean yearly cost is the ratio of two means, not the mean of the ratios: a repair that lasts a
 * month has a frightening yearly cost, but only for a month.
 * @param c the comparison
 * @param doubt half-widths
 * @param draws how many [1], >= 1
 * @param seed the same seed gives the same answer
 * Source: park-miller-generator.
 */
export function simulate(c: Comparison, doubt: Doubt, draws: number, seed: number): Simulated {
  const random = randomFrom(seed);
  for (let k = 0; k < 16; k++) random(); // neighbouring small seeds start alike
  const savings = new Float64Array(draws);
  let cheaper = 0;
  let cost = 0;
  let service = 0;
  // One set of figures, drawn anew each time: two thousand of them would have to be cleared away at every key.
  const drawn: Drawn = { ...c };
  for (let k = 0; k < draws; k++) {
    drawn.repair = triangle(c.repair, doubt.repair, random());
    drawn.service = triangle(c.service, doubt.service, random());
    drawn.newFirst = triangle(c.newFirst, doubt.newFirst, random());
    drawn.newLife = triangle(c.newLife, doubt.newLife, random());
    drawn.comebackChance = random() < c.comebackChance ? 1 : 0;
    const worn = random() < doubt.worn;
    const annuity = presentWorthOfPayments(c.rate, drawn.service);
    const replaced = newYearly(drawn);
    // A worn engine: the repair is paid for, and a new machine is bought all the same.
    const yearly = worn ? replaced + drawn.repair / annuity : repairYearly(drawn);
    const saving = replaced - yearly;
    savings[k] = saving;
    if (saving >= 0) cheaper += 1;
    cost += yearly * annuity;
    service += annuity;
  }
  savings.sort();
  const at = (share: number) => savings[Math.min(draws - 1, Math.floor(share * draws))] ?? 0;
  const chance = cheaper / draws;
  return {
    chance,
    error: Math.sqrt((chance * (1 - chance)) / draws),
    saving: { low: at(0.1), middle: at(0.5), high: at(0.9) },
    repairYearly: cost / service,
  };
}

type Drawn = { -readonly [K in keyof Comparison]: Comparison[K] };
