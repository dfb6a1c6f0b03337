/** Split pulley: how a belt climbs when the halves of a twin-blade head are drawn together. */
import type { Carry } from '../../contract/carry.ts';
import type { Part } from '../../contract/part.ts';
import type { PlateMap } from '../../contract/plate.ts';
import * as all from './formulas.ts';

export { fields } from './fields.ts';
export { compute, widthSlack } from './compute.ts';
export { blocks } from './blocks.ts';
export { words } from './words.ts';
export { climb, pitchRadius, runOut, tilt, turnsForLoop, type Cones } from './climb.ts';
export { stateAt, statesOf, type State } from './states.ts';

export const title = 'Split pulley';
export const formulas = Object.values(all);
export const sources = ['geometry'];
export const hazards = ['moving-belt', 'blade-overspeed'];
const atPitch = { pulleysAre: 'pitch' };
const split = { splitPulley: true };
export const plate: PlateMap = {
  closedDiameter: { fact: 'bladePulley', only: { ...atPitch, ...split } },
  angle: { fact: 'grooveAngle', only: split },
  drivePulley: { fact: 'enginePulley', only: atPitch },
  centre: 'centers',
  beltWidth: 'beltWidth',
  blade: 'bladeDiameter',
};
export const example = {
  closedDiameter: '100 mm',
  angle: '38°',
  gapStart: '5 mm',
  gapEnd: '0 mm',
  drivePulley: '90 mm',
  centre: '300 mm',
  thread: '1.25 mm',
  step: 'quarter',
  beltWidth: '13 mm',
};
const cones = ['closedDiameter', 'angle', 'beltWidth', 'beltWidthNow'];
const groove = [...cones, 'gapEnd'];
const closed = [...groove, 'drivePulley', 'centre'];
const passes = ['gapStart', 'gapEnd', 'thread', 'step'];
export const decides = {
  verdict: [...passes, 'beltWidth', 'beltWidthNow'],
  fitVerdict: [...closed, 'beltLength'],
  rimVerdict: [...groove, 'rim'],
  widthVerdict: ['beltWidth', 'beltWidthNow'],
};
export const parts: readonly Part[] = [
  { gives: ['climb'], from: ['gapStart', 'gapEnd', 'angle'] },
  { gives: ['climbEach'], from: ['thread', 'step', 'angle'] },
  { gives: ['passes'], from: passes },
  { gives: ['squeeze'], from: ['gapStart', 'gapEnd', 'beltWidth', 'beltWidthNow'] },
  { gives: ['radiusOpen'], from: [...cones, 'gapStart'] },
  { gives: ['radiusClosed', 'pitchClosed', 'sits', 'faster'], from: groove },
  { gives: ['ratio'], from: [...groove, 'drivePulley'] },
  { gives: ['ratioChange'], from: [...groove, 'gapStart', 'drivePulley'] },
  { gives: ['path', 'turns'], from: closed },
  { gives: ['pathGrowth'], from: [...closed, 'gapStart'] },
  { gives: ['slackStart'], from: [...closed, 'gapStart', 'beltLength'] },
  { gives: ['stretch'], from: [...closed, 'beltLength'] },
  { gives: ['tilt'], from: [...groove, 'gapPinched'] },
  { gives: ['runOut'], from: [...groove, 'gapPinched', 'blade'] },
];
const drive = { enginePulley: { field: 'drivePulley' }, bladePulley: { value: 'pitchClosed' } } as const;
export const carries: readonly Carry[] = [
  {
    to: 'belt-tension',
    what: 'how tight this belt must be',
    with: { ...drive, diametersAre: { is: 'pitch' }, known: { is: 'centre' }, centre: { field: 'centre' } },
  },
  { to: 'blade-speed', what: 'the speed of its blades', with: { ...drive, known: { is: 'pulleys' } } },
];
