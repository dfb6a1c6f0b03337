/** The bench strip and what the device says. */
export { strip as stripWords } from './en/strip.ts';
