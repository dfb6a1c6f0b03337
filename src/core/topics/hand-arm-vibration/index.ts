/** A day's hand-arm vibration of several tools against the action value and the limit. */
import type { Part } from '../../contract/part.ts';
import * as all from './formulas.ts';

export { fields } from './fields.ts';
export { compute } from './compute.ts';
export { blocks } from './blocks.ts';
export { words } from './words.ts';
export { actionPoints, daily, limitPoints, points, timeLeft } from './exposure.ts';

export const title = 'Hand-arm vibration';
export const formulas = Object.values(all);
export const sources = [
  'eu-2002-44',
  'hse-vibration-points',
  'hse-oc-246-31',
  'hse-double-declared',
  'iso-5349-1',
  'iso-5349-1-annex-c',
  'en-12096',
];
export const hazards = ['hand-arm-vibration'];
export const decides = { verdict: ['tools', 'allow', 'next'], check: [] };
export const parts: readonly Part[] = [
  { gives: ['day', 'points', 'each'], from: ['tools', 'allow'] },
  { gives: ['actionLeft', 'limitLeft'], from: ['tools', 'allow', 'next'] },
];
export const example = {
  tools: [
    { what: 'Cut-off saw', value: 5, from: 'declared', uncertainty: 2, time: '45 min' },
    { what: 'Breaker', value: 12, from: 'measured', time: '10 min' },
    { what: 'Angle grinder', value: 4, from: 'declared', time: '20 min' },
  ],
  allow: 'uncertainty',
  next: 7,
};
