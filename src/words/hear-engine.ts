/** The way to the engine's ear, under a speed box. */
export { engineEar as engineEarWords } from './en/hear-engine.ts';
