/** Limits and fits: ISO 286 tolerance zones from 0 to 3150 mm. */
import type { Carry } from '../../contract/carry.ts';
import type { Part } from '../../contract/part.ts';
import * as all from './formulas.ts';

export { fields, sizeField, zonePattern } from './fields.ts';
export { compute } from './compute.ts';
export { blocks } from './blocks.ts';
export { words, zoneProblems } from './words.ts';
export { explainLimits, limitsAt, roundedHalf, type Explained, type Limits } from './limits.ts';
export { nearestZones, whyRefused } from './refusal.ts';
export { deltaAt, deviationAt, toleranceAt } from './deviation.ts';
export { fitOf, housingSeats, kindOfFit, shaftSeats, type Fit, type FitKind } from './fit.ts';
export { endOfFirstRange, largestSize, stepEnds, stepIndex } from './steps.ts';
export { grades } from './tables/it-grades.ts';
export { halfFor, letters, readZone, zonePair, type Zone, type ZonePair } from './zone.ts';

export const title = 'Limits and fits';
export const formulas = Object.values(all);
export const sources = ['iso-286-1'];
export const hazards: readonly string[] = [];
export const decides = { fitKind: ['size', 'zone', 'mate', 'halves'] };
export const parts: readonly Part[] = [
  { gives: ['stepRange'], from: ['size'] },
  { gives: ['zoneName'], from: ['zone', 'mate'] },
];
export const carries: readonly Carry[] = [
  {
    to: 'press-fit',
    what: 'the fit',
    with: {
      diameter: { field: 'size' },
      least: { value: 'interference', end: 'low' },
      most: { value: 'interference', end: 'high' },
    },
  },
];
export const example = { size: '52 mm', zone: 'N7', mate: 'h6' };
