/** English: every part. */
export { aboutMinutes, fault, minutes, percent } from './faults.ts';
export { frame } from './frame.ts';
export { engineEar } from './hear-engine.ts';
export { kit } from './kit.ts';
export { listen } from './listen.ts';
export { how, level } from './marks.ts';
export { notice } from './notice.ts';
export { quote } from './quote.ts';
export { search } from './search.ts';
export { strip } from './strip.ts';
export { customerPaper, sheet } from './sheet.ts';
export { ownSaws } from './own-saws.ts';
export { start } from './start.ts';
export { check } from './check.ts';
export { daySums } from './day-sums.ts';
