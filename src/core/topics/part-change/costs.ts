/** Parts within reach while the machine is open: change now or later, mend or replace. */
import { failure, type Life } from '../../chance/index.ts';
import { isOver } from '../../thresholds/index.ts';

/**
 * Cost of changing a part now, with the chance that the new one fails before the job is due again.
 * Formula: c + (1 - S_new(H)) (c + o).
 * @param part c, the part [currency]
 * @param reopen o, opening the machine again and the stop that goes with it [currency]
 * @param life Weibull shape [1] and scale [time]
 * @param horizon H [time], >= 0
 * @returns [currency]
 * Assumes at most one more failure in H, parts that fail independently, and no labour for a part that lies open.
 * Example: 38, 95, b = 2.5, eta = 400 h, H = 200 h -> 59.55.
 * Source: hasidi-kalech-2021 (by analogy with its rule DR1).
 */
export function costOfChangingNow(part: number, reopen: number, life: Life, horizon: number): number {
  return part + failure(life, horizon) * (part + reopen);
}

/**
 * Cost of leaving a part that has reached an age.
 * Formula: (1 - S(H | T)) (c + o).
 * @param age T [time], >= 0
 * @returns [currency]
 * Example: the same part at 200 h -> 74.61.
 * Source: hasidi-kalech-2021 (by analogy with its rule DR1).
 */
export function costOfLeaving(part: number, reopen: number, life: Life, horizon: number, age: number): number {
  return failure(life, horizon, age) * (part + reopen);
}

/**
 * Cost of mending a part, which then wears faster than a new one.
 * Formula: f + (1 - S_new(p H)) (c + o).
 * @param mend f, mending [currency]
 * @param wear p, how many times faster it wears afterwards [1], > 0
 * @returns [currency]
 * Example: 45, then 1.7 times the wear; part 120, reopening 60, b = 2, eta = 500 h, H = 300 h -> 161.40.
 * Source: hasidi-kalech-2021, Definition 3 (rule DR1).
 */
export function costOfMending(
  mend: number,
  part: number,
  reopen: number,
  life: Life,
  horizon: number,
  wear: number,
): number {
  return mend + failure(life, wear * horizon) * (part + reopen);
}

/**
 * Age from which changing now is the cheaper way.
 * Method: halving between 0 and 50 times the scale.
 * @returns age [time]; 0 when even a new part would be changed; undefined when no age pays (parts that do not wear)
 * Source: arithmetic.
 */
export function ageToChange(part: number, reopen: number, life: Life, horizon: number): number | undefined {
  const now = costOfChangingNow(part, reopen, life, horizon);
  const pays = (age: number) => isOver(costOfLeaving(part, reopen, life, horizon, age), now);
  let [low, high] = [0, 50 * life.scale];
  if (pays(low)) return 0;
  if (!isOver(life.shape, 1) || !pays(high)) return undefined;
  for (let k = 0; k < 80; k++) {
    const middle = (low + high) / 2;
    if (pays(middle)) high = middle;
    else low = middle;
  }
  return high;
}

/**
 * How many times faster than new a mended part may wear before replacing it is cheaper.
 * Formula: p = (eta / H) (-ln(1 - ((c + F_new(H)(c + o)) - f) / (c + o)))^(1/b).
 * @returns [1]; undefined when mending never pays, or always does
 * Example: the part above -> 1.8778.
 * Source: hasidi-kalech-2021, rule DR1 solved for the wear.
 */
export function wearToReplace(
  mend: number,
  part: number,
  reopen: number,
  life: Life,
  horizon: number,
): number | undefined {
  const failing = (costOfChangingNow(part, reopen, life, horizon) - mend) / (part + reopen);
  if (!(failing > 0 && failing < 1) || horizon <= 0) return undefined;
  return (life.scale / horizon) * (-Math.log(1 - failing)) ** (1 / life.shape);
}
