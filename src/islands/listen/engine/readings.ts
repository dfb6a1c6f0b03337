/** Readings of a running engine, newest last, and what they say together. */
import {
  engineNote,
  listenedRange,
  readingsKept,
  type Engine,
  type Heard,
  type ListenedAt,
} from '../../../core/sound/index.ts';
import { longStretch, shortStretch } from '../microphone.ts';
import type { Ear } from '../use-listening.ts';

export type Readings = readonly Heard[];

export const engineChoices = ['2-1', '2-2', '4-1', '4-2'] as const;
export type EngineChoice = (typeof engineChoices)[number];

const engines: Readonly<Record<EngineChoice, Engine>> = {
  '2-1': { strokes: 2, cylinders: 1 },
  '2-2': { strokes: 2, cylinders: 2 },
  '4-1': { strokes: 4, cylinders: 1 },
  '4-2': { strokes: 4, cylinders: 2 },
};

export function engineEarFor(choice: EngineChoice, at: ListenedAt): Ear<Readings> {
  const engine = engines[choice];
  const range = listenedRange[at][engine.strokes];
  return {
    nothing: [],
    stretch: engine.strokes === 4 ? longStretch : shortStretch,
    pause: 120,
    hear: (before, samples, rate) => {
      const newest: Heard = samples ? engineNote(samples, rate, engine, range) : { kind: 'none', why: 'silent' };
      return [...before, newest].slice(-readingsKept);
    },
  };
}

/** A speed as it is put in a box: to ten revolutions, which is finer than the ear is. */
export function wholeTens(rotation: number): string {
  return String(Math.round(rotation * 6) * 10);
}
