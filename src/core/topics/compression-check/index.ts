/** Compression check: a gauge reading against a healthy one, with the height taken out. */
import type { Part } from '../../contract/part.ts';
import type { PlateMap } from '../../contract/plate.ts';
import * as all from './formulas.ts';

export { fields } from './fields.ts';
export { compressionBands, compute, slowStart } from './compute.ts';
export { blocks } from './blocks.ts';
export { words } from './words.ts';
export {
  densityRatio,
  gasDensityRatio,
  gaugeElsewhere,
  mixtureElsewhere,
  standardPressure,
  standardTemperature,
} from './air.ts';
export { hoseVolume, readingThroughHose } from './hose.ts';
export { chamberVolume, oilShareMost, readingWithOil, wetModel } from './wet-test.ts';
export { airTaken, leakFlow, timeForTenth } from './leak.ts';
export { doubtfulTenth, pumpedMost, shortWatch, tightTenth } from './leak-values.ts';
export { boreWearMost, gapButts, gapClosed, gapGrowth, ringGapShare, widestGap } from './ring-gap.ts';
export { gaugeRepeat, riseWanted } from './wet-values.ts';

export const title = 'Compression check';
export const formulas = Object.values(all);
export const sources = [
  'us-std-atm-1976',
  'gauge-altitude',
  'gupta-carburettor',
  'keswani-engines',
  'wet-test-model',
  'army-tm-small-two-stroke',
  'common-practice',
  'arithmetic',
];
export const hazards = ['compression-test-spark', 'unexpected-start', 'oil-lock'];
export const plate: PlateMap = {
  healthy: 'healthyPressure',
  // The box asks for one cylinder: two-stroke saws have one (common practice, no source), other engines may have two.
  swept: { fact: 'displacement', only: { stroke: 'two' } },
};
export const example = { reading: '7.6 bar', healthy: '10 bar', height: '1500 m' };
const air = ['height', 'barometer'];
const judged = ['reading', 'healthy', ...air];
const pumping = ['leak', 'pumped', 'lost', 'watched'];
const oiling = ['reading', ...air, 'wet', 'swept', 'oil', 'oiled'];
export const decides = {
  verdict: judged,
  firstVerdict: [...judged, 'first'],
  leakVerdict: pumping,
  ringVerdict: ['ring', 'bore', 'gap'],
  oilVerdict: oiling,
};
export const parts: readonly Part[] = [
  { gives: ['air', 'power', 'richer'], from: air },
  { gives: ['expected'], from: ['healthy', ...air] },
  { gives: ['atSea'], from: ['reading', ...air] },
  { gives: ['oilMost'], from: ['wet', 'swept'] },
  { gives: ['rise'], from: ['reading', 'wet', 'swept', 'oil', 'oiled'] },
  { gives: ['chamber', 'oilAlone', 'beyond'], from: oiling },
  { gives: ['tenth'], from: pumping },
  { gives: ['flow'], from: [...pumping, 'space', ...air] },
];
