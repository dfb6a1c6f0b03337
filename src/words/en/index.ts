/** English: what customers read, and with it what every language must bring. The bench's own words stand beside it. */
export { check } from './check.ts';
export { daySums } from './day-sums.ts';
export { figures } from './figures.ts';
export { frame } from './frame.ts';
export { machineKinds } from './machine-kinds.ts';
export { notice } from './notice.ts';
export { pages } from './pages.ts';
export { quote } from './quote.ts';
export { search } from './search.ts';
export { customerPaper } from './sheet.ts';
export { start } from './start.ts';
export { tables } from './tables.ts';
export { reading } from './reading.ts';
export { newGuide, newShop } from './writing.ts';
export { speech } from './speech.ts';
