/** Spanish: what a customer reads. */
export { frame } from './frame.ts';
export { notice } from './notice.ts';
export { quote } from './quote.ts';
export { search } from './search.ts';
export { customerPaper } from './sheet.ts';
export { start } from './start.ts';
export { check } from './check.ts';
export { daySums } from './day-sums.ts';
