/** Bearing fit: a ring on its shaft or in its housing, from limits or from the micrometer. */
import * as all from './formulas.ts';

export { fields } from './fields.ts';
export { compute } from './compute.ts';
export { blocks } from './blocks.ts';
export { words } from './words.ts';
export { recommend, type Advice, type HousingKind, type Load, type Situation, type Turning } from './recommend.ts';
export { isFor, ringFit, type RingFit, type Seat } from './ring-fit.ts';
export { measuredInterference, seatForm, type Reading, type SeatForm } from './readings.ts';

export const title = 'Bearing fit';
export const formulas = Object.values(all);
export const sources = [
  'iso-286-1',
  'iso-492',
  'iso-492-memory',
  'abma-7',
  'abma-7-memory',
  'arithmetic',
  'boresi-schmidt',
  'callister-expansion',
  'materials-memory',
  'bearing-steel-expansion',
  'army-tm-bearing-heating',
  'sealed-bearing-heat',
  'housing-heating',
  'common-practice',
];
export const hazards = ['heating-housings', 'magnesium', 'press-force', 'hot-parts'];
export const example = {
  seat: 'housing',
  size: '52 mm',
  zone: 'N7',
  ringClass: 'Normal',
  basis: 'limits',
  material: 'aluminium-die-cast',
};
