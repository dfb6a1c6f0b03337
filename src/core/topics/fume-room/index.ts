/** How fast an engine fills a room with carbon monoxide. Every answer is "do not" or "ventilate and measure". */
import type { Part } from '../../contract/part.ts';
import * as all from './formulas.ts';

export { fields } from './fields.ts';
export { compute, roomOf, strengthOf } from './compute.ts';
export { blocks } from './blocks.ts';
export { words } from './words.ts';
export { concentrationAt, density, timeTo, type Room } from './room.ts';
export { ceiling, handHeldSource, levels } from './levels.ts';

export const title = 'Fumes in a room';
export const formulas = Object.values(all);
export const sources = [
  'arithmetic',
  'well-mixed-room',
  'epa-co-ceilings',
  'co-density',
  'osha-co',
  'directive-2004-37-ec',
  'earnest-1997',
  'niosh-96-118',
  'osha-1910-1000-d',
];
export const hazards = ['carbon-monoxide'];
const room = ['what', 'length', 'width', 'height', 'air', 'changes', 'fan'] as const;
export const decides = { engine: ['what'], verdict: [...room, 'run', 'leak', 'now'], check: [] };
export const parts: readonly Part[] = [
  { gives: ['source'], from: ['what', 'power', 'kind', 'leak'] },
  { gives: ['ceilingTime', 'quarter', 'levels', 'steady'], from: [...room, 'power', 'kind', 'leak'] },
  { gives: ['end'], from: [...room, 'power', 'kind', 'run', 'leak'] },
  { gives: ['volume'], from: ['length', 'width', 'height'] },
  { gives: ['changes'], from: ['length', 'width', 'height', 'air', 'changes', 'fan'] },
];
export const plate = { power: 'power' };
export const example = {
  what: 'engine',
  length: '8 m',
  width: '4.5 m',
  height: '2.5 m',
  air: 'changes',
  changes: 2,
  power: '3.2 kW',
  kind: 'hand-held',
  run: '10 min',
};
