/** Blade speed: surface speed against the marking, and depth of cut. */
import type { Carry } from '../../contract/carry.ts';
import type { Part } from '../../contract/part.ts';
import type { PlateMap } from '../../contract/plate.ts';
import * as all from './formulas.ts';

export { fields } from './fields.ts';
export { compute, nearLimit } from './compute.ts';
export { blocks } from './blocks.ts';
export { words } from './words.ts';
export { surfaceSpeed, rotationForSpeed, drivenRotation } from './surface-speed.ts';
export { bladeForDepth, cutDepth, cutLength, leastFlange, twinDepth } from './depth.ts';
export { marksAgreeWithin, readMarks, type Marks, type MarksRead } from './marks.ts';

export const title = 'Blade speed and depth';
export const formulas = Object.values(all);
export const sources = [
  'khurmi-machines',
  'masonry-magazine-2004',
  'ansi-b7-1',
  'osha-1910-215',
  'cut-off-flange-share',
  'geometry',
  'arithmetic',
];
export const hazards = ['blade-overspeed', 'blade-guard-and-flange'];
// The two diameters are asked for at the pitch line; a machine that gives them over the rim leaves the boxes empty.
const atPitch = { pulleysAre: 'pitch' };
export const plate: PlateMap = {
  diameter: 'bladeDiameter',
  known: 'bladeTurnedBy',
  engine: 'engineSpeed',
  enginePulley: { fact: 'enginePulley', only: atPitch },
  bladePulley: { fact: 'bladePulley', only: atPitch },
  spindle: 'spindleSpeed',
  guardSize: 'guardSize',
  machineRotation: 'spindleSpeed',
  flange: 'flange',
};
export const example = {
  diameter: '350 mm',
  known: 'pulleys',
  engine: '9500 rpm',
  enginePulley: '66 mm',
  bladePulley: '125 mm',
  markedAs: 'rpm',
  markedRotation: '5500 rpm',
  flange: '102 mm',
};
const drive = ['known', 'engine', 'enginePulley', 'bladePulley', 'slip', 'spindle'];
const marking = ['markedAs', 'markedRotation', 'markedSpeed', 'alsoRotation', 'alsoSpeed', 'alsoFeet'];
const size = ['diameter', 'newDiameter'];
const depth = ['diameter', 'flange', 'clearance', 'head', 'reach'];
export const decides = {
  verdict: [...drive, ...marking, ...size, 'guardSize', 'machineRotation'],
  marksVerdict: [...marking, ...size],
  guardVerdict: [...size, 'guardSize'],
  plateVerdict: [...drive, 'machineRotation'],
  wornVerdict: [...size, 'bladeKind'],
  largerVerdict: size,
  noDepth: ['diameter', 'flange', 'clearance'],
  twinVerdict: depth,
  wantedVerdict: [...depth, 'wanted', 'guardSize'],
};
export const parts: readonly Part[] = [
  { gives: ['speed'], from: [...drive, 'diameter'] },
  { gives: ['rotation'], from: drive },
  { gives: ['limitRotation'], from: [...marking, ...size] },
  { gives: ['share'], from: [...drive, ...marking, ...size] },
  { gives: ['cutLength', 'halfBlade'], from: ['diameter', 'flange', 'clearance'] },
  { gives: ['depth', 'passes', 'neededBlade', 'passDepth'], from: [...depth, 'wanted'] },
];
export const carries: readonly Carry[] = [
  {
    to: 'blade-rundown',
    what: 'how long this blade turns on',
    with: { diameter: { field: 'diameter' }, rotation: { value: 'rotation' }, flange: { field: 'flange' } },
  },
];
