/** Belt tension: length, wrap, tension window, the checks to make and what a setting does. */
import type { Carry } from '../../contract/carry.ts';
import type { Part } from '../../contract/part.ts';
import * as all from './formulas.ts';

export { fields } from './fields.ts';
export { compute } from './compute.ts';
export { blocks } from './blocks.ts';
export { words } from './words.ts';
export {
  beltLength,
  centreForLength,
  crossedLength,
  freeSpan,
  lean,
  pulleys,
  shortestLength,
  textbookCentre,
  textbookLength,
  wrapSmall,
  type Pulleys,
} from './geometry.ts';
export { arcFactor, arcPolynomial, tensionRatio, tradeFriction, tradeRatio, wedgedFriction } from './friction.ts';
export {
  bestSpeed,
  centrifugal,
  pullAtStrength,
  pullBeforeSlip,
  shaftLoadRunning,
  shaftLoadStatic,
  staticByCapstan,
  staticByTrade,
  strandsAtSlip,
  strandsWhenSet,
  type Strands,
} from './tensions.ts';
export {
  axialStiffness,
  centreMove,
  deflectionForce,
  spanFrequency,
  stretch,
  tensionFromDeflection,
  tensionFromFrequency,
  tensionFromStretch,
} from './checks.ts';
export { bearingLoads, overload, wetNear, type BearingLoads } from './consequences.ts';
export { deepestPush, tightLimit } from './reading.ts';
export { beltNotes, findPitch, type Pitch, type PitchRange } from './pitch.ts';
export { flexLife, flexPasses, lifeExponent, lifeShare } from './life.ts';
export { grooveSize, outsideMinusPitch, pitchFromOutside, ribbedFace } from './pulley-size.ts';
export {
  beltArea,
  beltMass,
  highestSpeed,
  isRibbed,
  leastPulley,
  pushExtra,
  ribGroove,
  ribSections,
  textbookStress,
  vGroove,
  vSections,
  type BeltMass,
  type RibSection,
  type Section,
  type VSection,
} from './tables.ts';
export { setAllowance } from './set.ts';
export { newWindow, runInWindow, serviceFactor, type Driver, type Hours, type Load } from './setting.ts';

export const title = 'Belt tension';
export const formulas = Object.values(all);
export const sources = [
  'shigley-belts',
  'shigley-belt-life',
  'tayal-mechanics',
  'khurmi-machines',
  'sarkar-machines',
  'wentzell-design',
  'bevan-machines',
  'jindal-design',
  'verma-physics',
  'blevins-modes',
  'bloch-geitner-v4',
  'machinery-handbook-arc',
  'gb-t-13575-1',
  'gb-t-13575-1-tables',
  'din-2211-grooves',
  'iso-9982',
  'iso-155',
  'belt-worksheets',
  'ribbed-belt-data',
  'belt-speed-limits',
  'belt-section-sizes',
  'service-factor-table',
  'service-factor-crushing',
  'wet-belt-grip',
  'geometry',
  'arithmetic',
];
export const hazards = ['moving-belt', 'belt-over-tension'];
export const plate = {
  section: 'beltSection',
  belts: 'beltCount',
  enginePulley: 'enginePulley',
  bladePulley: 'bladePulley',
  diametersAre: 'pulleysAre',
  centre: 'centers',
  length: 'beltLength',
  power: 'power',
  // The faster of the two speeds a plate gives: what a belt and a blade may run at hangs on it.
  rotation: 'engineSpeed',
};
export const example = {
  section: 'PJ',
  belts: 8,
  enginePulley: '52 mm',
  bladePulley: '114 mm',
  known: 'centre',
  centre: '330 mm',
  power: '4 kW',
  rotation: '9300 rpm',
  speedOf: 'engine',
  beltState: 'new',
  driver: 'single',
  hours: 'short',
  load: 'heavy',
};
const size = ['section', 'enginePulley', 'bladePulley', 'diametersAre'];
const geometry = [...size, 'known', 'centre', 'length'];
const speed = [...size, 'rotation', 'speedOf'];
const load = [...speed, 'belts', 'power', 'known', 'centre', 'length', 'mass'];
const setting = [...load, 'beltState', 'driver', 'hours', 'load', 'factor'];
const check = ['force', 'deflection', 'frequency', 'growth', 'apart', 'axial', 'rule', 'bending', 'pushExtra'];
const set = ['set', 'setLeast', 'setMost'];
export const decides = {
  verdict: [...setting, 'reading', ...check, ...set],
  speedVerdict: speed,
  loadVerdict: load,
  wetVerdict: [...setting, 'wetGrip', ...set, 'rule', 'pushExtra'],
  pulleyVerdict: size,
  setVerdict: [...setting, ...set, 'rule', 'pushExtra'],
};
export const parts: readonly Part[] = [
  { gives: ['enginePitch', 'bladePitch'], from: size },
  { gives: ['face', 'mass'], from: ['section', 'belts', 'mass'] },
  { gives: ['speed', 'engineRotation', 'bladeRotation', 'centrifugal'], from: [...speed, 'mass'] },
  { gives: ['length', 'centre', 'span', 'engineWrap', 'bladeWrap', 'takeUp', 'fitting'], from: geometry },
  { gives: ['screwTurns'], from: [...geometry, 'thread'] },
  { gives: ['serviceFactor', 'designPower'], from: ['power', 'driver', 'hours', 'load', 'factor'] },
  { gives: ['pull'], from: [...speed, 'belts', 'power'] },
  { gives: ['beltStress'], from: load },
  { gives: ['measured'], from: [...geometry, 'belts', 'mass', 'reading', ...check] },
  { gives: ['strands', 'shaftStatic', 'shaftRunning', 'slipMargin', 'lifeOver'], from: setting },
  // A set that belongs together no longer takes these from the head of the answer.
  { gives: ['staticTension', 'deflection', 'pushForce'], from: [...setting, ...set, 'rule', 'pushExtra'] },
  { gives: ['pluck'], from: [...setting, ...set, 'rule', 'pushExtra', 'bending'] },
  { gives: ['pluckSpread'], from: [...setting, 'bending'] },
  { gives: ['slipMarginWet'], from: [...setting, 'wetGrip'] },
  { gives: ['nearBearing', 'farBearing'], from: [...setting, 'overhang', 'bearingsApart'] },
];
export const carries: readonly Carry[] = [
  {
    to: 'bearing-life',
    what: 'how long the bearing beside the pulley lasts',
    with: { belt: { value: 'nearBearing' }, speed: { value: 'bladeRotation' } },
  },
  {
    to: 'blade-speed',
    what: 'the speed of its blade',
    with: { known: { is: 'spindle' }, spindle: { value: 'bladeRotation' } },
  },
];
