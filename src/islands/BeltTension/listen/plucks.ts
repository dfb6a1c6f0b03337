/** From one reading after another to plucks: readings that are clear and agree belong to the same one. */
import { findPitch, type Pitch } from '../../../core/topics/belt-tension/index.ts';
import { shortStretch } from '../../listen/microphone.ts';
import type { Ear } from '../../listen/use-listening.ts';

export interface Heard {
  /** The newest reading, clear or not. */
  readonly now: Pitch | undefined;
  /** Readings of the pluck that still sounds. */
  readonly sounding: readonly number[];
  /** Notes of finished plucks [Hz], newest first. */
  readonly plucks: readonly number[];
}

export const nothingHeard: Heard = { now: undefined, sounding: [], plucks: [] };

/** From here a reading counts. Below it a voice, a fan or another machine may be what sounds. */
export const clear = 0.9;
/** Readings of one pluck lie this close together. */
const agree = 0.03;
/** A single clear reading may be a knock; a belt sounds on. */
const leastReadings = 3;
const kept = 3;

export function hear(before: Heard, now: Pitch | undefined): Heard {
  const note = now && now.clarity >= clear ? now.frequency : undefined;
  const last = before.sounding.at(-1);
  if (note !== undefined && (last === undefined || Math.abs(note / last - 1) <= agree))
    return { ...before, now, sounding: [...before.sounding, note] };
  const plucks =
    before.sounding.length >= leastReadings
      ? [middle(before.sounding), ...before.plucks].slice(0, kept)
      : before.plucks;
  return { now, sounding: note === undefined ? [] : [note], plucks };
}

/** What to offer as the figure: the pluck that sounds now, else the last one. */
export function noteOf({ sounding, plucks }: Heard): number | undefined {
  return sounding.length >= leastReadings ? middle(sounding) : plucks[0];
}

function middle(readings: readonly number[]): number {
  const sorted = [...readings].sort((a, b) => a - b);
  const half = Math.floor(sorted.length / 2);
  return sorted.length % 2 === 1 ? (sorted[half] ?? 0) : ((sorted[half - 1] ?? 0) + (sorted[half] ?? 0)) / 2;
}

export const beltEar: Ear<Heard> = {
  nothing: nothingHeard,
  stretch: shortStretch,
  pause: 80,
  hear: (before, samples, rate) => hear(before, samples && findPitch(samples, rate)),
};
