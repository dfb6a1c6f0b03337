/**
 * The formulas behind ISO 286-1, as its Annex and Narayana, Machine Drawing, Table 15.4 print them (those above 500 mm
 * from transcriptions of the Annex, the multiples of IT1 to IT4 from memory): a check on the tables, never a replacement. Sizes in mm, results in µm, not rounded.
 */
export const mainSteps = [3, 6, 10, 18, 30, 50, 80, 120, 180, 250, 315, 400, 500];

/** Geometric mean of the step's ends; the first step counts from 1 mm. */
export function meanSize(over: number, upTo: number): number {
  return Math.sqrt(Math.max(1, over) * upTo);
}

/** Standard tolerance unit i. */
export function unitTolerance(D: number): number {
  return 0.45 * Math.cbrt(D) + 0.001 * D;
}

const multiples: Readonly<Record<string, number>> = {
  5: 7,
  6: 10,
  7: 16,
  8: 25,
  9: 40,
  10: 64,
  11: 100,
  12: 160,
  13: 250,
  14: 400,
  15: 640,
  16: 1000,
  17: 1600,
  18: 2500,
};

export function toleranceByFormula(grade: string, D: number): number | undefined {
  if (grade === '01') return 0.3 + 0.008 * D;
  if (grade === '0') return 0.5 + 0.012 * D;
  if (grade === '1') return 0.8 + 0.02 * D;
  const k = multiples[grade];
  return k === undefined ? undefined : k * unitTolerance(D);
}

/** Distance of the near limit from nominal, for letters whose formula does not lean on other table cells. */
export const deviationFormulas: Readonly<Record<string, (D: number) => number>> = {
  d: (D) => 16 * D ** 0.44,
  e: (D) => 11 * D ** 0.41,
  f: (D) => 5.5 * D ** 0.41,
  g: (D) => 2.5 * D ** 0.34,
  n: (D) => 5 * D ** 0.34,
};

/** Main steps above 500 mm. */
export const largeSteps = [630, 800, 1000, 1250, 1600, 2000, 2500, 3150];

/** Standard tolerance unit I above 500 mm, and how many of it each grade takes. */
export const largeUnit = (D: number): number => 0.004 * D + 2.1;
export const largeMultiples: Readonly<Record<string, number>> = { 1: 2, 2: 2.7, 3: 3.7, 4: 5, ...multiples };

/** As above, over 500 to 3150 mm. */
export const largeDeviations: Readonly<Record<string, (D: number) => number>> = {
  d: (D) => 16 * D ** 0.44,
  e: (D) => 11 * D ** 0.41,
  f: (D) => 5.5 * D ** 0.41,
  g: (D) => 2.5 * D ** 0.34,
  m: (D) => 0.024 * D + 12.6,
  n: (D) => 0.04 * D + 21,
  p: (D) => 0.072 * D + 37.8,
};

/** Letters that add a multiple of the size to a standard tolerance: ei = IT + m D. */
export const sumFormulas: Readonly<Record<string, { grade: string; m: number }>> = {
  t: { grade: '7', m: 0.63 },
  u: { grade: '7', m: 1 },
  v: { grade: '7', m: 1.25 },
  x: { grade: '7', m: 1.6 },
  y: { grade: '7', m: 2 },
  z: { grade: '7', m: 2.5 },
  za: { grade: '8', m: 3.15 },
  zb: { grade: '9', m: 4 },
  zc: { grade: '10', m: 5 },
};
