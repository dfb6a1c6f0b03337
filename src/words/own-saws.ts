/** Saws a mechanic adds on the device. */
export { ownSaws as ownSawWords } from './en/own-saws.ts';
