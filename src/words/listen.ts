/** Listening to a belt. */
export { listen as listenWords } from './en/listen.ts';
