/** While it is open: change the healthy neighbour now or later, and mend or replace the failed part. */
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
export const example = {
  partCost: 38,
  age: '200 h',
  lifeAs: 'mean',
  mean: '350 h',
  horizon: '200 h',
  reopenMinutes: 40,
  mend: true,
};
