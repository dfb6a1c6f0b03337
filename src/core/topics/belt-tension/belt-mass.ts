/**
 * Mass of one belt or rib for each meter, with how far printed figures lie apart.
 * Books differ by 10 to 15 %, and the frequency check is wrong by as much as the mass is: weigh the belt when it matters.
 */
import type { Section } from './sections.ts';

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
