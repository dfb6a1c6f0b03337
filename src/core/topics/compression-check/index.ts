/** Compression check: a gauge reading against a healthy one, with the height taken out. */
import * as all from './formulas.ts';

export { fields } from './fields.ts';
export { compressionBands, compute } from './compute.ts';
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

export const title = 'Compression check';
export const formulas = Object.values(all);
export const sources = [
  'us-std-atm-1976',
  'gauge-altitude',
  'gupta-carburettor',
  'keswani-engines',
  'common-practice',
  'arithmetic',
];
export const hazards = ['compression-test-spark', 'unexpected-start'];
export const example = { reading: '7.6 bar', healthy: '10 bar', height: '1500 m', first: '3 bar', oiled: '9.2 bar' };
