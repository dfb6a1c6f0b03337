import { defineFields } from '../../contract/field.ts';

const slips = 'catches slips of the decimal point';

export const fields = defineFields([
  { key: 'diameter', label: 'Blade diameter', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], default: 350, min: 50, max: 2000, limitFrom: slips },
  { key: 'bore', label: 'Bore', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], default: 25.4, min: 5, max: 600, limitFrom: slips },
  { key: 'thickness', label: 'Thickness of the core', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], default: 2.2, min: 0.5, max: 20, limitFrom: slips },
  { key: 'rotation', label: 'Blade-shaft speed', kind: 'quantity', dimension: 'rotation', units: ['rpm', 'rpm'], default: 4200, min: 50, max: 20000, limitFrom: slips },
  {
    key: 'known', label: 'What is known', kind: 'choice', default: 'time',
    options: [
      { value: 'time', label: 'Time to stand still, measured' },
      { value: 'torque', label: 'Friction torque' },
    ],
  },
  { key: 'time', label: 'Time from letting go to standstill', kind: 'quantity', dimension: 'time', units: ['s', 's'], default: 8, min: 0.2, max: 600, limitFrom: slips, when: { field: 'known', is: ['time'] }, help: 'Stop-watch, blade in the air, guard on, nobody in its plane.' },
  { key: 'torque', label: 'Friction torque', kind: 'quantity', dimension: 'torque', units: ['N·m', 'lbf·ft'], default: 1, min: 0.001, max: 1000, limitFrom: slips, when: { field: 'known', is: ['torque'] } },
  { key: 'sawMass', label: 'Mass of the saw, to compare with', kind: 'quantity', dimension: 'mass', units: ['kg', 'lb'], default: 10, min: 1, max: 1000, limitFrom: slips, more: true },
  { key: 'runOut', label: 'Run-out read at the rim', kind: 'quantity', dimension: 'length', units: ['mm', 'thou'], min: 0, max: 20, limitFrom: slips, optional: true, group: 'Wobble', help: 'Dial gauge just inside the segments, whole reading over one turn.' },
  { key: 'runOutLimit', label: 'Run-out allowed', kind: 'quantity', dimension: 'length', units: ['mm', 'thou'], min: 0.01, max: 10, limitFrom: slips, optional: true, more: true, group: 'Wobble', help: 'From the manual. Left empty, 1 mm for each meter of blade is used: common practice, no source.' },
  { key: 'flange', label: 'Flange diameter', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], default: 100, min: 10, max: 800, limitFrom: slips, more: true, group: 'Wobble' },
  { key: 'speck', label: 'Dirt under the edge of the flange', kind: 'quantity', dimension: 'length', units: ['mm', 'thou'], default: 0.1, min: 0, max: 5, limitFrom: slips, more: true, group: 'Wobble' },
  { key: 'density', label: 'Density', kind: 'quantity', dimension: 'density', units: ['kg/m3', 'kg/m3'], default: 7850, min: 500, max: 20000, limitFrom: slips, more: true },
  { key: 'poisson', label: 'Poisson’s ratio', kind: 'number', default: 0.3, min: 0, max: 0.5, more: true, limitFrom: 'no solid has more than 0.5' },
]);
