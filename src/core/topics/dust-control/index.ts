/** What the rules ask of dusty work, and what measured air means. */
import type { Part } from '../../contract/part.ts';
import * as all from './formulas.ts';
import { silicaLimit } from '../../exposure/index.ts';
import { places } from './fields.ts';

export { fields } from './fields.ts';
export { compute } from './compute.ts';
export { blocks } from './blocks.ts';
export { words } from './words.ts';
export {
  controlTable,
  factorAsked,
  isDryCut,
  fourHours,
  tasks,
  type Control,
  type Place,
  type TableRow,
  type Task,
} from './control-table.ts';

export const title = 'Dust, water and mask';
export const formulas = Object.values(all);
export const sources = [
  ...new Set([
    ...places.map((p) => silicaLimit(p).source),
    'osha-1926-1153',
    'osha-1926-1153-grinders',
    'wac-296-840-110',
    'osha-enclosed-area',
    'osha-1910-134',
    'osha-1910-1000-d',
    'osha-technical-manual-silica',
    'osha-extended-shift',
    'brief-scala',
    'niosh-96-101',
    'hse-kerbs',
    'shepherd-woskie-2013',
    'thorpe-1999',
    'cpwr-walk-behind',
    'hsg53',
    'hsg53-full-masks',
    'nr-15-anexo-12',
    'ds-594-chile',
  ]),
];
export const hazards = ['silica-dust', 'carbon-monoxide'];
const measured = ['rule', 'way', 'spells', 'shift', 'unsampled'] as const;
export const decides = {
  verdict: ['rule', 'way', 'work', 'regular', 'spells', 'shift', 'unsampled'],
  place: ['way', 'work'],
  longShift: measured,
  mask: measured,
  filter: ['rule', 'way', 'work', 'spells', 'shift', 'unsampled', 'oil', 'filterTime'],
  check: ['rule'],
};
export const parts: readonly Part[] = [
  { gives: ['limit', 'law'], from: ['rule', 'way'] },
  { gives: ['hours'], from: ['way', 'work'] },
  { gives: ['each'], from: ['rule', 'way', 'work', 'regular'] },
  { gives: ['factor'], from: ['rule', 'way', 'work', 'regular', 'spells'] },
  { gives: ['average', 'ratio', 'whole', 'worst', 'most', 'alone'], from: measured },
];
export const example = {
  rule: 'us-construction',
  way: 'table',
  work: [
    { task: 'hand-held-saw', control: 'water', place: 'outdoors', power: 'engine', time: '2.5 h' },
    { task: 'breaker', control: 'water', place: 'outdoors', power: 'other', time: '2 h' },
  ],
};
