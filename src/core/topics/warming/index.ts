/** Warming: how hot to make a housing or a bearing so that it drops in, and how long that lasts. */
import * as all from './formulas.ts';

export { fields } from './fields.ts';
export { compute } from './compute.ts';
export { blocks } from './blocks.ts';
export { ceilingWords, words } from './words.ts';
export { ceilings, ceilingVerdict, housingCeiling, ringCeiling, type Ceiling, warmLabel } from './ceilings.ts';
export { airCooling, coolingTime } from './cooling-time.ts';

export const title = 'Warming a housing or a bearing';
export const formulas = Object.values(all);
export const sources = [
  'boresi-schmidt',
  'arithmetic',
  'lumped-cooling',
  'shigley-a5',
  'callister-expansion',
  'materials-memory',
  'bearing-steel-expansion',
  'light-metal-table',
  'army-tm-bearing-heating',
  'sealed-bearing-heat',
  'housing-heating',
  'common-practice',
];
export const hazards = ['heating-housings', 'magnesium', 'hot-parts', 'cold-parts'];
export const example = {
  part: 'housing',
  diameter: '52 mm',
  interference: '39 µm',
  housingMaterial: 'aluminium-die-cast',
  sealed: 'yes',
};
