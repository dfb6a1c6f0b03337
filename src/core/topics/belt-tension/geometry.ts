/** The path of an open belt round two pulleys. All diameters are pitch (datum or effective) diameters. */

export interface Pulleys {
  /** Smaller diameter d [m]. */
  readonly small: number;
  /** Larger diameter D [m]. */
  readonly large: number;
}

/** Sorts two diameters [m] into small and large; a drive does not care which one the engine turns. */
export function pulleys(one: number, other: number): Pulleys {
  return { small: Math.min(one, other), large: Math.max(one, other) };
}

/**
 * Angle by which each strand leans off the line of centres.
 * Formula: alpha = asin((D - d) / (2 C)).
 * @param p pulleys [m] @param centre center distance C [m], >= (D - d) / 2
 * @returns alpha [rad]; 90 degrees when the pulleys lie inside one another
 * Source: shigley-belts, eq. 17-1.
 */
export function lean({ small, large }: Pulleys, centre: number): number {
  return Math.asin(Math.min(1, (large - small) / (2 * centre)));
}

/**
 * Wrap: the arc on which the belt lies against the small pulley.
 * Formula: theta = pi - 2 asin((D - d) / (2 C)). The large pulley has 2 pi less that.
 * @returns theta [rad]
 * Example: 12 and 24 cm at 30 cm centres -> 156.926 degrees. Source: tayal-mechanics, Example 7.1.
 */
export function wrapSmall(p: Pulleys, centre: number): number {
  return Math.PI - 2 * lean(p, centre);
}

/**
 * Exact length of the belt's pitch line.
 * Formula: L = sqrt(4 C^2 - (D - d)^2) + (D theta_D + d theta_d) / 2.
 * @param p pulleys [m] @param centre C [m], >= (D - d) / 2
 * @returns L [m]
 * Example: 6 and 18 in at 96 in -> 230.074 in. Source: shigley-belts, Problem 17-5.
 */
export function beltLength(p: Pulleys, centre: number): number {
  const theta = wrapSmall(p, centre);
  return 2 * freeSpan(p, centre) + (p.large * (2 * Math.PI - theta) + p.small * theta) / 2;
}

/**
 * Textbook length, always a little short; kept to check against books.
 * Formula: L = 2 C + pi (D + d) / 2 + (D - d)^2 / (4 C).
 * @returns L [m]
 * Source: khurmi-machines, Example 11.15.
 */
export function textbookLength({ small, large }: Pulleys, centre: number): number {
  return 2 * centre + (Math.PI * (large + small)) / 2 + (large - small) ** 2 / (4 * centre);
}

/**
 * Textbook length of a crossed belt.
 * Formula: L = 2 C + pi (D + d) / 2 + (D + d)^2 / (4 C).
 * @returns L [m]
 * Source: sarkar-machines, Illustration 3.
 */
export function crossedLength({ small, large }: Pulleys, centre: number): number {
  return 2 * centre + (Math.PI * (large + small)) / 2 + (large + small) ** 2 / (4 * centre);
}

/**
 * Free span: the straight part between the pulleys, the same on both sides.
 * Formula: S = sqrt(C^2 - ((D - d) / 2)^2).
 * @returns S [m]
 */
export function freeSpan({ small, large }: Pulleys, centre: number): number {
  return Math.sqrt(Math.max(0, centre ** 2 - ((large - small) / 2) ** 2));
}

/**
 * Center distance by the textbook's closed form.
 * Formula: C = (B + sqrt(B^2 - 2 (D - d)^2)) / 4, B = L - pi (D + d) / 2.
 * @param length L [m] @returns C [m], or NaN when the length can't go round
 * Example: 4 and 6 in, 54 in -> 19.12 in. Source: wentzell-design, Example 14.2.
 */
export function textbookCentre({ small, large }: Pulleys, length: number): number {
  const straight = length - (Math.PI * (large + small)) / 2;
  return straight > 0 ? (straight + Math.sqrt(straight ** 2 - 2 * (large - small) ** 2)) / 4 : NaN;
}

/** Length of a belt that just goes round two pulleys touching each other [m]: no shorter one fits. */
export function shortestLength(p: Pulleys): number {
  return beltLength(p, (p.large + p.small) / 2);
}

/**
 * Center distance for an exact belt length.
 * Method: Newton on L(C) from the textbook value. dL/dC = 2 cos(alpha) exactly, and L(C) is convex,
 * so after the first step every step falls towards the answer: three or four of them reach the last bit.
 * @param p pulleys [m] @param length L [m], longer than `shortestLength`
 * @returns C [m], or undefined when the belt is too short to go round
 */
export function centreForLength(p: Pulleys, length: number): number | undefined {
  if (!(length > shortestLength(p))) return undefined;
  const least = (p.large + p.small) / 2;
  let centre = Math.max(textbookCentre(p, length) || 0, least);
  for (let i = 0; i < 20; i += 1) {
    const next = Math.max(least, centre - (beltLength(p, centre) - length) / (2 * Math.cos(lean(p, centre))));
    if (Math.abs(next - centre) <= 4e-16 * next) return next;
    centre = next;
  }
  return centre;
}
