/** Bolt torque: torque and preload by size, class and state of the thread. */
import * as all from './formulas.ts';

export { fields } from './fields.ts';
export { compute } from './compute.ts';
export { blocks } from './blocks.ts';
export { words } from './words.ts';
export { preload, preloadAt, stressArea, tighteningTorque, torqueFactor } from './torque.ts';
export {
  conditionOf,
  conditions,
  proofStress,
  sizes,
  threadOf,
  threads,
  type BoltClass,
  type BoltSize,
  type Thread,
  type ThreadState,
} from './tables.ts';

export const title = 'Bolt torque';
export const formulas = Object.values(all);
export const sources = ['iso-898-1', 'shigley-bolts', 'preload-scatter-memory', 'jindal-bolts', 'common-practice'];
export const hazards = ['bolt-breaks'];
export const example = { size: 'M8', boltClass: '8.8', state: 'oiled', into: 'steel', leftHand: 'yes', locker: 'no' };
