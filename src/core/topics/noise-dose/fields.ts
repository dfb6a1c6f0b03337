import { defineFields } from '../../contract/field.ts';

const level = { kind: 'number', min: 40, max: 140 } as const;
const label = { kind: 'number', min: 0, max: 45 } as const;
const protector = 'Hearing protectors';
const helper = 'The helper';

const periods = [
  { key: 'what', label: 'What is running', kind: 'text', maxLength: 40 },
  { key: 'level', label: 'Level at the ear, dB(A)', ...level, help: 'Measured, or from the machine’s manual.' },
  { key: 'time', label: 'Time', kind: 'quantity', dimension: 'time', units: ['min', 'min'], min: 0, max: 1440 },
  { key: 'worn', label: 'Protectors worn', kind: 'yes-no', default: true },
] as const;

export const fields = defineFields([
  {
    key: 'periods',
    label: 'Loud work today',
    kind: 'rows',
    columns: periods,
    minRows: 1,
    maxRows: 20,
    help: 'Everything loud, for as long as it runs.',
  },
  {
    key: 'next',
    label: 'Level of what comes next, dB(A)',
    ...level,
    default: 105,
    help: 'For the minutes left today.',
  },
  {
    key: 'protector',
    label: 'Rating on the pack',
    kind: 'choice',
    default: 'nrr',
    group: protector,
    options: [
      { value: 'none', label: 'No protectors' },
      { value: 'nrr', label: 'NRR (USA)' },
      { value: 'snr', label: 'SNR (Europe)' },
      { value: 'hml', label: 'H, M and L (Europe)' },
    ],
  },
  {
    key: 'nrr',
    label: 'NRR',
    ...label,
    default: 25,
    group: protector,
    when: { field: 'protector', is: ['nrr'] },
  },
  {
    key: 'derating',
    label: 'How much of it counts',
    kind: 'choice',
    default: 'half',
    group: protector,
    when: { field: 'protector', is: ['nrr'] },
    options: [
      { value: 'half', label: 'Half: (NRR − 7) / 2 (OSHA in the field)' },
      { value: 'muff', label: 'NIOSH, muffs: 0.75 NRR − 7' },
      { value: 'foam', label: 'NIOSH, foam plugs: 0.5 NRR − 7' },
      { value: 'other', label: 'NIOSH, other plugs: 0.3 NRR − 7' },
      { value: 'dual', label: 'Plugs under muffs: higher NRR + 5 − 7' },
      { value: 'label', label: 'The label: NRR − 7' },
    ],
  },
  {
    key: 'second',
    label: 'NRR of the other one',
    ...label,
    default: 25,
    group: protector,
    when: { field: 'derating', is: ['dual'] },
  },
  { key: 'snr', label: 'SNR', ...label, default: 28, group: protector, when: { field: 'protector', is: ['snr'] } },
  { key: 'high', label: 'H', ...label, default: 30, group: protector, when: { field: 'protector', is: ['hml'] } },
  { key: 'middle', label: 'M', ...label, default: 25, group: protector, when: { field: 'protector', is: ['hml'] } },
  { key: 'low', label: 'L', ...label, default: 18, group: protector, when: { field: 'protector', is: ['hml'] } },
  {
    key: 'cMinusA',
    label: 'dB(C) reading less dB(A) reading',
    kind: 'number',
    default: 2,
    min: -5,
    max: 20,
    group: protector,
    when: { field: 'protector', is: ['snr', 'hml'] },
    help: 'More than 2: a low, rumbling noise, which protectors hold back less.',
  },
  {
    key: 'readAt',
    label: 'The saw’s level was read at',
    kind: 'quantity',
    dimension: 'length',
    units: ['m', 'ft'],
    default: 1,
    min: 0.3,
    max: 50,
    more: true,
    group: helper,
    help: 'About 1 m for a level at the operator’s ear.',
  },
  {
    key: 'away',
    label: 'The helper stands off',
    kind: 'quantity',
    dimension: 'length',
    units: ['m', 'ft'],
    default: 5,
    min: 0.3,
    max: 1000,
    more: true,
    group: helper,
    help: 'Outdoors, over open ground. Walls send the noise back.',
  },
]);
