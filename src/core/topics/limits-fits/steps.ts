/**
 * Steps of nominal size. A size belongs to the first step whose end is not smaller than it:
 * "over 18 up to and including 30" holds 30 mm and not 18 mm.
 */

/** Ends of the steps, mm: the intermediate steps of iso-286-1, with 1 mm added because some zones start above it. */
export const stepEnds = [
  1, 3, 6, 10, 14, 18, 24, 30, 40, 50, 65, 80, 100, 120, 140, 160, 180, 200, 225, 250, 280, 315, 355, 400, 450, 500,
  560, 630, 710, 800, 900, 1000, 1120, 1250, 1400, 1600, 1800, 2000, 2240, 2500, 2800, 3150,
] as const;

/** End of the first range, mm. Above it the standard has fewer letters, no IT01 and IT0, and holes mirror shafts. */
export const endOfFirstRange = 500;

/** Largest nominal size of the standard's tables [m]. */
export const largestSize = 3.15;

/** Every step ends on a whole millimetre, so the step of a size is that of the next whole millimetre. */
const stepOfWhole = Uint8Array.from({ length: 3151 }, (_, mm) => stepEnds.findIndex((end) => end >= mm));

/** A billionth of a millimetre: less than any instrument, more than a unit change leaves behind. */
const slack = 1e-9;

/**
 * Index into `stepEnds` of the step a size lies in.
 * @param size nominal size [m]
 * @returns 0 to 41; -1 when not over 0 and up to 3150 mm, or not a number
 * Example: 30 mm -> the step that ends at 30; 30.001 mm -> the one that ends at 40.
 */
export function stepIndex(size: number): number {
  const mm = size * 1000;
  if (!(mm > 0 && mm <= 3150 + slack)) return -1;
  return stepOfWhole[Math.max(0, Math.ceil(mm - slack))] ?? -1;
}

/** The row of a table whose first column is the end of its step, mm. */
export function rowFor<T extends number | null>(table: readonly (readonly T[])[], end: number): readonly T[] {
  return table.find((row) => (row[0] ?? 0) >= end) ?? [];
}
