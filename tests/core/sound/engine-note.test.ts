/** The speed of an engine from made exhaust notes whose speed is known: heard right, refused with a reason, hardly ever wrong. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  clearFrom,
  engineNote,
  firingFrequency,
  leastError,
  listenedRange,
  settled,
  steadyWithin,
  unsteadyFrom,
  type Heard,
} from '../../../src/core/sound/index.ts';
import { runs } from '../../runs.ts';
import { chance, exhaustNote } from './exhaust.ts';
import { borne, hard, judge, listenTo, saws, type Saw } from './trials.ts';

const [idling, , full, twin, , , vee] = saws as readonly [Saw, Saw, Saw, Saw, Saw, Saw, Saw];
const rate = 48000;
const stretch = 16384;
const one = { strokes: 2, cylinders: 1 } as const;

describe('firings', () => {
  // Once a turn and cylinder in a two-stroke, every second turn in a four-stroke. Source: arithmetic of the two cycles.
  it.each([
    [60, 2, 1, 60],
    [60, 2, 2, 120],
    [60, 4, 1, 30],
    [60, 4, 2, 60],
  ] as const)('%s turns a second, %s strokes, %s cylinders: %s a second', (turns, strokes, cylinders, wanted) => {
    expect(firingFrequency(turns, { strokes, cylinders })).toBe(wanted);
  });
});

describe('an exhaust note that is spoiled', () => {
  // Every way with three of the seven saws in turn; the bench (npm run bench -- engine) does them all.
  const trials = borne.flatMap((spoil, k) => [0, 2, 4].map((step) => ({ spoil, saw: saws[(k + step) % 7] ?? idling })));
  it.each(trials.map((t) => [t.spoil.name, t.saw.name, t] as const))('%s: %s', (_, __, { spoil, saw }) => {
    const heard = judge(saw, spoil.how, 7919);
    expect(['right', 'either'], JSON.stringify(heard.said)).toContain(heard.is);
    // 0.5 % of 9500 rpm is 48. Drift: by how much the speed changes in a second.
    expect(heard.off).toBeLessThan((spoil.within ?? leastError) + Math.abs(spoil.how.drift ?? 0));
  });

  const tough = hard.flatMap((spoil, k) => [0, 3].map((step) => ({ spoil, saw: saws[(k + step) % 7] ?? idling })));
  it.each(tough.map((t) => [t.spoil.name, t.saw.name, t] as const))(
    'never wrong without a word: %s: %s',
    (_, __, t) => {
      expect(judge(t.saw, t.spoil.how, 7919).is).not.toBe('wrong');
    },
  );

  it('is refused as a hum when there is no engine, only a plain tone', () => {
    const tone = Float32Array.from({ length: stretch }, (_, i) => 0.2 * Math.sin((2 * Math.PI * 50 * i) / rate));
    expect(engineNote(tone, rate, one, listenedRange.idle[2])).toEqual({ kind: 'none', why: 'hum' });
  });

  it('is not found in hiss, nor in silence, nor in a stretch too short', () => {
    const random = chance(5);
    const hiss = () => Float32Array.from({ length: stretch }, () => 2 * random() - 1);
    const readings = Array.from({ length: 24 }, () => engineNote(hiss(), rate, one, listenedRange.full[2]));
    expect(settled(readings)).toEqual({ kind: 'cannot-tell', why: 'nothing-repeats' });
    const silent = { kind: 'none', why: 'silent' };
    expect(engineNote(new Float32Array(stretch), rate, one, listenedRange.full[2])).toEqual(silent);
    expect(engineNote(hiss().slice(0, 2000), rate, one, listenedRange.idle[2])).toEqual(silent);
  });

  it('at a speed that nobody asked for is out of range, not bent into it', () => {
    const note = exhaustNote({ engine: one, rpm: 2700 }, rate, 0.4).subarray(0, stretch);
    expect(engineNote(note, rate, one, listenedRange.full[2])).toEqual({ kind: 'none', why: 'out-of-range' });
  });
});

describe('half and twice the speed', () => {
  it('a rich two-stroke that fires every second turn is heard at its true speed where half of it is out of range', () => {
    const heard = judge(full, { everySecond: 0.5 }, 7919);
    expect(heard.is, JSON.stringify(heard.said)).toBe('right');
  });

  it('where both lie in the range, both are said', () => {
    // Two cylinders that sound alike: 2 x 100 firings a second are 6000 rpm, or 12000 of one that sounds once a turn.
    const wide = { lowest: 2000 / 60, highest: 14000 / 60 };
    const note = exhaustNote({ engine: one, rpm: 6000, rings: [200], decay: 0.004 }, rate, 0.4).subarray(0, stretch);
    const heard = engineNote(note, rate, { strokes: 4, cylinders: 2 }, wide);
    expect(heard.kind).toBe('speed');
    if (heard.kind !== 'speed') return;
    const both = [heard.rotation, heard.other ?? 0].map((r) => Math.round(r)).sort((a, b) => a - b);
    expect(both).toEqual([100, 200]);
  });

  it('two cylinders alike, one of them weak, and a V with uneven firing give the same speed', () => {
    for (const [saw, how] of [
      [twin, {}],
      [twin, { second: 0.6 }],
      [vee, {}],
      [vee, { secondAt: 0.5 }],
    ] as const) {
      const said = listenTo(saw, how, 7919);
      expect(said.kind, `${saw.name} ${JSON.stringify(how)}`).toBe('speed');
      if (said.kind === 'speed') expect(Math.abs((said.rotation * 60) / saw.rpm - 1)).toBeLessThan(leastError);
    }
  });
});

describe('any sound', () => {
  it('gives a clarity from 0 to 1 and speeds inside the range only', () => {
    fc.assert(
      fc.property(
        fc.float32Array({ minLength: 0, maxLength: 9000, noNaN: true, min: -1, max: 1 }),
        fc.integer({ min: 8000, max: 96000 }),
        fc.constantFrom(...saws),
        (samples, any, saw) => {
          const range = listenedRange[saw.at][saw.engine.strokes];
          const found = engineNote(samples, any, saw.engine, range);
          if (found.kind === 'none') return true;
          const inside = (r: number) => r >= range.lowest && r <= range.highest;
          return (
            found.clarity >= 0 && found.clarity <= 1 && inside(found.rotation) && inside(found.other ?? found.rotation)
          );
        },
      ),
      { numRuns: runs(60) },
    );
  });

  it('does not depend on loudness or on an offset of the microphone', () => {
    const note = exhaustNote({ engine: one, rpm: 2700 }, rate, 0.4).subarray(0, stretch);
    const of = (x: Float32Array) => engineNote(x, rate, one, listenedRange.idle[2]);
    const plain = of(note);
    expect(plain.kind).toBe('speed');
    for (const other of [note.map((v) => v * 1e-3), note.map((v) => v + 0.4)]) {
      const heard = of(other);
      if (plain.kind === 'speed') expect(heard.kind === 'speed' && heard.rotation).toBeCloseTo(plain.rotation, 3);
    }
  });
});

describe('readings settle', () => {
  const reading = (rotation: number, clarity = 0.95, other?: number): Heard =>
    other === undefined ? { kind: 'speed', rotation, clarity } : { kind: 'speed', rotation, clarity, other };
  const times = (n: number, r: (k: number) => Heard) => Array.from({ length: n }, (_, k) => r(k));
  const none: Heard = { kind: 'none', why: 'hum' };

  it('not before twelve of them', () => {
    expect(settled(times(11, () => reading(45)))).toEqual({ kind: 'listening' });
    expect(settled(times(12, () => reading(45)))).toEqual({ kind: 'speed', rotation: 45, within: 0.225, sure: 'sure' });
  });

  it('when two in three are clear, not when one less is', () => {
    const of = (clear: number) => settled([...times(clear, () => reading(45)), ...times(24 - clear, () => none)]);
    expect(of(16).kind).toBe('speed');
    expect(of(15)).toEqual({ kind: 'cannot-tell', why: 'hum' });
  });

  it('a reading is clear from three quarters on', () => {
    expect(settled(times(24, () => reading(45, clearFrom))).kind).toBe('speed');
    expect(settled(times(24, () => reading(45, clearFrom - 0.001)))).toEqual({
      kind: 'cannot-tell',
      why: 'nothing-repeats',
    });
  });

  it('sure below one percent of spread, fair from there, unsteady from four', () => {
    // Half of them over and half under by so much: the spread is that.
    const spread = (s: number) => settled(times(24, (k) => reading(45 * (1 + (k % 2 === 0 ? s : -s)))));
    const sureness = (s: number) => {
      const said = spread(s);
      return said.kind === 'speed' ? said.sure : said.kind === 'cannot-tell' ? said.why : said.kind;
    };
    expect(sureness(steadyWithin * 0.98)).toBe('sure');
    expect(sureness(steadyWithin * 1.02)).toBe('fair');
    expect(sureness(unsteadyFrom * 0.95)).toBe('fair');
    expect(sureness(unsteadyFrom * 1.05)).toBe('unsteady');
  });

  it('not while they jump between two speeds, and both are said where both fit', () => {
    expect(settled(times(24, (k) => reading(k % 3 === 0 ? 90 : 45)))).toEqual({ kind: 'cannot-tell', why: 'jumps' });
    expect(settled(times(24, (k) => reading(45, 0.95, k < 6 ? 90 : undefined)))).toEqual({
      kind: 'either',
      rotation: 45,
      other: 90,
    });
    expect(settled(times(24, (k) => reading(45, 0.95, k < 5 ? 90 : undefined))).kind).toBe('speed');
  });

  it('by the newest three seconds only', () => {
    const said = settled([...times(40, () => reading(90)), ...times(24, () => reading(45))]);
    expect(said.kind === 'speed' && said.rotation).toBe(45);
  });
});
