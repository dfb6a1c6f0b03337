/** Bearing size: deep-groove ball bearings by number or by caliper, with ring limits and clearance groups. */
import * as all from './formulas.ts';

export { fields } from './fields.ts';
export { compute } from './compute.ts';
export { blocks } from './blocks.ts';
export { ringOutsideTable, words } from './words.ts';
export { bearingOf, bearings, matches, nearest, type Bearing, type Match } from './find.ts';
export { clearanceLimits, ringLimits, type ClearanceLimits, type RingLimits, type RingSide } from './ring.ts';
export { groups, type Group } from './tables/clearance.ts';
export { ringClasses, type RingClass } from './tables/ring-tolerances.ts';

export const title = 'Bearing size';
export const formulas = Object.values(all);
export const sources = [
  'iso-15',
  'iso-492',
  'iso-492-memory',
  'iso-5753-1',
  'iso-5753-1-memory',
  'arithmetic',
  'common-practice',
];
export const hazards: readonly string[] = [];
export const example = { known: 'readings', bore: '25.02 mm', outside: '51.97 mm', width: '15.0 mm' };
