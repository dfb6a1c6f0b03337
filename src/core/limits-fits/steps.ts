/**
 * Steps of nominal size. A size belongs to the first step whose end is not smaller than it:
 * "over 18 up to and including 30" holds 30 mm and not 18 mm.
 */

/** Ends of the steps, mm: the intermediate steps of iso-286-1, with 1 mm added because some zones start above it. */
export const stepEnds = [1, 3, 6, 10, 14, 18, 24, 30, 40, 50, 65, 80, 100, 120, 140, 160, 180, 200, 225, 250, 280, 315, 355, 400, 450, 500] as const;

/** Largest nominal size whose table is held here [m]. The standard goes on to 3150 mm; that part is not held. */
export const largestSize = 0.5;

/** Every step ends on a whole millimetre, so the step of a size is that of the next whole millimetre. */
const stepOfWhole = Uint8Array.from({ length: 501 }, (_, mm) => stepEnds.findIndex((end) => end >= mm));

/** A billionth of a millimetre: less than any instrument, more than a unit change leaves behind. */
const slack = 1e-9;

/**
 * Index into `stepEnds` of the step a size lies in.
 * @param size nominal size [m]
 * @returns 0 to 25; -1 when not over 0 and up to 500 mm, or not a number
 * Example: 30 mm -> the step that ends at 30; 30.001 mm -> the one that ends at 40.
 */
export function stepIndex(size: number): number {
  const mm = size * 1000;
  if (!(mm > 0 && mm <= 500 + slack)) return -1;
  return stepOfWhole[Math.max(0, Math.ceil(mm - slack))] ?? -1;
}

/** The row of a table whose first column is the end of its step, mm. */
export function rowFor<T extends number | null>(table: readonly (readonly T[])[], end: number): readonly T[] {
  return table.find((row) => (row[0] ?? 0) >= end) ?? [];
}
