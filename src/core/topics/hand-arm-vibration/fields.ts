import { defineFields } from '../../contract/field.ts';

const vibration = { kind: 'quantity', dimension: 'acceleration', units: ['m/s2', 'm/s2'], max: 100 } as const;

const tools = [
  { key: 'what', label: 'Tool', kind: 'text', maxLength: 40 },
  { key: 'value', label: 'Vibration a', ...vibration, min: 0.1 },
  {
    key: 'from',
    label: 'Where it is from',
    kind: 'choice',
    default: 'declared',
    options: [
      { value: 'declared', label: 'The manual' },
      { value: 'measured', label: 'Measured at work' },
    ],
  },
  { key: 'uncertainty', label: 'Uncertainty K', ...vibration, min: 0, optional: true },
  {
    key: 'time',
    label: 'Hands on, running',
    kind: 'quantity',
    dimension: 'time',
    units: ['min', 'min'],
    min: 0,
    max: 1440,
  },
] as const;

export const fields = defineFields([
  {
    key: 'tools',
    label: 'Tools used today',
    kind: 'rows',
    columns: tools,
    minRows: 1,
    maxRows: 20,
    help: 'All tools, not the saw alone. Count the time the hands hold the running tool: far less than the job takes. Two handles: the higher value.',
  },
  {
    key: 'allow',
    label: 'A figure from the manual counts as',
    kind: 'choice',
    default: 'uncertainty',
    options: [
      { value: 'uncertainty', label: 'a + K (K not given: 40 % of a)' },
      { value: 'double', label: 'Twice a' },
    ],
    help: 'Manuals’ figures are taken on test stands; hands often get more.',
  },
  {
    key: 'next',
    label: 'Value of what comes next',
    ...vibration,
    min: 0.1,
    default: 7,
    help: 'With its uncertainty added, for the minutes left today.',
  },
]);
