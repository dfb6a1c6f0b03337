/** Bolt torque: torque and preload by size, class and state of the thread. */
import type { Part } from '../../contract/part.ts';
import * as all from './formulas.ts';

export { fields } from './fields.ts';
export { compute, stripReserve } from './compute.ts';
export { blocks } from './blocks.ts';
export { words } from './words.ts';
export {
  inchStressArea,
  preload,
  preloadAt,
  stressArea,
  stripForce,
  tighteningTorque,
  torqueFactor,
} from './torque.ts';
export {
  conditionOf,
  conditions,
  gradeProofStress,
  inchThreadOf,
  inchThreads,
  proofStress,
  sizes,
  threadOf,
  threads,
  type BoltClass,
  type BoltSize,
  type InchGrade,
  type InchSize,
  type Thread,
  type ThreadState,
} from './tables.ts';

export const title = 'Bolt torque';
export const formulas = Object.values(all);
export const sources = [
  'iso-898-1',
  'shigley-bolts',
  'preload-scatter-memory',
  'jindal-bolts',
  'ifi-torque-table',
  'thread-shear',
  'iso-4042',
  'common-practice',
];
export const hazards = ['bolt-breaks'];
export const plate = { size: 'bladeBolt', leftHand: 'bladeBoltLeftHand' };
export const example = { size: 'M8', boltClass: '8.8', state: 'oiled', into: 'steel' };
const bolt = ['series', 'size', 'inchSize', 'boltClass', 'grade'];
const pull = [...bolt, 'share', 'into', 'engaged', 'shear'];
export const decides = {
  plated: ['series', 'boltClass', 'state'],
  casting: pull,
  overload: [...pull, 'state'],
  stateNote: ['state', 'locker'],
  leftHand: ['leftHand'],
  locker: ['locker', 'state'],
};
export const parts: readonly Part[] = [
  { gives: ['proofLoad'], from: bolt },
  { gives: ['factor'], from: ['state', 'ownFactor'] },
  { gives: ['strips'], from: ['series', 'size', 'inchSize', 'into', 'engaged', 'shear'] },
  { gives: ['preload', 'shareAtMost'], from: [...pull, 'state'] },
  { gives: ['states'], from: pull },
];
