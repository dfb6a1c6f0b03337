/** Sound: how a note is found in what a microphone hears, for a plucked belt and for a running engine. Not a calculator itself. */
export { firstGoodHill, hills, likeness, likenessAt, thinned, topAt, type Fit } from './repeats.ts';
export {
  cycleTurns,
  firingFrequency,
  listenedRange,
  type Engine,
  type ListenedAt,
  type RotationRange,
} from './engine.ts';
export { engineNote, type EngineNote, type Heard, type NoSpeed } from './engine-note.ts';
export {
  clearFrom,
  leastError,
  readingsKept,
  settled,
  steadyWithin,
  unsteadyFrom,
  type Settled,
  type Speed,
} from './settled.ts';
