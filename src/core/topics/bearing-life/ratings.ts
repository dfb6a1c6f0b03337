/**
 * Load ratings of deep-groove ball bearings, series 62, as a textbook prints them: a default where the bearing's own are not known.
 * Source: shigley-ratings (Table 11-2). A modern bearing of the same number is rated as high or higher.
 */

/** [bore, mm; dynamic rating, kN; static rating, kN]. */
export const ratings = [
  [10, 5.07, 2.24],
  [12, 6.89, 3.1],
  [15, 7.8, 3.55],
  [17, 9.56, 4.5],
  [20, 12.7, 6.2],
  [25, 14.0, 6.95],
  [30, 19.5, 10.0],
  [35, 25.5, 13.7],
  [40, 30.7, 16.6],
  [45, 33.2, 18.6],
  [50, 35.1, 19.6],
  [55, 43.6, 25.0],
  [60, 47.5, 28.0],
  [65, 55.9, 34.0],
  [70, 61.8, 37.5],
  [75, 66.3, 40.5],
  [80, 70.2, 45.0],
  [85, 83.2, 53.0],
  [90, 95.6, 62.0],
  [95, 108, 69.5],
] as const;

/**
 * Load ratings of a bearing of series 62.
 * @param bore [mm] @returns dynamic and static rating [N]; undefined for a bore the table does not hold
 * Example: 25 mm -> 14,000 N and 6,950 N. Source: shigley-ratings.
 */
export function ratingOf(bore: number): { readonly dynamic: number; readonly static: number } | undefined {
  const row = ratings.find(([d]) => d === bore);
  return row && { dynamic: row[1] * 1000, static: row[2] * 1000 };
}
