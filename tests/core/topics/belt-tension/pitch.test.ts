import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findPitch } from '../../../../src/core/topics/belt-tension/index.ts';
import { runs } from '../../../runs.ts';

const rate = 48000;
/** As many samples as the page listens to at once. */
const length = 16384;

interface Sound {
  readonly frequency: number;
  /** Loudness of the first, second, third ... partial. */
  readonly partials: readonly number[];
  /** Time in which it falls to 1/e [s]. */
  readonly decay: number;
  /** Loudness of the hiss; the note is about 1. */
  readonly noise: number;
  readonly seed: number;
}

/** A pluck made from its definition: partials at whole multiples, each dying away, and hiss over it. */
function pluck({ frequency, partials, decay, noise, seed }: Sound): Float32Array {
  let state = seed % 2147483647 || 1;
  const random = () => (state = (state * 16807) % 2147483647) / 2147483647;
  return Float32Array.from({ length }, (_, i) => {
    const t = i / rate;
    const note = partials.reduce((sum, a, k) => sum + a * Math.sin(2 * Math.PI * (k + 1) * frequency * t + k * 0.7), 0);
    return 0.2 * (note * Math.exp(-t / decay) + noise * (2 * random() - 1));
  });
}

/** Another way to the same figure: the highest line of a windowed Fourier spectrum read every 0.05 Hz. */
function spectrumPeak(samples: Float32Array, from: number, to: number): number {
  const strength = (f: number) => {
    let [re, im] = [0, 0];
    for (let i = 0; i < samples.length; i += 8) {
      const w = 0.5 - 0.5 * Math.cos((2 * Math.PI * i) / samples.length);
      re += w * (samples[i] ?? 0) * Math.cos((2 * Math.PI * f * i) / rate);
      im += w * (samples[i] ?? 0) * Math.sin((2 * Math.PI * f * i) / rate);
    }
    return re * re + im * im;
  };
  const lines = Array.from({ length: Math.floor((to - from) / 0.05) + 1 }, (_, i) => from + i * 0.05).map((f) => ({
    f,
    s: strength(f),
  }));
  return lines.reduce((best, line) => (line.s > best.s ? line : best)).f;
}

const frequencies = fc.double({ min: 20, max: 300, noNaN: true });
const sounds = fc
  .record({
    frequency: frequencies,
    partials: fc.tuple(
      fc.constant(1),
      fc.double({ min: 0, max: 0.8, noNaN: true }),
      fc.double({ min: 0, max: 0.5, noNaN: true }),
      fc.double({ min: 0, max: 0.3, noNaN: true }),
    ),
    decay: fc.double({ min: 0.15, max: 2, noNaN: true }),
    noise: fc.double({ min: 0, max: 0.15, noNaN: true }),
    seed: fc.integer({ min: 1, max: 2147483646 }),
  })
  // A belt that dies within fewer than six turns has no note to speak of.
  .map((s) => ({ ...s, decay: Math.max(s.decay, 6 / s.frequency) }));

describe('the note of a plucked belt', () => {
  it('is found within half a percent, with overtones and hiss, from 20 to 300 Hz', () => {
    // Half a percent of the note is one percent of the tension; a belt window is tens of percent wide.
    fc.assert(
      fc.property(sounds, (s) => Math.abs((findPitch(pluck(s), rate)?.frequency ?? 0) / s.frequency - 1) < 0.005),
      { numRuns: runs(100) },
    );
  });

  it('is found within 0.05 percent when nothing else sounds', () => {
    fc.assert(
      fc.property(
        frequencies,
        (frequency) =>
          Math.abs(
            (findPitch(pluck({ frequency, partials: [1], decay: 1e9, noise: 0, seed: 1 }), rate)?.frequency ?? 0) /
              frequency -
              1,
          ) < 0.0005,
      ),
      { numRuns: runs(100) },
    );
  });

  it.each([20, 31.5, 47, 60, 88.8, 112, 163, 220, 299])('agrees with the Fourier spectrum at %s Hz', (frequency) => {
    const sound = pluck({ frequency, partials: [1, 0.5, 0.25], decay: 0.5, noise: 0.1, seed: 7 });
    const other = spectrumPeak(sound, frequency * 0.9, frequency * 1.1);
    // The window of 0.34 s spreads a low note over several turns only, so the spectrum itself is good to about 0.1 Hz.
    expect(Math.abs((findPitch(sound, rate)?.frequency ?? 0) - other)).toBeLessThan(0.15 + 0.003 * frequency);
  });

  it('is the fundamental even when the first overtone is louder', () => {
    for (const frequency of [40, 75, 112, 180]) {
      expect(
        findPitch(pluck({ frequency, partials: [1, 1.8, 0.6], decay: 0.6, noise: 0.05, seed: 3 }), rate)?.frequency,
      ).toBeCloseTo(frequency, -0.5);
    }
  });

  it('does not depend on loudness, on an offset of the microphone, or on the rate it samples at', () => {
    const sound = pluck({ frequency: 112, partials: [1, 0.4], decay: 0.4, noise: 0.02, seed: 5 });
    const plain = findPitch(sound, rate)?.frequency ?? 0;
    expect(
      findPitch(
        sound.map((v) => v * 1e-3),
        rate,
      )?.frequency,
    ).toBeCloseTo(plain, 4);
    expect(
      findPitch(
        sound.map((v) => v + 0.5),
        rate,
      )?.frequency,
    ).toBeCloseTo(plain, 3);
    // The same samples played at another rate are another note, in the same ratio.
    expect((findPitch(sound, 44100)?.frequency ?? 0) / plain).toBeCloseTo(44100 / 48000, 3);
  });
});

describe('how sure the figure is', () => {
  it('is over 0.9 for a clean pluck and falls with hiss', () => {
    const clarity = (noise: number) =>
      findPitch(pluck({ frequency: 112, partials: [1, 0.4], decay: 0.5, noise, seed: 11 }), rate)?.clarity ?? 0;
    expect(clarity(0)).toBeGreaterThan(0.95);
    expect(clarity(0.5)).toBeLessThan(clarity(0.05));
    expect(clarity(20)).toBeLessThan(0.6);
  });

  it('is never outside 0 to 1, and no figure lies outside the notes looked for', () => {
    fc.assert(
      fc.property(
        fc.float32Array({ minLength: 0, maxLength: 6000, noNaN: true, min: -1, max: 1 }),
        fc.integer({ min: 8000, max: 96000 }),
        (samples, any) => {
          const found = findPitch(samples, any);
          return (
            found === undefined ||
            (found.clarity >= 0 && found.clarity <= 1 && found.frequency >= 15 && found.frequency <= 400)
          );
        },
      ),
      { numRuns: runs(200) },
    );
  });

  it('is not claimed at all for silence or for a stretch too short for two turns', () => {
    expect(findPitch(new Float32Array(length), rate)).toBeUndefined();
    expect(findPitch(new Float32Array(0), rate)).toBeUndefined();
    expect(
      findPitch(pluck({ frequency: 100, partials: [1], decay: 1, noise: 0, seed: 1 }).slice(0, 2000), rate),
    ).toBeUndefined();
  });

  it('is not claimed outside the range asked for, where the search for it still reaches a little further', () => {
    const heard = (frequency: number) =>
      findPitch(pluck({ frequency, partials: [1], decay: 5, noise: 0, seed: 1 }), rate)?.frequency;
    for (const inside of [15.1, 395]) expect(heard(inside)).toBeCloseTo(inside, 0);
    for (const outside of [14.97, 405, 415]) expect(heard(outside), `${outside} Hz`).toBeUndefined();
  });
});
