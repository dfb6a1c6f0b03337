/** Water, time and slurry of a wet cut. */
import type { Part } from '../../contract/part.ts';
import * as all from './formulas.ts';

export { fields } from './fields.ts';
export { compute, leastFlow } from './compute.ts';
export { blocks } from './blocks.ts';
export { words } from './words.ts';
export { flowOf, passes, stoneOf } from './cut.ts';

export const title = 'Water and slurry';
export const formulas = Object.values(all);
export const sources = [
  'water-cut-arithmetic',
  'hse-water-flow',
  'osha-1926-1153',
  'thorpe-1999',
  'slurry-ph',
  'rcra-261-22',
  'ea-rps-235',
  'arithmetic',
];
export const hazards = ['silica-dust', 'slurry-burns', 'slurry-discharge'];
const pace = ['length', 'depth', 'paceFrom', 'timedLength', 'timedDepth', 'timedFor', 'feed', 'step', 'rate'];
const flow = ['flowFrom', 'jug', 'jugFor', 'flow'];
const stone = ['length', 'depth', 'width'];
export const decides = {
  verdict: ['flowFrom', 'jug', 'jugFor', 'flow', 'manual'],
  fading: ['supply'],
  disposal: [],
  check: [],
};
export const parts: readonly Part[] = [
  { gives: ['time'], from: [...pace, ...flow] },
  { gives: ['flow'], from: flow },
  { gives: ['stone'], from: stone },
  { gives: ['water'], from: [...pace, ...flow] },
  { gives: ['fillLasts'], from: [...flow, 'supply', 'tank'] },
  { gives: ['fills'], from: [...pace, ...flow, 'supply', 'tank'] },
  { gives: ['slurry'], from: [...pace, ...flow, ...stone] },
  { gives: ['collect'], from: [...pace, ...flow, ...stone, 'lost'] },
  { gives: ['mass'], from: [...pace, ...flow, ...stone, 'lost', 'density'] },
];
export const plate = { tank: 'waterTank' };
export const example = {
  length: '12 m',
  depth: '100 mm',
  width: '4 mm',
  paceFrom: 'timed',
  timedLength: '1 m',
  timedDepth: '100 mm',
  timedFor: '3 min',
  flowFrom: 'jug',
  jug: '1 L',
  jugFor: '100 s',
  supply: 'bottle',
  tank: '10 L',
};
