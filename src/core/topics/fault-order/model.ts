/**
 * A complaint: who could be at fault, which checks tell them apart, and what a check costs.
 * The files in content/faults/, the calculator and the interactive page all use this model.
 * One fault at a time is assumed: exactly one suspect, or something that is not on the list.
 */

export interface Suspect {
  readonly id: string;
  readonly name: string;
  /** Chance that it is this one, before anything was checked [1]. What is missing to 1 is "something else". */
  readonly likelihood: number;
  /** Time to put it right [min]; it is paid once whatever the order, so it does not change the order. */
  readonly fixMinutes?: number | undefined;
}

export interface Tell {
  readonly suspect: string;
  /** Chance that the check shows a fault when this suspect is at fault [1]. */
  readonly ifFaulty: number;
  /** Chance that it shows one although this suspect is sound [1]. */
  readonly ifSound: number;
}

export interface Check {
  readonly id: string;
  readonly name: string;
  readonly minutes: number;
  /** Money the check uses up, besides the time [currency]. */
  readonly cost?: number | undefined;
  /** Strip-down that must be done first; its minutes are paid by the first check that needs it. */
  readonly stripDown?: string | undefined;
  readonly tells: readonly Tell[];
}

export interface StripDown {
  readonly id: string;
  readonly minutes: number;
}

export interface FaultModel {
  readonly suspects: readonly Suspect[];
  readonly checks: readonly Check[];
  readonly stripDowns?: readonly StripDown[] | undefined;
}

/** What a check that has been done said. */
export interface Seen {
  readonly check: string;
  readonly shows: boolean;
}

export interface OrderOptions {
  /** A suspect this likely counts as found [1]: likely enough to put right and try. 0.8 when not given. */
  readonly sure?: number;
  /** True: the last suspect left is still checked. False: it is found by exclusion. True when not given. */
  readonly confirmLast?: boolean;
  /**
   * What the way out takes when the checks are given up: a full strip-down, or sending the machine away [min].
   * Above 0 it is paid where no check is left and nobody is found, and the search may stop for it at any time.
   * 0 or not given: there is no way out, and the search goes on as long as a check tells anything.
   */
  readonly fallbackMinutes?: number;
  /** Ids of suspects looked at with one's own eyes and found sound: "not it, go on". Their chance is 0 from here. */
  readonly ruledOut?: readonly string[];
  /** Ids of checks that can't be made now; the plan goes on without them. */
  readonly skipped?: readonly string[];
  /** What a minute costs [currency], to turn the money of a check into minutes. 1 when not given. */
  readonly minuteCost?: number;
}

/** The model as numbers. Suspect `n` is "something else". */
export interface Sums {
  readonly n: number;
  /** Chances as listed, before anything was seen or ruled out [1]. */
  readonly listed: Float64Array;
  /** The same with 0 for whoever is ruled out; not scaled to 1. */
  readonly prior: Float64Array;
  /** shows[c][j]: chance that check c shows a fault when suspect j is the one [1]. */
  readonly shows: readonly Float64Array[];
  readonly tells: readonly (readonly number[])[];
  /** Minutes of each check, its money turned into minutes, without its strip-down. */
  readonly effort: readonly number[];
  readonly group: readonly number[];
  readonly groupEffort: readonly number[];
  readonly sure: number;
  readonly confirmLast: boolean;
  /** Minutes of the way out; 0 when there is none. */
  readonly fallback: number;
  readonly skipped: readonly boolean[];
}

/**
 * Chance that a check shows a fault when suspect j is the one. Each suspect it tells about raises the flag
 * on its own: 1 - (1 - ifFaulty_j) times the product over the others of (1 - ifSound).
 */
function chanceShown(check: Check, id: string | undefined): number {
  return 1 - check.tells.reduce((silent, t) => silent * (1 - (t.suspect === id ? t.ifFaulty : t.ifSound)), 1);
}

/** The model and the wishes as numbers; likelihoods that add up to more than 1 are scaled down to 1. */
export function toSums(model: FaultModel, options: OrderOptions = {}): Sums {
  const ids = model.suspects.map((s) => s.id);
  const listed = model.suspects.reduce((sum, s) => sum + s.likelihood, 0);
  const whole = Math.max(1, listed);
  const downs = model.stripDowns ?? [];
  const chances = Float64Array.from([...model.suspects.map((s) => s.likelihood / whole), Math.max(0, 1 - listed)]);
  return {
    n: ids.length,
    listed: chances,
    prior: chances.map((p, j) => (options.ruledOut?.includes(ids[j] ?? '') ? 0 : p)),
    shows: model.checks.map((c) => Float64Array.from([...ids, undefined].map((id) => chanceShown(c, id)))),
    tells: model.checks.map((c) => c.tells.map((t) => ids.indexOf(t.suspect)).filter((k) => k >= 0)),
    effort: model.checks.map((c) => c.minutes + (c.cost ?? 0) / (options.minuteCost ?? 1)),
    group: model.checks.map((c) => downs.findIndex((d) => d.id === c.stripDown)),
    groupEffort: downs.map((d) => d.minutes),
    sure: options.sure ?? 0.8,
    confirmLast: options.confirmLast ?? true,
    fallback: options.fallbackMinutes ?? 0,
    skipped: model.checks.map((c) => options.skipped?.includes(c.id) ?? false),
  };
}
