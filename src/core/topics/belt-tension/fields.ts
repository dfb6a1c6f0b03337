import { defineFields } from '../../contract/field.ts';

const sections = [
  { value: 'PH', label: 'Ribbed PH (1.6 mm)' },
  { value: 'PJ', label: 'Ribbed PJ (2.34 mm)' },
  { value: 'PK', label: 'Ribbed PK (3.56 mm)' },
  { value: 'PL', label: 'Ribbed PL (4.7 mm)' },
  { value: 'PM', label: 'Ribbed PM (9.4 mm)' },
  { value: 'Z', label: 'V belt Z (10 mm)' },
  { value: 'A', label: 'V belt A (13 mm)' },
  { value: 'B', label: 'V belt B (17 mm)' },
  { value: 'C', label: 'V belt C (22 mm)' },
  { value: 'D', label: 'V belt D (32 mm)' },
  { value: 'E', label: 'V belt E (38 mm)' },
  { value: 'SPZ', label: 'Narrow V belt SPZ' },
  { value: 'SPA', label: 'Narrow V belt SPA' },
  { value: 'SPB', label: 'Narrow V belt SPB' },
  { value: 'SPC', label: 'Narrow V belt SPC' },
] as const;

const slips = 'catches slips of the decimal point';

export const fields = defineFields([
  { key: 'section', label: 'Belt section', kind: 'choice', default: 'PJ', options: sections, help: 'Ribbed belts: measure from rib to rib. V belts: measure the wide side.' },
  { key: 'belts', label: 'Number of belts, or ribs of a ribbed belt', kind: 'count', default: 8, min: 1, max: 60, limitFrom: slips },
  { key: 'enginePulley', label: 'Engine pulley, diameter', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], default: 52, min: 10, max: 1500, limitFrom: slips },
  { key: 'bladePulley', label: 'Blade pulley, diameter', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], default: 114, min: 10, max: 1500, limitFrom: slips },
  {
    key: 'diametersAre', label: 'These diameters are', kind: 'choice', default: 'pitch', more: true,
    options: [
      { value: 'pitch', label: 'Pitch diameters (where the belt pulls)', help: 'Also called datum or effective diameter. Speed, length and wrap are reckoned at it.' },
      { value: 'outside', label: 'Outside diameters (over the rim)', help: 'What a caliper reads. On a V pulley the pitch diameter is smaller, on a ribbed pulley a little larger.' },
    ],
  },
  {
    key: 'known', label: 'What is known', kind: 'choice', default: 'centre',
    options: [
      { value: 'centre', label: 'Distance between the shafts' },
      { value: 'length', label: 'Length of the belt' },
    ],
  },
  { key: 'centre', label: 'Distance between the shaft centers', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], default: 330, min: 20, max: 6000, limitFrom: slips, when: { field: 'known', is: ['centre'] } },
  { key: 'length', label: 'Belt length', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], min: 80, max: 20000, limitFrom: slips, when: { field: 'known', is: ['length'] }, help: 'Pitch (datum or effective) length, as marked on the belt.' },
  { key: 'power', label: 'Engine power', kind: 'quantity', dimension: 'power', units: ['kW', 'hp'], default: 4, min: 0.05, max: 500, limitFrom: slips },
  { key: 'rotation', label: 'Shaft speed', kind: 'quantity', dimension: 'rotation', units: ['rpm', 'rpm'], default: 9300, min: 50, max: 20000, limitFrom: slips },
  { key: 'speedOf', label: 'That is the speed of', kind: 'choice', default: 'engine', options: [{ value: 'engine', label: 'the engine pulley' }, { value: 'blade', label: 'the blade pulley' }] },
  {
    key: 'beltState', label: 'The belt is', kind: 'choice', default: 'new',
    options: [
      { value: 'new', label: 'New, not yet run', help: 'It settles in the first hours, so it is set tighter.' },
      { value: 'run-in', label: 'Run in' },
    ],
  },
  {
    key: 'driver', label: 'Engine', kind: 'choice', default: 'single', group: 'Duty',
    options: [
      { value: 'single', label: 'One cylinder' },
      { value: 'multi', label: 'Two or more cylinders' },
      { value: 'motor', label: 'Electric motor' },
    ],
  },
  {
    key: 'hours', label: 'Hours a day', kind: 'choice', default: 'short', group: 'Duty',
    options: [
      { value: 'short', label: 'Up to 5' },
      { value: 'day', label: '8 to 10' },
      { value: 'long', label: '16 or more' },
    ],
  },
  {
    key: 'load', label: 'Shock in the work', kind: 'choice', default: 'heavy', group: 'Duty',
    options: [
      { value: 'light', label: 'Light: fans, centrifugal pumps' },
      { value: 'medium', label: 'Medium: generators, machine tools' },
      { value: 'heavy', label: 'Heavy: saws, hammer mills, piston pumps', help: 'No table lists a concrete saw; this is the nearest row.' },
      { value: 'crushing', label: 'Crushing: crushers, hoists' },
    ],
  },
  { key: 'factor', label: 'Service factor, instead of the table', kind: 'number', min: 0.8, max: 3, optional: true, more: true, group: 'Duty' },
  {
    key: 'reading', label: 'What was measured', kind: 'choice', default: 'none', group: 'Check a belt',
    options: [
      { value: 'none', label: 'Nothing yet' },
      { value: 'force', label: 'Push at mid-span, with a spring scale' },
      { value: 'frequency', label: 'Note of the plucked span' },
      { value: 'stretch', label: 'Stretch between two marks' },
    ],
  },
  { key: 'force', label: 'Force read', kind: 'quantity', dimension: 'force', units: ['N', 'lbf'], min: 0, above: true, max: 5000, limitFrom: slips, group: 'Check a belt', when: { field: 'reading', is: ['force'] }, help: 'On one V belt, or across the whole of a ribbed belt.' },
  { key: 'deflection', label: 'Pushed down by', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], min: 0, above: true, max: 500, limitFrom: slips, optional: true, group: 'Check a belt', when: { field: 'reading', is: ['force'] }, help: 'Leave empty if it was pushed by the distance given here.' },
  { key: 'frequency', label: 'Frequency', kind: 'quantity', dimension: 'frequency', units: ['Hz', 'Hz'], min: 1, max: 2000, limitFrom: slips, group: 'Check a belt', when: { field: 'reading', is: ['frequency'] } },
  { key: 'growth', label: 'The marks moved apart by', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], min: 0, above: true, max: 200, limitFrom: slips, group: 'Check a belt', when: { field: 'reading', is: ['stretch'] } },
  { key: 'apart', label: 'Distance between the marks, belt slack', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], default: 200, min: 20, max: 5000, limitFrom: slips, more: true, group: 'Check a belt' },
  { key: 'axial', label: 'Pull that would double the length of one belt or rib', kind: 'quantity', dimension: 'force', units: ['kN', 'lbf'], min: 0.1, max: 5000, limitFrom: slips, optional: true, more: true, group: 'Belt data', help: 'Needed for the stretch check. Measure it: hang a weight on the belt; pull times length over stretch, shared over the ribs.' },
  {
    key: 'rule', label: 'Push the span down by', kind: 'choice', default: '64', more: true, group: 'Check a belt',
    options: [
      { value: '64', label: '1/64 of the span' },
      { value: '16mm', label: '16 mm for each meter of span', help: '2.4 % further than 1/64: the forces differ by as much.' },
    ],
  },
  { key: 'mass', label: 'Mass of one belt or rib, per meter', kind: 'quantity', dimension: 'linear-mass', units: ['g/m', 'lb/ft'], min: 0, above: true, max: 5000, limitFrom: slips, optional: true, more: true, group: 'Belt data', help: 'Weigh the belt, divide by its length and by its ribs. Printed figures differ by 10 to 15 %.' },
  { key: 'bending', label: 'Bending stiffness of one belt or rib', kind: 'quantity', dimension: 'bending-stiffness', units: ['N·m2', 'lbf·in2'], default: 0, min: 0, max: 100, limitFrom: slips, more: true, group: 'Belt data', help: 'Short stiff spans sound higher than a limp string. 0 leaves this out.' },
  { key: 'pushExtra', label: 'Stiffness allowance of the push check', kind: 'quantity', dimension: 'force', units: ['N', 'lbf'], min: 0, max: 200, limitFrom: slips, optional: true, more: true, group: 'Belt data' },
  { key: 'wetGrip', label: 'Grip left when wet or coated with slurry', kind: 'quantity', dimension: 'ratio', units: ['%', '%'], default: 50, min: 5, max: 100, more: true, group: 'Belt data', help: 'Share of the dry friction. Common practice, no source: wet rubber on metal varies widely.' },
  { key: 'thread', label: 'Tensioner screw, thread pitch', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], default: 1.25, min: 0.2, max: 10, limitFrom: slips, more: true, group: 'Belt data' },
  { key: 'overhang', label: 'Pulley overhang, middle of pulley to middle of near bearing', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], default: 25, min: 0, max: 500, limitFrom: slips, more: true, group: 'Blade shaft' },
  { key: 'bearingsApart', label: 'Distance between the two bearings, middle to middle', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], default: 50, min: 5, max: 2000, limitFrom: slips, more: true, group: 'Blade shaft' },
]);
