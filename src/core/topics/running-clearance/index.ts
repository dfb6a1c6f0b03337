/** Running clearance: what the fits and the heat leave of a bearing's clearance. */
import type { Carry } from '../../contract/carry.ts';
import type { Part } from '../../contract/part.ts';
import * as all from './formulas.ts';

export { fields } from './fields.ts';
export { compute } from './compute.ts';
export { blocks } from './blocks.ts';
export { words } from './words.ts';
export {
  countedShare,
  heatLoss,
  innerGrowth,
  outerShrink,
  racewayGuess,
  type RingJoint,
  type Surface,
} from './loss.ts';
export { lossesAt, totalOf, type Loss, type Setting } from './residual.ts';

export const title = 'Running clearance';
export const formulas = Object.values(all);
export const sources = [
  'iso-5753-1',
  'iso-5753-1-memory',
  'shigley-press-fits',
  'arithmetic',
  'raceway-rule',
  'fit-smoothing-memory',
  'common-practice',
];
export const hazards: readonly string[] = [];
const [shaft, housing] = [
  ['bore', 'outside', 'innerRaceway', 'shaftBore', 'shaftMaterial', 'shaftLeast', 'shaftMost'],
  ['housingLeast', 'housingMost', 'housingMaterial', 'housingOutside', 'housingRise', 'surface'],
];
export const decides = {
  verdict: [...shaft, ...housing, 'outerRaceway', 'group', 'difference'],
  housingLoose: ['outside', ...housing],
};
export const parts: readonly Part[] = [
  { gives: ['start'], from: ['bore', 'group'] },
  { gives: ['pitch'], from: ['bore', 'outside'] },
  { gives: ['heatLoss'], from: ['bore', 'outside', 'difference'] },
  { gives: ['innerLoss'], from: [...shaft, 'surface'] },
  { gives: ['outerLoss'], from: ['bore', 'outside', 'outerRaceway', ...housing] },
  { gives: ['warmHousing'], from: ['outside', ...housing] },
  { gives: ['groupNeeded', 'groups'], from: [...shaft, ...housing, 'outerRaceway', 'difference'] },
  { gives: ['left', 'coldLeast'], from: [...shaft, ...housing, 'outerRaceway', 'group', 'difference'] },
];
export const carries: readonly Carry[] = [
  { to: 'bearing-life', what: 'the bearing', with: { rating: { is: 'own' }, pitch: { value: 'pitch' } } },
];
export const plate = {
  bore: 'shaftSeat',
  outside: 'housingSeat',
  shaftMaterial: 'shaftMaterial',
  housingMaterial: 'housingMaterial',
};
export const example = {
  bore: '25 mm',
  outside: '52 mm',
  group: 'CN',
  shaftLeast: '2 µm',
  shaftMost: '21 µm',
  housingLeast: '-4 µm',
  housingMost: '39 µm',
  housingMaterial: 'aluminium-die-cast',
  housingOutside: '80 mm',
  difference: 10,
  housingRise: 40,
};
