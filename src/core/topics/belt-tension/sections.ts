/** Belt sections and their grooves. Lengths in mm as printed; SI is made where they are used. */

export interface VGroove {
  readonly least: number;
  readonly datumWidth: number;
  readonly topWidth: number;
  /** Datum line to outside of the pulley. */
  readonly above: number;
  readonly pitch: number;
  readonly edge: number;
  readonly depth: number;
  /** Groove angle in degrees up to `angleUpTo`, and above it. */
  readonly angleSmall: number;
  readonly angleUpTo: number;
  readonly angleAbove: number;
}

/** Source: din-2211-grooves (second-hand). */
const grooveRows = {
  Z: [50, 8.5, 9.7, 2, 12, 8, 11, 34, 80, 38],
  A: [71, 11, 12.7, 2.8, 15, 10, 14, 34, 118, 38],
  B: [112, 14, 16.3, 3.5, 19, 12.5, 18, 34, 190, 38],
  C: [180, 19, 22, 4.8, 25.5, 17, 24, 34, 315, 38],
  D: [355, 27, 32, 8.1, 37, 24, 28, 36, 500, 38],
  E: [500, 32, 40, 12, 44.5, 29, 33, 36, 630, 38],
  SPZ: [63, 8.5, 9.7, 2, 12, 8, 11, 34, 80, 38],
  SPA: [90, 11, 12.7, 2.8, 15, 10, 14, 34, 118, 38],
  SPB: [140, 14, 16.3, 3.5, 19, 12.5, 18, 34, 190, 38],
  SPC: [224, 19, 22, 4.8, 25.5, 17, 24, 34, 315, 38],
} as const;
export type VSection = keyof typeof grooveRows;

/** Pitch of the ribs, least edge, and 2X and 2N of the effective diameter. Source: iso-9982. Least effective diameters: memory. */
const ribRows = {
  PH: [1.6, 1.3, 0.11, 0.69, 13],
  PJ: [2.34, 1.8, 0.23, 0.81, 20],
  PK: [3.56, 2.5, 0.99, 1.68, 45],
  PL: [4.7, 3.3, 2.36, 3.5, 75],
  PM: [9.4, 6.4, 4.53, 5.92, 180],
} as const;
export type RibSection = keyof typeof ribRows;
export type Section = VSection | RibSection;

export const vSections = Object.keys(grooveRows) as VSection[];
export const ribSections = Object.keys(ribRows) as RibSection[];

/** True for a ribbed belt (PH to PM). */
export function isRibbed(section: Section): section is RibSection {
  return Object.hasOwn(ribRows, section);
}

/** Groove of a V pulley: widths and depths [mm], angles [°], from the table above. */
export function vGroove(section: VSection): VGroove {
  const [least, datumWidth, topWidth, above, pitch, edge, depth, angleSmall, angleUpTo, angleAbove] =
    grooveRows[section];
  return { least, datumWidth, topWidth, above, pitch, edge, depth, angleSmall, angleUpTo, angleAbove };
}

export interface RibGroove {
  readonly pitch: number;
  readonly edge: number;
  readonly overBalls: number;
  readonly ballsToOutside: number;
  readonly least: number;
}

/** Groove of a ribbed pulley [mm], from the table above. */
export function ribGroove(section: RibSection): RibGroove {
  const [pitch, edge, overBalls, ballsToOutside, least] = ribRows[section];
  return { pitch, edge, overBalls, ballsToOutside, least };
}

/** Smallest pulley the section is meant for, pitch diameter in mm. */
export function leastPulley(section: Section): number {
  return isRibbed(section) ? ribGroove(section).least : vGroove(section).least;
}
