/**
 * Zones j and J, which follow no formula, and the delta added to holes K to ZC.
 * Source: iso-286-1, Tables 2 and 3. Neither j nor delta goes beyond 500 mm.
 */

/** [size up to and including, mm; ei of j5 and j6, of j7, of j8, µm]. j8 ends at 3 mm. */
export const shaftJ: readonly (readonly (number | null)[])[] = [
  [3, -2, -4, -6],
  [6, -2, -4, null],
  [10, -2, -5, null],
  [18, -3, -6, null],
  [30, -4, -8, null],
  [50, -5, -10, null],
  [80, -7, -12, null],
  [120, -9, -15, null],
  [180, -11, -18, null],
  [250, -13, -21, null],
  [315, -16, -26, null],
  [400, -18, -28, null],
  [500, -20, -32, null],
];

/** [size up to and including, mm; ES of J6, J7, J8, µm]. */
export const holeJ: readonly (readonly number[])[] = [
  [3, 2, 4, 6],
  [6, 5, 6, 10],
  [10, 5, 8, 12],
  [18, 6, 10, 15],
  [30, 8, 12, 20],
  [50, 10, 14, 24],
  [80, 13, 18, 28],
  [120, 16, 22, 34],
  [180, 18, 26, 41],
  [250, 22, 30, 47],
  [315, 25, 36, 55],
  [400, 29, 39, 60],
  [500, 33, 43, 66],
];

/** [size up to and including, mm; delta for IT3, IT4, ... IT8, µm]. */
export const deltas: readonly (readonly number[])[] = [
  [3, 0, 0, 0, 0, 0, 0],
  [6, 1, 1.5, 1, 3, 4, 6],
  [10, 1, 1.5, 2, 3, 6, 7],
  [18, 1, 2, 3, 3, 7, 9],
  [30, 1.5, 2, 3, 4, 8, 12],
  [50, 1.5, 3, 4, 5, 9, 14],
  [80, 2, 3, 5, 6, 11, 16],
  [120, 2, 4, 5, 7, 13, 19],
  [180, 3, 4, 6, 7, 15, 23],
  [250, 3, 4, 6, 9, 17, 26],
  [315, 4, 4, 7, 9, 20, 29],
  [400, 4, 5, 7, 11, 21, 32],
  [500, 5, 5, 7, 13, 23, 34],
];
