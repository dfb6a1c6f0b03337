import { describe, expect, it } from 'vitest';
import { hear, nothingHeard, noteOf, type Heard } from '../../src/islands/BeltTension/listen/plucks.ts';

const note = (frequency: number, clarity = 0.98) => ({ frequency, clarity });
const silence = undefined;
const after = (...readings: (ReturnType<typeof note> | undefined)[]): Heard => readings.reduce(hear, nothingHeard);

describe('plucks', () => {
  it('are told apart by the silence between them, newest first', () => {
    const heard = after(note(110), note(111), note(112), silence, note(113), note(113), note(113), silence);
    expect(heard.plucks).toEqual([113, 111]);
    expect(noteOf(heard)).toBe(113);
  });

  it('count from three clear readings on: a single one may be a knock', () => {
    expect(after(note(110), note(110), silence).plucks).toEqual([]);
    expect(noteOf(after(note(110), note(110)))).toBeUndefined();
    expect(noteOf(after(note(110), note(110), note(110)))).toBe(110);
  });

  it('are not made of unclear readings', () => {
    expect(after(note(110, 0.6), note(110, 0.6), note(110, 0.6), silence).plucks).toEqual([]);
  });

  it('start anew when the note jumps, as to the first overtone', () => {
    expect(after(note(110), note(110), note(110), note(220), note(220), note(220), silence).plucks).toEqual([220, 110]);
  });

  it('give the middle reading, so that one stray does not move the figure', () => {
    expect(noteOf(after(note(110), note(110.2), note(112.9), note(110.1), note(110.1)))).toBe(110.1);
  });

  it('are kept three deep', () => {
    const one = (f: number) => [note(f), note(f), note(f), silence];
    expect(after(...one(100), ...one(120), ...one(140), ...one(160)).plucks).toEqual([160, 140, 120]);
  });
});
