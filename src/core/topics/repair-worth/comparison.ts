/** Repair against replacement: both as a yearly cost, the most the repair may cost, and where the answer turns over. */
import { annualCost, economicLife, type YearCost } from './annual-cost.ts';
import { capitalRecovery, presentWorth } from '../../money/index.ts';
import { isOver } from '../../thresholds/index.ts';

/** What the comparison stands on. Money in currency units, time in years, chances and rates as fractions. */
export interface Comparison {
  readonly rate: number;
  /** What saying yes to the repair costs from here on. Money already spent is not in it. */
  readonly repair: number;
  /** What the machine fetches as it stands. */
  readonly asIs: number;
  readonly service: number;
  readonly endValue: number;
  readonly repairRunning: number;
  /** Cost of the days without a machine while it is repaired. */
  readonly repairDown: number;
  readonly comebackChance: number;
  readonly comebackCost: number;
  /** Price of the new machine, after trade-in, with its days of waiting. */
  readonly newFirst: number;
  readonly newLife: number;
  readonly newResale: number;
  readonly newRunning: number;
  /** Year-by-year costs of the new machine, where they are known; they stand in for life, resale and running cost. */
  readonly newYears?: readonly YearCost[] | undefined;
}

/**
 * Worth today of a repair that may have to be done again.
 * Formula: p C (1 + r)^-t, t = 1 year, or the end of service if that is sooner.
 * @returns [currency]
 * Example: 15 % chance of 300 at 10 % -> 40.91.
 * Source: comeback-expected-value.
 */
export function comebackWorth(c: Comparison): number {
  return c.comebackChance * c.comebackCost * presentWorth(c.rate, comebackTime(c.service));
}

/** When a comeback falls due [years]: the end of the first year, or of the service if that is sooner. */
export function comebackTime(service: number): number {
  return Math.min(1, service);
}

/**
 * Yearly cost of repairing and keeping the machine. The machine's worth as it stands is part of what is
 * laid out: whoever keeps it gives up selling it.
 * Formula: (V + Q + D + K)(A/P) - E (A/F) + A.
 * @returns [currency a year]
 * Example: as it stands 150, quote 420, 4 years, 50 at the end, 180 a year, 10 % -> 349.04.
 * Source: blank-tarquin.
 */
export function repairYearly(c: Comparison): number {
  return annualCost(
    c.asIs + c.repair + c.repairDown + comebackWorth(c),
    c.endValue,
    c.repairRunning,
    c.rate,
    c.service,
  );
}

/**
 * Yearly cost of buying new: over its stated life, or at its best age when its years are known one by one.
 * Formula: P (A/P) - S (A/F) + A.
 * @returns [currency a year]
 * Example: 1,450, 7 years, 150 back, 120 a year, 10 % -> 402.03.
 * Source: engineering-economy-factors.
 */
export function newYearly(c: Comparison): number {
  if (c.newYears && c.newYears.length > 0) return economicLife(c.newFirst, c.newYears, c.rate).yearly;
  return annualCost(c.newFirst, c.newResale, c.newRunning, c.rate, c.newLife);
}

/**
 * The most the repair may cost before buying new is cheaper.
 * Formula: (C_new - A)(P/A) + E (P/F) - V - D - K.
 * @returns [currency]; at or below zero when no repair is worth paying for
 * Example: the two machines above -> 587.95.
 * Source: blank-tarquin (its rules, solved for the repair).
 */
export function mostWorthPaying(c: Comparison): number {
  const level = capitalRecovery(c.rate, c.service);
  return (
    (newYearly(c) - c.repairRunning) / level +
    c.endValue * presentWorth(c.rate, c.service) -
    c.asIs -
    c.repairDown -
    comebackWorth(c)
  );
}

/**
 * The chance of a comeback at which repair and new cost the same.
 * Formula: p + (Q_max - Q)(1 + r)^t / C.
 * @returns [1], possibly below 0 or above 1; undefined when a comeback costs nothing
 * Example: the machines above with a comeback of 300 -> 0.6158.
 * Source: comeback-expected-value.
 */
export function comebackToFlip(c: Comparison): number | undefined {
  if (c.comebackCost <= 0) return undefined;
  return (
    c.comebackChance +
    (mostWorthPaying(c) - c.repair) / (c.comebackCost * presentWorth(c.rate, comebackTime(c.service)))
  );
}

const longest = 60;
const shortest = 0.02;

/**
 * Years of service after the repair at which repair and new cost the same.
 * Method: halving the range between a week and 60 years, where the answer differs at its ends.
 * @returns [years]; undefined when the same side wins at both ends
 * Source: arithmetic.
 */
export function serviceToFlip(c: Comparison): number | undefined {
  return crossing((service) => pays({ ...c, service }), shortest, longest);
}

/**
 * Price of the new machine at which repair and new cost the same, all else as it is.
 * @param c the comparison
 * @param price the price `c.newFirst` was worked out from [currency]
 * @returns [currency]; undefined when no price between nothing and 100 times today's turns the answer
 * Source: arithmetic.
 */
export function newPriceToFlip(c: Comparison, price: number): number | undefined {
  const at = (p: number) => pays({ ...c, newFirst: c.newFirst - price + p });
  return crossing(at, 0, 100 * Math.max(price, 1));
}

/**
 * True when the repair costs less than the most worth paying; false on a tie.
 * What comes in over the service is held against what is laid out, not their difference against nothing: both have a size.
 */
export function pays(c: Comparison): boolean {
  const level = capitalRecovery(c.rate, c.service);
  const brings = newYearly(c) / level + c.endValue * presentWorth(c.rate, c.service);
  const takes = c.repairRunning / level + c.asIs + c.repairDown + comebackWorth(c) + c.repair;
  return isOver(brings, takes);
}

function crossing(repairs: (x: number) => boolean, from: number, to: number): number | undefined {
  let [low, high] = [from, to];
  const start = repairs(low);
  if (start === repairs(high)) return undefined;
  for (let k = 0; k < 80; k++) {
    const middle = (low + high) / 2;
    if (repairs(middle) === start) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
