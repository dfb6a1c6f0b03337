/** A day's noise by the 5 dB and the 3 dB rule, what protectors leave of it, and the helper's distance. */
import type { Part } from '../../contract/part.ts';
import * as all from './formulas.ts';

export { fields } from './fields.ts';
export { compute } from './compute.ts';
export { blocks } from './blocks.ts';
export { words } from './words.ts';
export { allowedTime, dailyLevel, dose, niosh, osha, oshaLimit } from './dose.ts';
export { tableDose, tableTime } from './osha-table.ts';
export { levelAt } from './distance.ts';

export const title = 'Noise of the day';
export const formulas = Object.values(all);
export const sources = [
  'osha-1910-95',
  'middendorf-1983',
  'niosh-98-126',
  'directive-2003-10-ec',
  'osha-nrr-field',
  'niosh-derating',
  'hse-protectors',
  'hse-weekly-noise',
  'nr-15-anexo-1',
  'inverse-square',
];
export const hazards = ['noise'];
const protection = ['protector', 'nrr', 'derating', 'second', 'snr', 'high', 'middle', 'low', 'cMinusA'] as const;
export const decides = {
  niosh: ['periods', 'next'],
  osha: ['periods'],
  europe: ['periods', ...protection],
  protectors: ['periods', ...protection],
  ceiling: ['periods'],
  check: [],
};
export const parts: readonly Part[] = [
  {
    gives: ['nioshDose', 'oshaDose', 'oshaLimitDose', 'oshaTableDose', 'lex', 'points', 'oshaTwa', 'nioshTwa'],
    from: ['periods'],
  },
  { gives: ['nioshLeft', 'oshaLeft', 'upperLeft', 'limitLeft'], from: ['periods', 'next'] },
  { gives: ['reduction'], from: protection },
  { gives: ['each', 'nioshDoseAtEar', 'lexAtEar', 'atEar', 'nioshTwaAtEar'], from: ['periods', ...protection] },
  { gives: ['helperLevel', 'helperTime', 'helperDistance'], from: ['periods', 'readAt', 'away'] },
];
export const example = {
  periods: [
    { what: 'Cut-off saw, concrete', level: 103, time: '40 min', worn: true },
    { what: 'Breaker', level: 98, time: '30 min', worn: true },
    { what: 'Other work', level: 78, time: '360 min', worn: false },
  ],
  next: 103,
  protector: 'nrr',
  nrr: 27,
  derating: 'half',
};
