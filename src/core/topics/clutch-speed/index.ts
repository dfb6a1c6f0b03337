/** Clutch speed: when the shoes reach the drum, against idle and running speed. */
import type { Part } from '../../contract/part.ts';
import * as all from './formulas.ts';

export { fields } from './fields.ts';
export { compute, idleMarginWanted } from './compute.ts';
export { blocks } from './blocks.ts';
export { words } from './words.ts';
export { engagement, gripSpeed, heldTorque, lining, shoeAtDrum, shoeForce, shoeMassFor, type Shoe } from './shoes.ts';

export const title = 'Clutch engagement';
export const formulas = Object.values(all);
export const sources = ['khurmi-clutch', 'bhandari-elements', 'clutch-idle-margin', 'arithmetic'];
export const hazards = ['blade-turns-at-idle', 'unexpected-start'];
export const plate = {
  idle: 'idle',
  engages: 'clutchEngages',
  // Where it gives its power: the drum must carry most there.
  running: 'powerSpeed',
  power: 'power',
  drum: 'clutchDrum',
};
export const example = { observed: 'stands', idle: '2700 rpm', known: 'speed', engages: '3800 rpm' };
const clutch = ['known', 'engages', 'mass', 'radius', 'gap', 'spring', 'rate'];
export const decides = {
  observedVerdict: ['observed'],
  verdict: ['observed', 'idle', ...clutch],
  weakVerdict: ['idle', 'weak', ...clutch],
  gripVerdict: ['known', 'mass', 'radius', 'gap', 'spring', 'rate', 'shoes', 'friction', 'drum', 'running', 'power'],
};
export const parts: readonly Part[] = [
  { gives: ['engagement', 'highestIdle'], from: clutch },
  { gives: ['margin'], from: [...clutch, 'idle'] },
  { gives: ['weakEngagement'], from: [...clutch, 'weak'] },
  { gives: ['needed'], from: ['known', 'running', 'power'] },
  { gives: ['grip', 'held'], from: [...clutch, 'shoes', 'friction', 'drum', 'running', 'power'] },
];
