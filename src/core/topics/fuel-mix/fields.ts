import { defineFields } from '../../contract/field.ts';

const slips = 'catches slips of the decimal point';

export const fields = defineFields([
  { key: 'ratio', label: 'Parts of gasoline to 1 part of oil', kind: 'number', default: 50, min: 10, max: 200, limitFrom: slips, help: 'From the machine’s plate or manual: 50 for 50:1.' },
  {
    key: 'known', label: 'What you have', kind: 'choice', default: 'fuel',
    options: [
      { value: 'fuel', label: 'Gasoline to mix' },
      { value: 'oil', label: 'Oil to use up' },
      { value: 'can', label: 'A can to fill with mix' },
      { value: 'mixed', label: 'A can mixed at another ratio' },
    ],
  },
  { key: 'fuel', label: 'Gasoline', kind: 'quantity', dimension: 'volume', units: ['L', 'gal'], default: 5, min: 0, above: true, max: 1000, limitFrom: slips, when: { field: 'known', is: ['fuel'] } },
  { key: 'oil', label: 'Oil', kind: 'quantity', dimension: 'volume', units: ['mL', 'fl oz'], default: 100, min: 0, above: true, max: 100000, limitFrom: slips, when: { field: 'known', is: ['oil'] } },
  { key: 'can', label: 'Mix in the can', kind: 'quantity', dimension: 'volume', units: ['L', 'gal'], default: 5, min: 0, above: true, max: 1000, limitFrom: slips, when: { field: 'known', is: ['can', 'mixed'] } },
  { key: 'mixedAt', label: 'It was mixed at, parts of gasoline to 1', kind: 'number', default: 25, min: 5, max: 1000, limitFrom: slips, when: { field: 'known', is: ['mixed'] } },
]);
