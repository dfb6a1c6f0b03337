import { defineFields } from '../../contract/field.ts';

const money = { kind: 'money', min: 0, max: 1e6 } as const;
const hours = { kind: 'quantity', dimension: 'time', units: ['h', 'h'], max: 100000 } as const;
const mending = { field: 'mend', is: [true] } as const;

export const fields = defineFields([
  { key: 'partCost', label: 'Price of the part', kind: 'money', default: 38, min: 0, above: true, max: 1e6, help: 'The neighbor that is still good: belt, second bearing, seal.' },
  { key: 'age', label: 'Hours the part has run', ...hours, default: 200, min: 0 },
  { key: 'lifeAs', label: 'What is known of its life', kind: 'choice', default: 'mean', options: [{ value: 'mean', label: 'Mean life' }, { value: 'scale', label: 'Hours by which 63 % have failed' }] },
  { key: 'mean', label: 'Mean life of such parts', ...hours, default: 350, min: 0, above: true, when: { field: 'lifeAs', is: ['mean'] }, help: 'From the shop’s own job sheets. No table is offered: lives in slurry differ too much.' },
  { key: 'scale', label: 'Hours by which 63 % have failed', ...hours, default: 400, min: 0, above: true, when: { field: 'lifeAs', is: ['scale'] } },
  { key: 'horizon', label: 'Hours it must last from now', ...hours, default: 200, min: 0, above: true, help: 'To the next service, or to the end of the season.' },
  { key: 'reopenMinutes', label: 'Minutes to open the machine again', kind: 'number', default: 40, min: 0, max: 10000 },
  { key: 'labourRate', label: 'Labor rate for an hour', ...money, default: 75, more: true },
  { key: 'stopCost', label: 'What a stop on site costs', ...money, default: 45, more: true, help: 'Transport, hire of another machine, lost work.' },
  { key: 'shape', label: 'Weibull shape', kind: 'number', default: 2, min: 0.3, max: 10, more: true, help: '1: fails by chance, at any age alike. 1 to 4: wears. Above 4: wears out all at about the same age. 2 is an assumption, not a measured figure.' },
  { key: 'mend', label: 'Could the failed part be mended instead of replaced?', kind: 'yes-no', default: false, group: 'Mend or replace', more: true },
  { key: 'replaceCost', label: 'Replacing the failed part costs', kind: 'money', default: 120, min: 0, above: true, max: 1e6, group: 'Mend or replace', more: true, when: mending },
  { key: 'mendCost', label: 'Mending it costs', ...money, default: 45, group: 'Mend or replace', more: true, when: mending },
  { key: 'mendWear', label: 'Once mended it wears this many times as fast as new', kind: 'number', default: 1.7, min: 0.1, max: 100, group: 'Mend or replace', more: true, when: mending },
]);
