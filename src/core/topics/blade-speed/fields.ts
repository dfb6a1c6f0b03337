import { defineFields, type InputsOf } from '../../contract/field.ts';

const markedAs = [
  { value: 'rpm', label: 'Revolutions a minute' },
  { value: 'speed', label: 'Surface speed (m/s or ft/min)' },
] as const;

export const fields = defineFields([
  { key: 'diameter', label: 'Blade diameter', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], default: 350, min: 50, max: 2000, limitFrom: 'arithmetic holds for any size; the limits catch slips of the decimal point' },
  {
    key: 'known', label: 'What is known', kind: 'choice', default: 'pulleys',
    options: [
      { value: 'pulleys', label: 'Engine speed and both pulleys' },
      { value: 'spindle', label: 'Speed of the blade shaft, measured' },
    ],
  },
  { key: 'engine', label: 'Engine speed, no load', kind: 'quantity', dimension: 'rotation', units: ['rpm', 'rpm'], default: 9300, min: 100, max: 20000, when: { field: 'known', is: ['pulleys'] }, help: 'The highest governed speed, from the machine plate or a rev counter.' },
  { key: 'enginePulley', label: 'Engine pulley, pitch diameter', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], default: 52, min: 10, max: 1000, when: { field: 'known', is: ['pulleys'] } },
  { key: 'bladePulley', label: 'Blade pulley, pitch diameter', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], default: 114, min: 10, max: 1000, when: { field: 'known', is: ['pulleys'] } },
  { key: 'slip', label: 'Belt slip', kind: 'quantity', dimension: 'ratio', units: ['%', '%'], default: 0, min: 0, max: 30, more: true, when: { field: 'known', is: ['pulleys'] }, help: 'Under load only. The verdict never counts on it: out of the cut a belt does not slip.' },
  { key: 'spindle', label: 'Blade-shaft speed', kind: 'quantity', dimension: 'rotation', units: ['rpm', 'rpm'], min: 10, max: 30000, when: { field: 'known', is: ['spindle'] } },
  { key: 'markedAs', label: 'How the blade is marked', kind: 'choice', default: 'rpm', options: markedAs },
  { key: 'markedRotation', label: 'Highest speed marked on the blade', kind: 'quantity', dimension: 'rotation', units: ['rpm', 'rpm'], default: 5400, min: 10, max: 40000, when: { field: 'markedAs', is: ['rpm'] } },
  { key: 'markedSpeed', label: 'Highest surface speed marked on the blade', kind: 'quantity', dimension: 'speed', units: ['m/s', 'ft/min'], min: 1, max: 200, when: { field: 'markedAs', is: ['speed'] } },
  {
    key: 'bladeKind', label: 'Kind of blade', kind: 'choice', default: 'diamond',
    options: [
      { value: 'diamond', label: 'Diamond' },
      { value: 'abrasive', label: 'Bonded abrasive', help: 'It gets smaller as it wears.' },
    ],
  },
  { key: 'guardSize', label: 'Largest blade the guard is made for', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], min: 50, max: 2000, optional: true, help: 'From the plate on the guard or the machine.' },
  { key: 'machineRotation', label: 'Highest blade-shaft speed on the machine’s plate', kind: 'quantity', dimension: 'rotation', units: ['rpm', 'rpm'], min: 10, max: 40000, optional: true, more: true },
  { key: 'alsoRotation', label: 'Revolutions a minute also marked on the blade', kind: 'quantity', dimension: 'rotation', units: ['rpm', 'rpm'], min: 10, max: 40000, optional: true, more: true, group: 'Other marks on the blade', when: { field: 'markedAs', is: ['speed'] } },
  { key: 'alsoSpeed', label: 'Meters a second also marked on the blade', kind: 'quantity', dimension: 'speed', units: ['m/s', 'm/s'], min: 1, max: 200, optional: true, more: true, group: 'Other marks on the blade' },
  { key: 'alsoFeet', label: 'Feet a minute also marked on the blade', kind: 'quantity', dimension: 'speed', units: ['ft/min', 'ft/min'], min: 200, max: 40000, optional: true, more: true, group: 'Other marks on the blade' },
  { key: 'newDiameter', label: 'Diameter printed on the blade', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], min: 50, max: 2000, optional: true, more: true, group: 'Other marks on the blade', help: 'If it is worn or cut down to less than that.' },
  { key: 'flange', label: 'Flange or other part that meets the work first, diameter', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], default: 100, min: 0, max: 1000, group: 'Depth of cut' },
  { key: 'clearance', label: 'Gap kept to the work', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], default: 3, min: 0, max: 200, group: 'Depth of cut', more: true },
  { key: 'wanted', label: 'Depth wanted', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], min: 1, max: 1500, optional: true, group: 'Depth of cut' },
  {
    key: 'head', label: 'Head', kind: 'choice', default: 'single', more: true, group: 'Depth of cut',
    options: [
      { value: 'single', label: 'One blade' },
      { value: 'twin', label: 'Two blades side by side, arm between them', help: 'The core between the two cuts is broken out and the slim arm follows into the slot.' },
    ],
  },
  { key: 'reach', label: 'From the part that stops on the surface to the blade shaft', kind: 'quantity', dimension: 'length', units: ['mm', 'in'], default: 280, min: 10, max: 2000, group: 'Depth of cut', when: { field: 'head', is: ['twin'] } },
]);

export type BladeInputs = InputsOf<typeof fields>;
