/** The calculators. */
export { kit as say } from './en/kit.ts';
export { how as howSeen, level as signalWord } from './en/marks.ts';
