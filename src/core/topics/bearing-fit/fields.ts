import { defineFields, type InputsOf } from '../../contract/field.ts';
import { zonePattern } from '../limits-fits/index.ts';
import { housingMaterials } from '../../materials/index.ts';

const mm = ['mm', 'in'] as const;
const micro = ['µm', 'thou'] as const;
const degrees = ['°C', '°F'] as const;
const reading = <const K extends string>(key: K, label: string) =>
  ({ key, label, kind: 'quantity', dimension: 'length', units: mm, min: 2, max: 510 }) as const;
const loads = 'Turning load';

export const fields = defineFields([
  {
    key: 'seat',
    label: 'Seat',
    kind: 'choice',
    default: 'housing',
    options: [
      { value: 'shaft', label: 'Shaft (inner ring)' },
      { value: 'housing', label: 'Housing (outer ring)' },
    ],
  },
  {
    key: 'size',
    label: 'Seat size',
    kind: 'quantity',
    dimension: 'length',
    units: mm,
    min: 2.5,
    max: 500,
    limitFrom: 'iso-492',
    help: "The bearing's bore for a shaft, its outside diameter for a housing.",
  },
  {
    key: 'zone',
    label: 'Tolerance zone of the seat',
    kind: 'text',
    ...zonePattern,
    help: 'Small letter for a shaft (k5), capital for a housing (N7). From the drawing, or from the advice below.',
  },
  {
    key: 'ringClass',
    label: 'Bearing class',
    kind: 'choice',
    default: 'Normal',
    options: [
      { value: 'Normal', label: 'Normal (none marked)' },
      { value: 'P6', label: 'P6' },
      { value: 'P5', label: 'P5' },
    ],
  },
  {
    key: 'basis',
    label: 'Work from',
    kind: 'choice',
    default: 'limits',
    options: [
      { value: 'limits', label: 'The limits of the zone' },
      { value: 'readings', label: 'My micrometer readings of the seat' },
    ],
  },
  {
    key: 'readings',
    label: 'Readings of the seat',
    kind: 'rows',
    minRows: 1,
    maxRows: 12,
    when: { field: 'basis', is: ['readings'] },
    help: 'One row for each place along the seat: near the shoulder, middle, near the edge.',
    columns: defineFields([reading('across', 'Across'), reading('quarter', 'A quarter turn round')]),
  },
  {
    ...reading('ring', 'Bearing ring, measured'),
    optional: true,
    more: true,
    when: { field: 'basis', is: ['readings'] },
    help: 'Leave empty to use the limits of the class.',
  },
  {
    key: 'material',
    label: 'Housing material',
    kind: 'choice',
    default: 'aluminium-die-cast',
    options: housingMaterials,
    when: { field: 'seat', is: ['housing'] },
  },
  {
    key: 'sealed',
    label: 'Sealed or greased bearing',
    kind: 'yes-no',
    default: true,
    when: { field: 'seat', is: ['shaft'] },
  },
  {
    key: 'turning',
    label: 'Ring that turns against the load',
    kind: 'choice',
    default: 'inner',
    group: loads,
    options: [
      { value: 'inner', label: 'Inner: the shaft turns, the pull stays' },
      { value: 'outer', label: 'Outer: the hub turns, the shaft stands still' },
      { value: 'unclear', label: 'Changes, or out of balance' },
    ],
  },
  {
    key: 'load',
    label: 'Size of the load',
    kind: 'choice',
    default: 'normal',
    group: loads,
    options: [
      { value: 'light', label: 'Light, to 7.5 % of the load rating' },
      { value: 'normal', label: 'Normal, to 15 %' },
      { value: 'heavy', label: 'Heavy or shock' },
    ],
    limitFrom: 'abma-7; the 15 % from memory',
  },
  {
    key: 'housing',
    label: 'Kind of housing',
    kind: 'choice',
    default: 'solid',
    group: loads,
    when: { field: 'seat', is: ['housing'] },
    options: [
      { value: 'solid', label: 'One piece' },
      { value: 'split', label: 'Split through the bore' },
      { value: 'thin', label: 'One piece, thin wall' },
      { value: 'hot-shaft', label: 'Heat comes in through the shaft' },
    ],
  },
  { key: 'slides', label: 'Ring must slide along its seat', kind: 'yes-no', default: false, group: loads, more: true },
  {
    key: 'room',
    label: 'Room temperature',
    kind: 'quantity',
    dimension: 'temperature',
    units: degrees,
    default: 20,
    min: -20,
    max: 50,
    more: true,
  },
  {
    key: 'gap',
    label: 'Gap wanted for dropping in',
    kind: 'quantity',
    dimension: 'length',
    units: micro,
    default: 20,
    min: 0,
    max: 200,
    more: true,
    limitFrom: 'common-practice',
  },
  {
    key: 'runningRise',
    label: 'Housing warms in use by',
    kind: 'quantity',
    dimension: 'temperature-difference',
    units: ['°C diff', '°F diff'],
    default: 50,
    min: 0,
    max: 150,
    more: true,
    when: { field: 'seat', is: ['housing'] },
  },
]);

export type FitInputs = InputsOf<typeof fields>;
