/** What is printed of belt sections: grooves, sizes, masses, limits. Lengths in mm as printed; SI is made where they are used. */

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

/** Smallest pulley the section is meant for, pitch diameter [mm]. Example: PJ -> 20. Source: din-2211-grooves; ribbed-belt-data (memory). */
export function leastPulley(section: Section): number {
  return isRibbed(section) ? ribGroove(section).least : vGroove(section).least;
}

/**
 * Mass of one belt or rib for each meter, with how far printed figures lie apart. Books differ by 10 to 15 %, and the
 * frequency check is wrong by as much as the mass is: weigh the belt when it matters.
 */

export interface BeltMass {
  /** [kg/m] */
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly source: string;
}

const printed = (value: number, low: number, high: number, source: string): BeltMass => ({ value, low, high, source });
/** Only one figure, remembered: the usual spread of 15 % is put round it. */
const remembered = (value: number, source: string): BeltMass => ({
  value,
  low: value * 0.85,
  high: value * 1.15,
  source,
});

const masses: Readonly<Record<Section, BeltMass>> = {
  Z: printed(0.06, 0.051, 0.069, 'belt-worksheets'),
  A: printed(0.1, 0.1, 0.105, 'belt-worksheets'),
  B: printed(0.17, 0.17, 0.193, 'belt-worksheets'),
  C: printed(0.35, 0.3, 0.35, 'jindal-design'),
  D: printed(0.603, 0.603, 0.63, 'shigley-belts'),
  E: remembered(0.97, 'gb-t-13575-1-tables'),
  SPZ: remembered(0.072, 'gb-t-13575-1-tables'),
  SPA: remembered(0.112, 'gb-t-13575-1-tables'),
  SPB: remembered(0.192, 'gb-t-13575-1-tables'),
  SPC: remembered(0.37, 'gb-t-13575-1-tables'),
  PH: remembered(0.005, 'ribbed-belt-data'),
  PJ: remembered(0.008, 'ribbed-belt-data'),
  PK: remembered(0.02, 'ribbed-belt-data'),
  PL: remembered(0.036, 'ribbed-belt-data'),
  PM: remembered(0.12, 'ribbed-belt-data'),
};

/** Mass of one belt or rib for each meter [kg/m], and the source it comes from. */
export function beltMass(section: Section): BeltMass {
  return masses[section];
}

/** Y of the push check [N]: what a limp string leaves out. Source: gb-t-13575-1-tables (memory); 0 where none is known. */
const extras: Readonly<Partial<Record<Section, number>>> = { Z: 10, A: 15, B: 20, C: 29, D: 59 };

/** Stiffness allowance of the push check for a section [N]; 0 where none is known. */
export function pushExtra(section: Section): number {
  return extras[section] ?? 0;
}

/** Width over the top and height of a V belt [mm]. Source: belt-section-sizes (memory; C was read in jindal-design). */
const beltSizes: Readonly<Record<VSection, readonly [number, number]>> = {
  Z: [10, 6],
  A: [13, 8],
  B: [17, 11],
  C: [22, 14],
  D: [32, 19],
  E: [38, 25],
  SPZ: [9.7, 8],
  SPA: [12.7, 10],
  SPB: [16.3, 14],
  SPC: [22, 18],
};
/** Half the angle between the flanks of a V belt, 20 degrees [rad]. Source: jindal-design. */
const halfFlank = Math.PI / 9;

/**
 * Cross-section of a V belt: A = h (w - h tan 20 degrees).
 * @returns A [m2] Example: C, 22 x 14 mm -> 236.7 mm2. Source: geometry; sizes belt-section-sizes.
 */
export function beltArea(section: VSection): number {
  const [width, height] = beltSizes[section];
  return height * (width - height * Math.tan(halfFlank)) * 1e-6;
}

/** Stress a textbook allows in a classical V belt [Pa]. Source: jindal-design, a C belt at 2.2 MPa. */
export const textbookStress = 2.2e6;

/** Highest belt speed of a kind of section [m/s]: classical, narrow, and the ribbed ones one by one. */
const speedLimits: Readonly<Record<Section, number>> = {
  Z: 30,
  A: 30,
  B: 30,
  C: 30,
  D: 30,
  E: 30,
  SPZ: 40,
  SPA: 40,
  SPB: 40,
  SPC: 40,
  PH: 60,
  PJ: 60,
  PK: 50,
  PL: 40,
  PM: 35,
};

/** Highest speed the section is commonly run at [m/s], and its source. Example: Z -> 30. Source: belt-speed-limits (memory). */
export function highestSpeed(section: Section): number {
  return speedLimits[section];
}
