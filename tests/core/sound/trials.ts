/** Exhaust notes with known speed, spoiled in the ways a yard spoils them, and how far what is heard lies off. */
import {
  engineNote,
  listenedRange,
  settled,
  type Engine,
  type ListenedAt,
  type Settled,
} from '../../../src/core/sound/index.ts';
import { exhaustNote, type Exhaust } from './exhaust.ts';

export interface Saw {
  readonly name: string;
  readonly engine: Engine;
  readonly at: ListenedAt;
  readonly rpm: number;
}

export const saws: readonly Saw[] = [
  { name: 'two-stroke, one cylinder, idle', engine: { strokes: 2, cylinders: 1 }, at: 'idle', rpm: 2700 },
  { name: 'two-stroke, one cylinder, take-hold', engine: { strokes: 2, cylinders: 1 }, at: 'take-hold', rpm: 3900 },
  { name: 'two-stroke, one cylinder, full', engine: { strokes: 2, cylinders: 1 }, at: 'full', rpm: 9500 },
  { name: 'two-stroke, two cylinders, full', engine: { strokes: 2, cylinders: 2 }, at: 'full', rpm: 8200 },
  { name: 'four-stroke, one cylinder, idle', engine: { strokes: 4, cylinders: 1 }, at: 'idle', rpm: 1450 },
  { name: 'four-stroke, one cylinder, full', engine: { strokes: 4, cylinders: 1 }, at: 'full', rpm: 3600 },
  { name: 'four-stroke, V of two, full', engine: { strokes: 4, cylinders: 2 }, at: 'full', rpm: 3450 },
];

export interface Spoil {
  readonly name: string;
  readonly how: Partial<Exhaust>;
  /** The greatest error the page on clutches owns to, as a share; half a percent where nothing stands here. */
  readonly within?: number;
}

/** What must be heard all the same. */
export const borne: readonly Spoil[] = [
  { name: 'clean', how: {}, within: 0.001 },
  { name: 'fundamental missing (nothing below 200 Hz)', how: { deafBelow: 200 }, within: 0.001 },
  { name: 'second overtone loudest', how: { rings: [310], decay: 0.006 }, within: 0.001 },
  { name: 'long ringing muffler', how: { rings: [170, 390], decay: 0.01 }, within: 0.001 },
  { name: 'hiss as loud as the note', how: { noise: 1 }, within: 0.001 },
  { name: 'one firing in twenty fails', how: { misfires: 0.05 } },
  { name: 'one firing in ten fails', how: { misfires: 0.1 } },
  { name: 'firing uneven by 2 % in time, 30 % in loudness', how: { jitter: 0.02, uneven: 0.3 } },
  { name: 'speed drifts by 1 % a second', how: { drift: 0.01 } },
  { name: 'another tone, a quarter as loud', how: { tone: [131, 0.25] } },
  { name: 'echo from a wall 2 m away', how: { echo: [0.0117, 0.6] }, within: 0.001 },
  { name: 'microphone clips at a third', how: { clip: 0.33 }, within: 0.001 },
];

/** What may go unheard, but must not be heard wrong without a word. */
export const hard: readonly Spoil[] = [
  { name: 'one firing in three fails', how: { misfires: 0.33 } },
  { name: 'firing uneven by 6 % in time, half in loudness', how: { jitter: 0.06, uneven: 0.5 } },
  { name: 'speed drifts by 10 % a second', how: { drift: 0.1 } },
  { name: 'hiss four times as loud as the note', how: { noise: 4 } },
  { name: 'all at once', how: { noise: 0.5, jitter: 0.03, uneven: 0.3, misfires: 0.08, deafBelow: 150, drift: 0.02 } },
];

/** Another machine as loud as the engine: no ear can know which of them was meant. */
export const drowned: readonly Spoil[] = [
  { name: 'another tone (131 Hz), as loud', how: { tone: [131, 1] } },
  { name: 'another tone (57 Hz), as loud', how: { tone: [57, 1] } },
  { name: 'another tone (131 Hz), twice as loud', how: { tone: [131, 2] } },
];

const rate = 48000;

/** As the page listens: some three seconds, a reading every 120 ms. */
export function listenTo(saw: Saw, how: Partial<Exhaust>, seed: number): Settled {
  const stretch = saw.engine.strokes === 4 ? 32768 : 16384;
  const v = saw.engine.strokes === 4 && saw.engine.cylinders === 2 ? { secondAt: 0.375 } : {};
  const sound = exhaustNote({ engine: saw.engine, rpm: saw.rpm, seed, ...v, ...how }, rate, 3);
  const range = listenedRange[saw.at][saw.engine.strokes];
  const readings = [];
  for (let from = 0; from + stretch <= sound.length; from += 0.12 * rate)
    readings.push(engineNote(sound.subarray(from, from + stretch), rate, saw.engine, range));
  return settled(readings);
}

export interface Outcome {
  /** `right` within 1.5 % of a speed the engine had while it was listened to; `either` with that speed as one of the two. */
  readonly is: 'right' | 'either' | 'refused' | 'wrong';
  /** Share by which it lies off, where right. */
  readonly off: number;
  readonly said: Settled;
}

export function judge(saw: Saw, how: Partial<Exhaust>, seed: number): Outcome {
  const said = listenTo(saw, how, seed);
  // The middle of the time listened to.
  const truth = (saw.rpm / 60) * (1 + 1.5 * (how.drift ?? 0));
  const off = (r: number) => Math.abs(r / truth - 1);
  const near = 0.015 + 1.2 * Math.abs(how.drift ?? 0);
  if (said.kind === 'speed')
    return { is: off(said.rotation) <= near ? 'right' : 'wrong', off: off(said.rotation), said };
  if (said.kind !== 'either') return { is: 'refused', off: 0, said };
  const least = Math.min(off(said.rotation), off(said.other));
  return { is: least <= near ? 'either' : 'wrong', off: least, said };
}
