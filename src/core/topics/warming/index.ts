/** Warming: how hot to make a housing or a bearing so that it drops in, and how long that lasts. */
import type { Carry } from '../../contract/carry.ts';
import type { Part } from '../../contract/part.ts';
import * as all from './formulas.ts';

export { fields } from './fields.ts';
export { compute } from './compute.ts';
export { blocks } from './blocks.ts';
export { ceilingWords, words } from './words.ts';
export {
  ceilings,
  ceilingSlack,
  ceilingVerdict,
  slidesByHand,
  housingCeiling,
  isPast,
  ringCeiling,
  type Ceiling,
  warmLabel,
  worthWarming,
} from './ceilings.ts';
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
export const hazards = ['heating-housings', 'heating-bearings', 'magnesium', 'hot-parts', 'cold-parts'];
const fit = ['part', 'diameter', 'interference', 'housingMaterial', 'shaftMaterial', 'room', 'gap'] as const;
export const decides = {
  warmVerdict: [...fit, 'sealed'],
  coldVerdict: [...fit, 'cold', 'sealed'],
  heatTo: [...fit, 'sealed', 'heatTo'],
  openVerdict: [...fit, 'heatTo', 'wall'],
  measuring: [...fit, 'heatTo'],
};
export const parts: readonly Part[] = [
  { gives: ['ceiling'], from: ['part', 'housingMaterial', 'sealed'] },
  { gives: ['rise', 'coldAlone', 'byMaterial'], from: fit },
  { gives: ['gapThere'], from: [...fit, 'heatTo'] },
  { gives: ['temperature'], from: [...fit, 'sealed'] },
  { gives: ['both'], from: [...fit, 'sealed', 'cold'] },
  { gives: ['openTime'], from: [...fit, 'heatTo', 'wall'] },
];
export const carries: readonly Carry[] = [
  {
    to: 'press-fit',
    what: 'the seat, to press it where warming is not enough',
    when: { field: 'part', is: ['housing'] },
    with: {
      diameter: { field: 'diameter' },
      most: { field: 'interference' },
      hub: { field: 'housingMaterial' },
      shaft: { is: 'bearing-steel' },
    },
  },
];
export const plate = { housingMaterial: 'housingMaterial', shaftMaterial: 'shaftMaterial' };
export const example = {
  part: 'housing',
  diameter: '52 mm',
  interference: '39 µm',
  housingMaterial: 'aluminium-die-cast',
  sealed: 'yes',
};
