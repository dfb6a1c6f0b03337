import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compute, coolingTime, fields } from '../../../../src/core/topics/warming/index.ts';
import { growth, materials, temperatureChange, warmLoss } from '../../../../src/core/materials/index.ts';
import { readInputs } from '../../../../src/core/contract/read-inputs.ts';
import { valueOf } from '../../../../src/core/contract/result.ts';
import type { RawInputs } from '../../../../src/core/contract/field.ts';
import { answersAnything } from '../../any-input.ts';

function answer(raw: RawInputs) {
  const read = readInputs(fields, raw);
  const result = read.ok ? compute(read.inputs) : undefined;
  if (!result?.ok) throw new Error(`Refused: ${JSON.stringify(result ?? read)}`);
  return result;
}
const housing = { part: 'housing', diameter: 52, interference: 39 };

describe('warming', () => {
  answersAnything('warming', {
    interference: fc.double({ min: -30, max: 120, noNaN: true }),
    diameter: fc.double({ min: 10, max: 150, noNaN: true }),
  });

  it('at the temperature asked for, the part has grown by interference and gap', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.005, max: 0.5, noNaN: true }),
        fc.double({ min: 0, max: 2e-4, noNaN: true }),
        fc.double({ min: 0, max: 5e-5, noNaN: true }),
        fc.constantFrom(...Object.values(materials)),
        (d, I, c, m) => {
          expect(growth(d, m.alpha, temperatureChange(d, I, c, m.alpha))).toBeCloseTo(I + c, 12);
        },
      ),
    );
  });

  it('a part that goes in cold needs no warming', () => {
    expect(temperatureChange(0.052, -30e-6, 20e-6, 2e-5)).toBe(0);
    expect(valueOf(answer({ ...housing, interference: -30 }), 'warmVerdict', 'verdict').code).toBe('warm-not-needed');
  });

  it('stops a temperature past the ceiling, whether or not it opens the fit', () => {
    const said = (raw: RawInputs) => valueOf(answer(raw), 'heatTo', 'verdict');
    expect(said({ ...housing, heatTo: 150 })).toMatchObject({ code: 'heat-to-over', level: 'stop' });
    expect(said({ part: 'ring', diameter: 25, interference: 40, sealed: 'no', heatTo: 200 }).code).toBe('heat-to-over');
    expect(said({ ...housing, heatTo: 40 }).code).toBe('heat-to-short');
  });

  it('names a temperature past the ceiling as a need, not as something to do', () => {
    const labels = (raw: RawInputs) =>
      answer(raw)
        .values.filter((v) => v.key === 'temperature' || v.key === 'both')
        .map((v) => v.label);
    expect(labels(housing)).toEqual(['Warm the housing to', 'With the bearing chilled as well, warm to']);
    expect(labels({ ...housing, interference: 200 })).toEqual([
      'Warmth alone would take the housing to',
      'With the bearing chilled as well, it would still take',
    ]);
  });

  it('equal materials keep their fit at any temperature', () => {
    expect(warmLoss(0.052, 1.25e-5, 1.25e-5, 80)).toBe(0);
  });

  it('halving the rise takes the same time again and again', () => {
    const half = (from: number) => coolingTime(0.008, 2700, 900, 12, from, from / 2);
    expect(half(80)).toBeCloseTo(half(20), 9);
    // Two capacities in an independent sum: m c / (h A) of a 1 m2 plate 8 mm thick, cooled on both faces.
    expect(half(80)).toBeCloseTo(((0.008 * 2700 * 900) / (12 * 2)) * Math.LN2, 9);
  });

  it('stops at the ceiling of a sealed bearing, an open one and a housing', () => {
    const code = (raw: RawInputs) => valueOf(answer(raw), 'warmVerdict', 'verdict').code;
    expect(code({ part: 'ring', diameter: 25, interference: 21, sealed: true })).toBe('warm-sealed-over');
    expect(code({ part: 'ring', diameter: 25, interference: 21, sealed: false })).toBe('warm-ring-over');
    expect(code({ part: 'ring', diameter: 60, interference: 24, sealed: true })).toBe('warm-ring-ok');
    expect(code({ ...housing, sealed: true })).toBe('warm-housing-ok');
    expect(code({ ...housing, housingMaterial: 'grey-iron' })).toBe('warm-housing-ok');
    expect(code({ ...housing, interference: 90 })).toBe('warm-housing-over');
  });

  it('going hotter leaves more time', () => {
    const time = (heatTo: number) => valueOf(answer({ ...housing, heatTo }), 'openTime', 'quantity').value;
    expect(time(95)).toBeGreaterThan(time(80));
  });

  it('doing both needs less heat than warming alone', () => {
    const a = answer(housing);
    expect(valueOf(a, 'both', 'quantity').value).toBeLessThan(valueOf(a, 'temperature', 'quantity').value);
  });
});
