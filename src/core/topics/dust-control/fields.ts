import { defineFields } from '../../contract/field.ts';
import { silicaLimit, type SilicaPlace } from '../../exposure/index.ts';
import { controlTable, tasks } from './control-table.ts';

const time = { kind: 'quantity', dimension: 'time', units: ['h', 'h'], min: 0, max: 24 } as const;
const table = { field: 'way', is: ['table'] } as const;
const measured = { field: 'way', is: ['measured'] } as const;
const mask = 'Filter';

/** Places whose limit was seen, and is one figure. */
export const places = [
  'us-construction',
  'us-general',
  'gb',
  'eu',
  'es',
  'fr',
  'de',
  'ca-on',
  'ca-qc',
  'au',
  'nz',
  'za',
] as const satisfies readonly SilicaPlace[];

const work = [
  {
    key: 'task',
    label: 'Task',
    kind: 'choice',
    default: 'hand-held-saw',
    options: tasks.map((value) => ({ value, label: controlTable[value].short, help: controlTable[value].what })),
  },
  {
    key: 'control',
    label: 'Dust held down by',
    kind: 'choice',
    default: 'water',
    options: [
      { value: 'water', label: 'Water' },
      { value: 'extraction', label: 'Vacuum, no water' },
      { value: 'none', label: 'Nothing: dry' },
    ],
  },
  {
    key: 'place',
    label: 'Where',
    kind: 'choice',
    default: 'outdoors',
    options: [
      { value: 'outdoors', label: 'Outdoors' },
      { value: 'enclosed', label: 'Indoors, enclosed' },
    ],
  },
  {
    key: 'power',
    label: 'Driven by',
    kind: 'choice',
    default: 'engine',
    options: [
      { value: 'engine', label: 'An engine' },
      { value: 'other', label: 'No engine' },
    ],
  },
  { key: 'time', label: 'Hours', ...time, above: true },
] as const;

const spells = [
  { key: 'what', label: 'Task', kind: 'text', maxLength: 40 },
  {
    key: 'concentration',
    label: 'Silica in the air',
    kind: 'quantity',
    dimension: 'density',
    units: ['mg/m3', 'mg/m3'],
    min: 0,
    max: 1000,
  },
  { key: 'time', label: 'Hours', ...time },
] as const;

export const fields = defineFields([
  {
    key: 'rule',
    label: 'Rules of',
    kind: 'choice',
    default: 'us-construction',
    options: places.map((value) => ({ value, label: silicaLimit(value).place })),
  },
  {
    key: 'way',
    label: 'Going by',
    kind: 'choice',
    default: 'table',
    options: [
      { value: 'table', label: 'The task: what the rules ask' },
      { value: 'measured', label: 'Measurements of our own air' },
    ],
  },
  {
    key: 'work',
    label: 'Dusty work of the shift',
    kind: 'rows',
    columns: work,
    minRows: 1,
    maxRows: 12,
    when: table,
    help: 'Hand-held: cut-off, ring and twin-blade saws. No engine: electric, air or hydraulic. Enclosed: any place where dust can hang. A room with open windows, a tent, a stairwell, a deep pit. Ask: can dust drift off freely on all sides?',
  },
  {
    key: 'regular',
    label: 'The same task, often, in the same place?',
    kind: 'yes-no',
    default: true,
    when: { field: 'rule', is: ['us-general'] },
    help: 'A test pit in the shop: yes.',
  },
  {
    key: 'spells',
    label: 'Measurements',
    kind: 'rows',
    columns: spells,
    minRows: 1,
    maxRows: 20,
    default: [{ what: 'Cutting wet', concentration: 0.12, time: 1.5 }],
    when: measured,
    help: 'Respirable crystalline silica outside the mask, by an accredited laboratory. 50 µg/m3 may be typed so.',
  },
  {
    key: 'shift',
    label: 'Length of the shift',
    ...time,
    above: true,
    default: 8,
    when: measured,
    usual: 'Limits are made for a shift of 8 h.',
  },
  {
    key: 'unsampled',
    label: 'Hours nobody measured count as',
    kind: 'choice',
    default: 'mean',
    when: measured,
    options: [
      { value: 'mean', label: 'Like the rest' },
      { value: 'zero', label: 'No dust at all' },
    ],
    usual: 'What was not measured is taken to be like the rest.',
  },
  {
    key: 'oil',
    label: 'Oil mist in the air?',
    kind: 'yes-no',
    default: true,
    group: mask,
    help: 'Two-stroke exhaust carries oil.',
    usual: 'Engine saws give off oil mist.',
    when: { field: 'rule', is: ['us-construction', 'us-general'] },
  },
  {
    key: 'filterTime',
    label: 'Hours one filter is worn in all',
    kind: 'quantity',
    dimension: 'time',
    units: ['h', 'h'],
    min: 0,
    above: true,
    max: 1000,
    default: 8,
    group: mask,
    usual: 'One shift.',
    when: { field: 'rule', is: ['us-construction', 'us-general'] },
  },
]);
