import { defineFields } from '../../contract/field.ts';

const mm = ['mm', 'in'] as const;

export const fields = defineFields([
  { key: 'known', label: 'What is known', kind: 'choice', default: 'readings', options: [{ value: 'readings', label: 'Caliper readings' }, { value: 'designation', label: 'The number on the ring' }] },
  { key: 'bore', label: 'Bore', kind: 'quantity', dimension: 'length', units: mm, min: 1, max: 200, when: { field: 'known', is: ['readings'] }, help: 'The hole in the inner ring.' },
  { key: 'outside', label: 'Outside diameter', kind: 'quantity', dimension: 'length', units: mm, min: 2, max: 400, when: { field: 'known', is: ['readings'] } },
  { key: 'width', label: 'Width', kind: 'quantity', dimension: 'length', units: mm, min: 1, max: 100, when: { field: 'known', is: ['readings'] }, help: 'Across the faces of the outer ring.' },
  { key: 'allow', label: 'Difference accepted for wear and caliper', kind: 'quantity', dimension: 'length', units: mm, default: 0.3, min: 0.01, max: 2, more: true, when: { field: 'known', is: ['readings'] }, limitFrom: 'common-practice' },
  { key: 'designation', label: 'Number on the ring, digits only', kind: 'text', pattern: '\\d{4,5}', patternSays: 'four or five digits, like 6205; leave off letters, dashes and what follows them', maxLength: 30, when: { field: 'known', is: ['designation'] } },
  { key: 'ringClass', label: 'Tolerance class', kind: 'choice', default: 'Normal', options: [{ value: 'Normal', label: 'Normal (none marked)' }, { value: 'P6', label: 'P6' }, { value: 'P5', label: 'P5' }], more: true },
  { key: 'group', label: 'Clearance group', kind: 'choice', default: 'CN', options: [{ value: 'C2', label: 'C2, small' }, { value: 'CN', label: 'Normal (none marked)' }, { value: 'C3', label: 'C3, large' }, { value: 'C4', label: 'C4, larger' }] },
]);
