/** Bearing size: deep-groove ball bearings by number or by caliper, with ring limits and clearance groups. */
import type { Carry } from '../../contract/carry.ts';
import * as all from './formulas.ts';

export { fields } from './fields.ts';
export { compute } from './compute.ts';
export { blocks } from './blocks.ts';
export { ringOutsideTable, words } from './words.ts';
export { bearingOf, bearings, matches, nearest, type Bearing, type Match } from './find.ts';
export { readNumber, type RingNumber } from './number.ts';
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
/** What a bearing is hangs on all three readings, or on the one number: each of them alone leaves dozens. */
export const wholeOnly = 'three readings together name a bearing, and so does the number on the ring';
export const decides = {
  match: ['known', 'bore', 'outside', 'width', 'allow'],
  wear: ['known', 'bore', 'outside', 'width', 'allow'],
  readAs: ['known', 'designation'],
};
const found = { given: 'designation' };
export const carries: readonly Carry[] = [
  {
    ...found,
    to: 'bearing-fit',
    what: 'the shaft seat',
    with: { seat: { is: 'shaft' }, size: { value: 'nominalBore' }, ringClass: { value: 'classUsed' } },
  },
  {
    ...found,
    to: 'bearing-fit',
    what: 'the housing seat',
    with: { seat: { is: 'housing' }, size: { value: 'nominalOutside' }, ringClass: { value: 'classUsed' } },
  },
  {
    ...found,
    to: 'running-clearance',
    what: 'the bearing',
    with: { bore: { value: 'nominalBore' }, outside: { value: 'nominalOutside' }, group: { value: 'groupUsed' } },
  },
  { ...found, to: 'bearing-life', what: 'the bearing', with: { rating: { is: 'own' }, pitch: { value: 'pitch' } } },
];
// What was measured is for the caliper to say; the plate knows the number.
export const plate = { designation: 'bearing' };
export const example = { known: 'readings', bore: '25.02 mm', outside: '51.97 mm', width: '15.0 mm' };
