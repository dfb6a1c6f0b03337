import { defineFields } from '../../contract/field.ts';

const slips = 'catches slips of the decimal point';

export const fields = defineFields([
  {
    key: 'observed', label: 'What the blade does', kind: 'choice', default: 'stands',
    options: [
      { value: 'stands', label: 'Stands still at idle and while the cord is pulled' },
      { value: 'cord', label: 'Turns while the cord is pulled' },
      { value: 'idle', label: 'Turns at idle' },
      { value: 'lingers', label: 'Keeps turning at idle after a cut' },
    ],
  },
  { key: 'idle', label: 'Idle speed', kind: 'quantity', dimension: 'rotation', units: ['rpm', 'rpm'], default: 2700, min: 300, max: 8000, limitFrom: slips, help: 'Measured with a rev counter, engine warm.' },
  { key: 'running', label: 'Running speed', kind: 'quantity', dimension: 'rotation', units: ['rpm', 'rpm'], default: 9300, min: 500, max: 20000, limitFrom: slips },
  { key: 'power', label: 'Engine power', kind: 'quantity', dimension: 'power', units: ['kW', 'hp'], default: 4, min: 0.05, max: 100, limitFrom: slips },
  {
    key: 'known', label: 'Engagement speed', kind: 'choice', default: 'parts',
    options: [
      { value: 'parts', label: 'Work it out from shoes and springs' },
      { value: 'speed', label: 'Known, from the manual or measured' },
    ],
  },
  { key: 'engages', label: 'The clutch engages at', kind: 'quantity', dimension: 'rotation', units: ['rpm', 'rpm'], min: 300, max: 15000, limitFrom: slips, when: { field: 'known', is: ['speed'] } },
  { key: 'shoes', label: 'Shoes', kind: 'count', default: 3, min: 1, max: 8, group: 'Clutch' },
  { key: 'mass', label: 'Mass of one shoe', kind: 'quantity', dimension: 'mass', units: ['g', 'lb'], default: 40, min: 1, max: 20000, limitFrom: slips, group: 'Clutch' },
  { key: 'radius', label: 'Center of mass of a shoe from the shaft, at rest', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], default: 22, min: 2, max: 500, limitFrom: slips, group: 'Clutch' },
  { key: 'drum', label: 'Drum, inside diameter', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], default: 76, min: 10, max: 1000, limitFrom: slips, group: 'Clutch' },
  { key: 'gap', label: 'Gap between shoe and drum at rest', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], default: 1, min: 0, max: 30, limitFrom: slips, group: 'Clutch' },
  { key: 'spring', label: 'Inward spring force on one shoe, at rest', kind: 'quantity', dimension: 'force', units: ['N', 'lbf'], default: 150, min: 0, above: true, max: 20000, limitFrom: slips, group: 'Clutch', when: { field: 'known', is: ['parts'] }, help: 'Pull one shoe outwards with a spring scale until it just lifts.' },
  { key: 'rate', label: 'That force grows with travel by', kind: 'quantity', dimension: 'stiffness', units: ['N/mm', 'lbf/in'], default: 12, min: 0, max: 2000, limitFrom: slips, more: true, group: 'Clutch', when: { field: 'known', is: ['parts'] } },
  { key: 'friction', label: 'Friction of lining on drum', kind: 'number', default: 0.3, min: 0.05, max: 0.8, limitFrom: slips, more: true, group: 'Clutch', help: 'Textbook clutches use 0.25 to 0.3. Oil or slurry brings it down.' },
  { key: 'weak', label: 'Force left in one weak spring', kind: 'quantity', dimension: 'ratio', units: ['%', '%'], default: 70, min: 0, max: 100, more: true, group: 'Clutch', help: 'To see what one tired or broken spring does.' },
]);
