/** Run-down: what a turning blade holds, how long it turns on, and how true it runs. */
import type { Carry } from '../../contract/carry.ts';
import type { Part } from '../../contract/part.ts';
import * as all from './formulas.ts';

export { fields } from './fields.ts';
export { compute, highestUsualMark, rimRefused } from './compute.ts';
export { blocks } from './blocks.ts';
export { words } from './words.ts';
export {
  frictionTorque,
  hoopAtBore,
  lostGrip,
  ringInertia,
  ringMass,
  ringStress,
  spinEnergy,
  stopTime,
  turnsToStop,
  type LostGrip,
} from './disc.ts';

export const title = 'Blade run-down and run-out';
export const formulas = Object.values(all);
export const sources = [
  'disc-energy',
  'tayal-mechanics',
  'khurmi-machines',
  'ugural-disc',
  'blade-run-out-limit',
  'blade-marks-unread',
  'nist-sp-811',
  'geometry',
  'arithmetic',
];
export const hazards = ['blade-overspeed', 'stored-energy-run-down', 'damaged-blade'];
export const plate = {
  diameter: 'bladeDiameter',
  bore: 'bladeBore',
  rotation: 'spindleSpeed',
  sawMass: 'mass',
  flange: 'flange',
};
export const example = {
  diameter: '350 mm',
  bore: '25.4 mm',
  thickness: '2.2 mm',
  rotation: '4200 rpm',
  known: 'time',
  time: '8 s',
};
const turning = ['diameter', 'bore', 'thickness', 'rotation', 'known', 'time', 'torque', 'density'];
export const decides = {
  verdict: turning,
  rimVerdict: ['diameter', 'rotation'],
  runOutVerdict: ['runOut', 'runOutLimit', 'diameter'],
};
export const parts: readonly Part[] = [
  { gives: ['mass', 'inertia'], from: ['diameter', 'bore', 'thickness', 'density'] },
  { gives: ['energy'], from: ['diameter', 'bore', 'thickness', 'rotation', 'density'] },
  { gives: ['drop'], from: ['diameter', 'bore', 'thickness', 'rotation', 'sawMass', 'density'] },
  { gives: ['time', 'turns', 'torque'], from: turning },
  { gives: ['boreStress', 'ringStress'], from: ['diameter', 'bore', 'rotation', 'density', 'poisson'] },
  { gives: ['runOutLimit'], from: ['diameter', 'runOutLimit'] },
  { gives: ['dirtRunOut'], from: ['diameter', 'flange', 'speck'] },
];
export const carries: readonly Carry[] = [
  {
    to: 'blade-speed',
    what: 'its speed against the mark on the blade',
    with: {
      diameter: { field: 'diameter' },
      known: { is: 'spindle' },
      spindle: { field: 'rotation' },
      flange: { field: 'flange' },
    },
  },
];
