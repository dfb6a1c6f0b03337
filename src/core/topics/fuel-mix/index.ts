/** Fuel mix: oil for gasoline at a ratio, both ways, and how to put a wrong can right. */
import type { Part } from '../../contract/part.ts';
import type { PlateMap } from '../../contract/plate.ts';
import * as all from './formulas.ts';

export { fields } from './fields.ts';
export { compute } from './compute.ts';
export { blocks } from './blocks.ts';
export { words } from './words.ts';
export { correction, fuelForOil, oilForFuel, partsOf, type Parts } from './mix.ts';

export const title = 'Fuel mix';
export const formulas = Object.values(all);
export const sources = ['fuel-mix-arithmetic'];
export const hazards = ['fuel-fire', 'wrong-fuel'];
export const plate: PlateMap = { ratio: { fact: 'mixRatio', only: { stroke: 'two' } } };
export const example = { ratio: '50:1', known: 'fuel', fuel: '5 L' };
const can = ['known', 'can', 'mixedAt'];
export const decides = { verdict: [...can, 'ratio'] };
export const parts: readonly Part[] = [{ gives: ['oilNow', 'fuelNow'], from: can }];
