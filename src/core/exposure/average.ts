/** Averages over the working day, and how long a level may last. */

/** The eight hours every limit of a day goes by [s]. */
export const eightHours = 8 * 3600;

export interface Spell {
  readonly concentration: number;
  readonly time: number;
}

/**
 * Average over 8 h: E = (C1 T1 + ... + Cn Tn) / 8 h. Time without exposure counts as nothing; more than 8 h counts whole.
 * @param spells C in any unit, T [s] @returns E in the unit of C
 * Example: 150, 75, 50 for 2, 2 and 4 h -> 81.25. Source: osha-1910-1000-d.
 */
export function dayAverage(spells: readonly Spell[]): number {
  return spells.reduce((sum, s) => sum + s.concentration * s.time, 0) / eightHours;
}

/**
 * Average of the worst 8 h of a longer day: the most exposed eight hours, in whatever order they came.
 * Never less than any 8 h on end, never more than the whole day over 8 h.
 * @returns in the unit of the concentrations
 * Example: 45 for 10 h -> 45. Source: osha-extended-shift.
 */
export function worstEightHours(spells: readonly Spell[]): number {
  let left = eightHours;
  let dose = 0;
  for (const s of [...spells].sort((a, b) => b.concentration - a.concentration)) {
    const time = Math.min(s.time, left);
    dose += s.concentration * time;
    left -= time;
  }
  return dose / eightHours;
}

/**
 * Time at a level after which the day's average stands at the limit, the rest of 8 h at the background.
 * Formula: t = 8 h (L - B) / (C - B).
 * @returns [s]; Infinity where the level does not pass the limit over 8 h, 0 where the background does
 * Example: 1500 against 50 -> 16 min. Source: osha-1910-1000-d (inverse of the average).
 */
export function timeToLimit(concentration: number, limit: number, background = 0): number {
  if (background >= limit) return 0;
  if (concentration <= limit) return Infinity;
  return (eightHours * (limit - background)) / (concentration - background);
}

/**
 * Share of a limit that is left on a long day: F = (8 h / t) ((24 h - t) / 16 h) over 8 h, else 1.
 * Good practice; not the law in the USA.
 * @param shift t [s], up to 24 h @returns F [1]
 * Example: 10 h -> 0.7, 12 h -> 0.5. Source: brief-scala.
 */
export function longShiftFactor(shift: number): number {
  if (shift <= eightHours) return 1;
  return (eightHours / shift) * ((86400 - shift) / 57600);
}

/**
 * Index of a mixture of like effects: sum of C / L. Over 1 is over the limit.
 * Example: 500/1000, 45/200, 40/200 -> 0.925. Source: osha-1910-1000-d.
 */
export function mixtureIndex(parts: readonly { readonly concentration: number; readonly limit: number }[]): number {
  return parts.reduce((sum, p) => sum + p.concentration / p.limit, 0);
}
