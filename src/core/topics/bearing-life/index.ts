/** Bearing life: hours by load and speed, and what clean running is worth. */
import type { Part } from '../../contract/part.ts';
import type { PlateMap } from '../../contract/plate.ts';
import * as all from './formulas.ts';

export { fields } from './fields.ts';
export { compute } from './compute.ts';
export { blocks } from './blocks.ts';
export { words } from './words.ts';
export {
  basicLife,
  basicRevolutions,
  branchOf,
  fatigueLimit,
  lifeExponents,
  lifeFactor,
  ratingNeeded,
  referenceViscosity,
  type Rolling,
} from './life.ts';
export { cleanliness, levels, type Level } from './contamination.ts';
export { equivalentLoad, loadFactors, type Factors } from './equivalent.ts';
export { ratingForReliability, reliabilityOf } from './reliability.ts';
export { ratingOf, ratings } from './ratings.ts';

export const title = 'Bearing life';
export const formulas = Object.values(all);
export const sources = [
  'iso-281',
  'iso-281-memory',
  'iso-281-contamination',
  'shigley-ratings',
  'arithmetic',
  'common-practice',
];
export const hazards: readonly string[] = [];
const loading = [
  'rating',
  'bore',
  'dynamicRating',
  'staticRating',
  'pitch',
  'belt',
  'share',
  'axial',
  'outerTurns',
] as const;
export const decides = {
  worth: [...loading, 'speed', 'viscosity', 'dirt'],
  loadVerdict: loading,
  wear: [...loading, 'dirt'],
};
export const parts: readonly Part[] = [
  { gives: ['dynamic'], from: ['rating', 'bore', 'dynamicRating'] },
  { gives: ['static'], from: ['rating', 'bore', 'staticRating'] },
  { gives: ['load'], from: loading },
  { gives: ['kappa'], from: ['rating', 'bore', 'pitch', 'speed', 'viscosity'] },
  { gives: ['basicLife'], from: [...loading, 'speed'] },
  { gives: ['life', 'sealedLife', 'byDirt'], from: [...loading, 'speed', 'viscosity', 'dirt'] },
];
// A ring's own speed is not that of its bearings.
export const plate: PlateMap = { speed: { fact: 'spindleSpeed', only: { bladeTurnedBy: 'pulleys' } } };
export const example = { rating: 'textbook', bore: '25', belt: '900 N', speed: '4500 rpm', dirt: 'severe' };
