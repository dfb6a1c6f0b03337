import { defineFields } from '../../contract/field.ts';
import { conditions, sizes } from './tables.ts';

export const fields = defineFields([
  {
    key: 'size',
    label: 'Bolt',
    kind: 'choice',
    default: 'M8',
    options: sizes.map((value) => ({ value, label: `${value}, coarse thread` })),
  },
  {
    key: 'boltClass',
    label: 'Class on the head',
    kind: 'choice',
    default: '8.8',
    options: [
      { value: '8.8', label: '8.8' },
      { value: '10.9', label: '10.9' },
      { value: '12.9', label: '12.9' },
    ],
  },
  {
    key: 'state',
    label: 'Thread is',
    kind: 'choice',
    default: 'oiled',
    options: conditions.map(({ value, label }) => ({ value, label })),
  },
  {
    key: 'into',
    label: 'Screwed into',
    kind: 'choice',
    default: 'steel',
    options: [
      { value: 'steel', label: 'Steel, or with a nut of the same class' },
      { value: 'light', label: 'Aluminum or magnesium' },
    ],
  },
  { key: 'leftHand', label: 'Left-hand thread', kind: 'yes-no', default: false },
  { key: 'locker', label: 'Thread-locker used', kind: 'yes-no', default: false },
  {
    key: 'share',
    label: 'Share of the proof load',
    kind: 'quantity',
    dimension: 'ratio',
    units: ['%', '%'],
    default: 75,
    min: 10,
    max: 90,
    more: true,
    limitFrom: 'shigley-bolts',
    help: '75 % for bolts that come off again, 90 % for those that do not.',
  },
  {
    key: 'ownFactor',
    label: 'Torque factor K of your own',
    kind: 'number',
    optional: true,
    min: 0.05,
    max: 0.5,
    more: true,
    help: 'Leave empty to use the table.',
  },
]);
