/** A room with exhaust in it: what the answer may never say, the equation's properties, thresholds from both sides. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { concentrationAt, density, timeTo, type Room } from '../../../../src/core/topics/fume-room/index.ts';
import { topics } from '../../../../src/core/registry.ts';
import { sayer } from '../../../../src/core/contract/messages.ts';
import { answersAnything } from '../../any-input.ts';
import { answerOf, codeOf, figureOf, has } from '../answer.ts';

const name = 'fume-room';
const room = fc.record({
  volume: fc.double({ min: 5, max: 5000, noNaN: true }),
  changes: fc.double({ min: 0, max: 200 / 3600, noNaN: true }),
});
const source = fc.double({ min: 1e-7, max: 1e-3, noNaN: true });

describe('the answer', () => {
  const figures = fc.record({
    length: fc.double({ min: 0.5, max: 200, noNaN: true }),
    height: fc.double({ min: 0.5, max: 50, noNaN: true }),
    air: fc.constantFrom('shut', 'changes', 'fan'),
    changes: fc.double({ min: 0, max: 200, noNaN: true }),
    fan: fc.double({ min: 0, max: 1e6, noNaN: true }),
    power: fc.double({ min: 0.1, max: 200, noNaN: true }),
    run: fc.double({ min: 0.1, max: 1440, noNaN: true }),
  });

  it('to an engine in a room is a refusal, however large the room and strong the fan', () =>
    fc.assert(
      fc.property(figures, (f) => {
        const a = answerOf(name, { ...f, what: 'engine' });
        expect(codeOf(a, 'engine')).toBe('engine');
        for (const v of a.values) if (v.kind === 'verdict') expect(v.level, v.key).not.toBe('good');
      }),
    ));

  it('is never a permit: each begins with do not or with ventilate and measure', () => {
    const say = sayer({ system: 'metric' });
    const verdicts = topics[name]?.words.verdicts ?? {};
    for (const [code, sentence] of Object.entries(verdicts)) {
      if (code === 'check-local') continue;
      expect(sentence({ wait: 600 }, say), code).toMatch(/^(Do not|Ventilate and measure)/);
    }
  });

  it('to a leak turns from measure to stop when the air ends over the lowest limit', () => {
    // 20 ppm in 100 m3 at one change an hour: 2e-3 m3/h of gas, by weight.
    const grams = (ppm: number) => ppm * 1e-6 * 100 * density * 1000;
    const at = (ppm: number) =>
      codeOf(
        answerOf(name, {
          what: 'leak',
          length: 10,
          width: 5,
          height: 2,
          air: 'changes',
          changes: 1,
          leak: grams(ppm),
          run: 60,
        }),
      );
    expect([19.9, 20, 20.1].map(at)).toEqual(['leak-measure', 'leak-measure', 'leak-stop']);
    expect(codeOf(answerOf(name, { what: 'leak', air: 'shut', leak: 0.001, run: 1 }))).toBe('leak-stop');
  });

  it('to exhaust left in the air waits for the meter, and says so without fresh air', () => {
    const at = (now: string, air = 'changes') => codeOf(answerOf(name, { what: 'stopped', now, air, changes: 6 }));
    expect(['19.9 ppm', '20 ppm', '20.1 ppm'].map((n) => at(n))).toEqual([
      'stopped-measure',
      'stopped-measure',
      'stopped-wait',
    ]);
    expect(at('400 ppm', 'shut')).toBe('stopped-shut');
  });

  it('never reached is no figure', () => {
    const a = answerOf(name, { air: 'changes', changes: 200, length: 50, width: 50, height: 10, power: 0.5 });
    expect(has(a, 'ceilingTime')).toBe(false);
    expect(codeOf(a, 'engine')).toBe('engine');
  });
});

describe('the room', () => {
  it('never clears while the engine runs, and never passes its end', () =>
    fc.assert(
      fc.property(room, source, fc.double({ min: 1, max: 36000, noNaN: true }), (r, g, t) => {
        const [now, later] = [concentrationAt(r, g, t), concentrationAt(r, g, t * 1.5)];
        expect(later).toBeGreaterThanOrEqual(now * (1 - 1e-9));
        if (r.changes > 0) expect(later).toBeLessThanOrEqual((g / (r.changes * r.volume)) * (1 + 1e-9));
      }),
    ));

  it('more air, a larger room or less exhaust is never worse', () =>
    fc.assert(
      fc.property(room, source, (r, g) => {
        const c = (x: Room, s: number) => concentrationAt(x, s, 600);
        expect(c({ ...r, changes: r.changes + 0.001 }, g)).toBeLessThanOrEqual(c(r, g) * (1 + 1e-9));
        expect(c({ ...r, volume: r.volume * 2 }, g)).toBeLessThanOrEqual(c(r, g) * (1 + 1e-9));
        expect(c(r, g / 2)).toBeCloseTo(c(r, g) / 2, 12);
      }),
    ));

  it('the time to a level leads back to the level', () =>
    fc.assert(
      fc.property(room, source, fc.double({ min: 1e-6, max: 0.01, noNaN: true }), (r, g, wanted) => {
        const t = timeTo(r, g, wanted);
        if (t !== undefined) expect(concentrationAt(r, g, t) / wanted).toBeCloseTo(1, 6);
        else expect(concentrationAt(r, g, 1e7)).toBeLessThanOrEqual(wanted * (1 + 1e-6));
      }),
    ));

  it('goes over into the room without air without a jump', () => {
    const r = { volume: 90, changes: 0 };
    for (const n of [1e-15, 1e-12, 1e-9, 1e-7])
      expect(concentrationAt({ ...r, changes: n }, 5e-4, 600) / concentrationAt(r, 5e-4, 600)).toBeCloseTo(1, 4);
  });

  it('thins by the same law from both ends: run for ten minutes in two parts', () => {
    const r = { volume: 90, changes: 2 / 3600 };
    const half = concentrationAt(r, 5e-4, 300);
    expect(concentrationAt(r, 5e-4, 300, half)).toBeCloseTo(concentrationAt(r, 5e-4, 600), 12);
  });
});

// 40 CFR 1054.105 Table 1 and its neighbors: ceilings for new engines, g/kWh.
it.each([
  ['hand-held', 603],
  ['hand-held-small', 805],
  ['walk-behind', 610],
])('%s: %d g of carbon monoxide for a kilowatt-hour', (kind, grams) => {
  const a = answerOf(name, { kind, power: '2 kW' });
  expect(figureOf(a, 'source') * 3.6e6).toBeCloseTo(2 * grams, 6);
});

it('a bench in a hall of 5000 m³ still passes 20 ppm within minutes of a hand-held saw', () => {
  const a = answerOf(name, { length: 50, width: 20, height: 5, air: 'shut', power: 3.2, run: 10 });
  expect(figureOf(a, 'end')).toBeGreaterThan(20e-6);
});

answersAnything(name);
