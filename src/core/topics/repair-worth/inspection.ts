/**
 * What it is worth to look before spending. States of the machine have chances; each act has an outcome
 * in money for every state; an inspection gives findings whose chances depend on the state.
 */

const dot = (a: readonly number[], b: readonly number[]) => a.reduce((sum, x, k) => sum + x * (b[k] ?? 0), 0);

/**
 * Best expected outcome without looking.
 * Formula: max over acts of sum p_j u_j.
 * @param chances p_j of the states [1], adding to 1
 * @param acts outcome of each act in each state [currency]
 * @returns [currency]
 * Source: value-of-information.
 */
export function bestBlind(chances: readonly number[], acts: readonly (readonly number[])[]): number {
  return Math.max(...acts.map((act) => dot(chances, act)));
}

/**
 * Expected value of knowing the state for certain.
 * Formula: sum_j p_j max_a u_aj - max_a sum_j p_j u_aj.
 * @returns [currency], >= 0
 * Example: three investments over a rising, level and falling market -> 350.
 * Source: value-of-information.
 */
export function valueOfKnowing(chances: readonly number[], acts: readonly (readonly number[])[]): number {
  const told = chances.reduce((sum, p, j) => sum + p * Math.max(...acts.map((act) => act[j] ?? 0)), 0);
  return Math.max(0, told - bestBlind(chances, acts));
}

/**
 * Expected value of an inspection that can be wrong, before its fee.
 * Formula: sum over findings of max_a sum_j p_j P(finding | j) u_aj, less the best without looking.
 * @param findings for each finding its chance in each state [1]; over all findings they add to 1 in each state
 * @returns [currency], between 0 and the value of knowing; 0 when no finding changes what is done
 * Example: hidden fault 35 %, found in 80 %, false alarm 10 % -> 62.25.
 * Source: value-of-information.
 */
export function valueOfInspecting(
  chances: readonly number[],
  acts: readonly (readonly number[])[],
  findings: readonly (readonly number[])[],
): number {
  const after = findings.reduce(
    (sum, finding) =>
      sum + Math.max(...acts.map((act) => chances.reduce((s, p, j) => s + p * (finding[j] ?? 0) * (act[j] ?? 0), 0))),
    0,
  );
  return Math.max(0, after - bestBlind(chances, acts));
}

/** A look into the engine before drive parts are ordered. */
export interface EngineCheck {
  /** Chance that the engine is worn out [1]. */
  readonly worn: number;
  /** What the repair is better than buying new by, if the engine is sound [currency]; below zero when it is not. */
  readonly gain: number;
  /** Money lost if the engine turns out worn after the repair is paid [currency]. */
  readonly wasted: number;
  /** Chance that the check finds a worn engine [1]. */
  readonly finds: number;
  /** Chance that it condemns a sound one [1]. */
  readonly falseAlarm: number;
}

export interface EngineCheckValue {
  readonly blind: number;
  readonly ifSound: number;
  readonly ifWorn: number;
  readonly perfect: number;
  readonly worth: number;
}

/**
 * The same sums for two acts, repair and buy new, with buying new as the zero both are counted from.
 * @returns outcome of repairing blind; of repairing after each finding, weighted with its chance; the value
 * of a perfect and of this check [currency]
 * Example: worn 35 %, gain 550, wasted 350, finds 80 %, false alarm 10 % -> blind 235, worth 62.25.
 * Source: value-of-information.
 */
export function engineCheckValue({ worn, gain, wasted, finds, falseAlarm }: EngineCheck): EngineCheckValue {
  const chances = [1 - worn, worn];
  const acts = [
    [gain, -wasted],
    [0, 0],
  ];
  const condemned = [falseAlarm, finds];
  const passed = [1 - falseAlarm, 1 - finds];
  const weighted = (finding: readonly number[]) =>
    chances.reduce((sum, p, j) => sum + p * (finding[j] ?? 0) * (acts[0]?.[j] ?? 0), 0);
  return {
    blind: dot(chances, acts[0] ?? []),
    ifSound: weighted(passed),
    ifWorn: weighted(condemned),
    perfect: valueOfKnowing(chances, acts),
    worth: valueOfInspecting(chances, acts, [condemned, passed]),
  };
}
