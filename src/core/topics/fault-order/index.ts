/** What to check first: the order of least expected minutes for a complaint, worked out again after every answer. */
import type { Part } from '../../contract/part.ts';
import * as all from './formulas.ts';

export { fields } from './fields.ts';
export { compute } from './compute.ts';
export { blocks } from './blocks.ts';
export { words } from './words.ts';
export {
  planOrder,
  planInPieces,
  updateAfter,
  type Plan,
  type PlannedCheck,
  type FoundSuspect,
  type PathEnd,
  type PathStep,
  type Belief,
  type SuspectChance,
} from './plan.ts';
export type { FaultModel, Suspect, Check, Tell, StripDown, Seen, OrderOptions } from './model.ts';
export { exactChecks, exactSuspects } from './exact.ts';
export { orderBySingles, expectedOfOrder, blockRatio, afterFinding } from './single-checks.ts';
export { repeatedSearch } from './repeat.ts';
export { halfSplit, type HalfSplit } from './half-split.ts';

export const title = 'What to check first';
export const formulas = Object.values(all);
export const sources = [
  'arithmetic',
  'common-practice',
  'kadane-simon',
  'bayes-rule',
  'blackwell-search',
  'half-split-method',
];
export const hazards = ['unexpected-start'];
/** Every box has a say in what comes next. */
export const decides = {
  verdict: ['suspects', 'checks', 'stripDowns', 'complete', 'confirmLast', 'sure', 'fallbackMinutes', 'labourRate'],
};
export const parts: readonly Part[] = [{ gives: ['beliefs'], from: ['suspects', 'checks', 'stripDowns', 'complete'] }];
/** Suspects and checks are the ones the form starts with. */
export const example = { complete: false, fallbackMinutes: 60 };
