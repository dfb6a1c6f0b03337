import { defineFields } from '../../contract/field.ts';
import { levels } from './contamination.ts';
import { ratings } from './ratings.ts';

const force = ['N', 'lbf'] as const;
const option = <const V extends string>(value: V, label: string) => ({ value, label });

export const fields = defineFields([
  { key: 'rating', label: 'Load rating', kind: 'choice', default: 'textbook', options: [option('textbook', 'Textbook table for series 62'), option('own', 'I have the bearing\'s own figures')] },
  { key: 'bore', label: 'Bore', kind: 'choice', default: '25', when: { field: 'rating', is: ['textbook'] }, options: ratings.map(([d]) => ({ value: String(d), label: `${d} mm` })) },
  { key: 'dynamicRating', label: 'Dynamic load rating C', kind: 'quantity', dimension: 'force', units: ['kN', 'lbf'], min: 0.1, max: 2000, when: { field: 'rating', is: ['own'] } },
  { key: 'staticRating', label: 'Static load rating C₀', kind: 'quantity', dimension: 'force', units: ['kN', 'lbf'], min: 0.05, max: 3000, when: { field: 'rating', is: ['own'] } },
  { key: 'pitch', label: 'Mean diameter of the bearing', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], min: 5, max: 1000, when: { field: 'rating', is: ['own'] }, help: 'Half of bore plus outside diameter.' },
  { key: 'belt', label: 'Pull of the belts on the shaft', kind: 'quantity', dimension: 'force', units: force, min: 1, max: 1e6, help: 'The shaft load the belt tension calculator gives.' },
  { key: 'share', label: 'Share this bearing carries', kind: 'quantity', dimension: 'ratio', units: ['%', '%'], default: 100, min: 1, max: 300, more: true, help: 'With the pulley outside the two bearings, the near one carries more than all of it.' },
  { key: 'axial', label: 'Push along the shaft', kind: 'quantity', dimension: 'force', units: force, default: 0, min: 0, max: 1e6, more: true },
  { key: 'speed', label: 'Speed', kind: 'quantity', dimension: 'rotation', units: ['rpm', 'rpm'], min: 10, max: 30000 },
  { key: 'outerTurns', label: 'The outer ring turns', kind: 'yes-no', default: false, more: true },
  { key: 'dirt', label: 'What gets in', kind: 'choice', default: 'severe', options: levels.map(({ value, label }) => ({ value, label })) },
  { key: 'viscosity', label: 'Viscosity of the oil in the grease, at running temperature', kind: 'quantity', dimension: 'viscosity', units: ['mm2/s', 'mm2/s'], default: 25, min: 0.5, max: 2000, more: true, limitFrom: 'common-practice', help: 'A usual bearing grease: about 100 at 40 °C, 25 at 75 °C.' },
]);
