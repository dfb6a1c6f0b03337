/** While it is open: change the healthy neighbour now or later, and mend or replace the failed part. */
import type { Part } from '../../contract/part.ts';
import * as all from './formulas.ts';

export { fields } from './fields.ts';
export { compute } from './compute.ts';
export { blocks } from './blocks.ts';
export { words } from './words.ts';
export { costOfChangingNow, costOfLeaving, costOfMending, ageToChange, wearToReplace } from './costs.ts';

export const title = 'Change it while it is open?';
export const formulas = Object.values(all);
export const sources = ['arithmetic', 'weibull-conditional', 'hasidi-kalech-2021'];
export const hazards = ['unexpected-start'];

const law = ['lifeAs', 'mean', 'scale', 'shape'];
const life = [...law, 'horizon', 'reopenMinutes', 'labourRate', 'stopCost'];
export const decides = {
  verdict: ['partCost', 'age', ...life],
  mendVerdict: ['mend', 'replaceCost', 'mendCost', 'mendWear', ...life],
  ageToChange: ['partCost', ...life],
  shapeNote: ['shape'],
};
export const parts: readonly Part[] = [
  { gives: ['remaining'], from: ['age', ...law] },
  { gives: ['newFails'], from: [...law, 'horizon'] },
  { gives: ['oldFails'], from: ['age', ...law, 'horizon'] },
  { gives: ['costNow', 'ageToChange', 'ageTable'], from: ['partCost', ...life] },
  { gives: ['costReplace'], from: ['mend', 'replaceCost', ...life] },
  { gives: ['costMend', 'wearToReplace'], from: ['mend', 'replaceCost', 'mendCost', 'mendWear', ...life] },
];
/** A part whose life is known may be worth replacing by the clock. */
export const carries = [
  {
    to: 'service-interval',
    what: 'the life of the part and its price',
    when: { field: 'lifeAs', is: ['scale'] },
    with: {
      replace: { is: true },
      lifeFrom: { is: 'typed' },
      shape: { field: 'shape' },
      scale: { field: 'scale' },
      planned: { field: 'partCost' },
    },
  },
] as const;
export const example = {
  partCost: 38,
  age: '200 h',
  lifeAs: 'mean',
  mean: '350 h',
  horizon: '200 h',
  reopenMinutes: 40,
  mend: true,
};
