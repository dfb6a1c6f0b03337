import { defineFields } from '../../contract/field.ts';

const slips = 'catches slips of the decimal point';

export const fields = defineFields([
  { key: 'closedDiameter', label: 'Split pulley closed, pitch diameter', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], default: 100, min: 20, max: 600, limitFrom: slips },
  { key: 'angle', label: 'Angle of the V, both sides together', kind: 'quantity', dimension: 'angle', units: ['°', '°'], default: 38, min: 15, max: 60, limitFrom: slips },
  { key: 'gapStart', label: 'Gap between the halves at the start', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], default: 5, min: 0, above: true, max: 60, limitFrom: slips, help: 'Between the faces or spacers that meet when it is closed.' },
  { key: 'gapEnd', label: 'Gap left at the end', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], default: 0, min: 0, max: 60, limitFrom: slips, more: true, help: '0 when the halves sit metal on metal, or on their spacers.' },
  { key: 'drivePulley', label: 'Drive pulley, pitch diameter', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], default: 90, min: 20, max: 600, limitFrom: slips },
  { key: 'centre', label: 'Distance between the shaft centers', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], default: 300, min: 30, max: 2000, limitFrom: slips },
  { key: 'beltLength', label: 'Belt length', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], min: 100, max: 6000, limitFrom: slips, optional: true, help: 'Leave empty if the belt is the right one: it is then just tight when closed.' },
  { key: 'thread', label: 'Screw, thread pitch', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], default: 1.25, min: 0.3, max: 5, limitFrom: slips, group: 'Drawing together' },
  {
    key: 'step', label: 'Turn each screw at a time', kind: 'choice', default: 'quarter', group: 'Drawing together',
    options: [
      { value: 'eighth', label: 'An eighth of a turn' },
      { value: 'quarter', label: 'A quarter turn' },
      { value: 'half', label: 'Half a turn' },
    ],
  },
  { key: 'beltWidth', label: 'Belt width the pulley is made for', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], default: 13, min: 4, max: 60, limitFrom: slips, group: 'The belt' },
  { key: 'beltWidthNow', label: 'Belt width measured', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], min: 3, max: 60, limitFrom: slips, optional: true, group: 'The belt', help: 'At the same height in the section as the width above. Leave empty for a new belt.' },
  { key: 'rim', label: 'Split pulley, outside diameter', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], min: 20, max: 800, limitFrom: slips, optional: true, more: true, group: 'The belt' },
  { key: 'blade', label: 'Blade diameter', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], default: 230, min: 80, max: 1000, limitFrom: slips, more: true, group: 'If it is pinched' },
  { key: 'gapPinched', label: 'Gap left where the belt is nipped', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], default: 0.5, min: 0, max: 20, limitFrom: slips, more: true, group: 'If it is pinched' },
]);
