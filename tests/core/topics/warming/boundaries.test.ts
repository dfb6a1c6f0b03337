/** Each verdict of the warming sum just below, at and just above its limit. */
import { describe, expect, it } from 'vitest';
import { compute, fields } from '../../../../src/core/topics/warming/index.ts';
import { materials } from '../../../../src/core/materials/index.ts';
import { readInputs } from '../../../../src/core/contract/read-inputs.ts';
import type { RawInputs } from '../../../../src/core/contract/field.ts';

function verdict(raw: RawInputs, key: string): string | undefined {
  const read = readInputs(fields, raw);
  const result = read.ok ? compute(read.inputs) : undefined;
  if (!result?.ok) throw new Error(`Refused: ${JSON.stringify(result ?? read)}`);
  const found = result.values.find((v) => v.key === key);
  return found?.kind === 'verdict' ? found.code : undefined;
}

/** Interference in micrometers that wants this rise, no gap, on 100 mm of a material: I = alpha d dT, by hand. */
const wants = (rise: number, material: keyof typeof materials) => rise * materials[material].alpha * 0.1 * 1e6;
const housing = (rise: number, material: 'aluminium-cast' | 'grey-iron' = 'aluminium-cast') => ({
  part: 'housing',
  diameter: 100,
  housingMaterial: material,
  gap: 0,
  interference: wants(rise, material),
});
const ring = (rise: number, sealed: 'yes' | 'no') => ({
  part: 'ring',
  diameter: 100,
  sealed,
  gap: 0,
  interference: wants(rise, 'bearing-steel'),
});

describe('the ceilings', () => {
  // The room is at 20 °C; a thermometer of a shop does not show a twentieth of a degree.
  it.each([
    ['light housing, 100 °C', (rise: number) => housing(rise), 80, 'warm-housing-ok', 'warm-housing-over'],
    ['iron housing, 120 °C', (rise: number) => housing(rise, 'grey-iron'), 100, 'warm-housing-ok', 'warm-housing-over'],
    ['sealed bearing, 80 °C', (rise: number) => ring(rise, 'yes'), 60, 'warm-ring-ok', 'warm-sealed-over'],
    // 250 °F is (250 - 32) x 5/9 °C by the definition of the degree; the room is at 20 °C.
    [
      'open bearing, 250 °F',
      (rise: number) => ring(rise, 'no'),
      ((250 - 32) * 5) / 9 - 20,
      'warm-ring-ok',
      'warm-ring-over',
    ],
  ])('%s', (_name, raw, rise, under, over) => {
    expect(verdict(raw(rise - 0.1), 'warmVerdict')).toBe(under);
    expect(verdict(raw(rise), 'warmVerdict')).toBe(under);
    expect(verdict(raw(rise + 0.04), 'warmVerdict')).toBe(under);
    expect(verdict(raw(rise + 0.06), 'warmVerdict')).toBe(over);
  });

  it.each([
    ['100 °C typed as 212 °F', { ...housing(70) }, 212],
    ['80 °C typed as 176 °F', { ...ring(50, 'yes') }, 176],
    ['250 °F', { ...ring(90, 'no') }, 250],
  ])('%s is the most, and not past it', (_name, raw, fahrenheit) => {
    const said = (heatTo: string) => verdict({ ...raw, heatTo }, 'heatTo');
    expect(said(`${fahrenheit - 1} degF`)).toBeUndefined();
    expect(said(`${fahrenheit} degF`)).toBeUndefined();
    expect(said(`${fahrenheit + 1} degF`)).toBe('heat-to-over');
  });
});

describe('other limits', () => {
  it('warming is not worth it up to half a degree over the room', () => {
    const said = (rise: number) => [verdict(housing(rise), 'warmVerdict'), verdict(housing(rise), 'measuring')];
    expect(said(0.49)).toEqual(['warm-not-needed', undefined]);
    expect(said(0.5)).toEqual(['warm-not-needed', undefined]);
    expect(said(0.51)).toEqual(['warm-housing-ok', 'how-to-measure']);
  });

  it('a temperature meant is short where it opens less than the gap asked for', () => {
    // 50 degrees over a room of 20 open the seat exactly by the interference: no gap is left, none was asked for.
    const said = (heatTo: number, gap = 0) => verdict({ ...housing(50), heatTo, gap }, 'heatTo');
    expect(said(70.1)).toBeUndefined();
    expect(said(70)).toBeUndefined();
    expect(said(69.9)).toBe('heat-to-short');
    expect(said(70, 1)).toBe('heat-to-short');
  });

  it('chilling alone: the freezer to -18 °C, dry ice to -78 °C', () => {
    const chill = (drop: number, more: RawInputs = {}) =>
      verdict({ ...housing(1), sealed: 'no', interference: wants(drop, 'bearing-steel'), ...more }, 'coldVerdict');
    expect(chill(0)).toBe('cool-not-needed');
    expect(chill(0.1)).toBe('cool-freezer');
    expect(chill(37.9)).toBe('cool-freezer');
    expect(chill(38)).toBe('cool-freezer');
    expect(chill(38.1)).toBe('cool-dry-ice');
    expect(chill(38.1, { sealed: 'yes' })).toBe('cool-sealed');
    expect(chill(98)).toBe('cool-dry-ice');
    expect(chill(98.1)).toBe('cool-not-enough');
    // A freezer that only reaches -10 °C is what counts.
    expect(chill(30, { cold: -10 })).toBe('cool-freezer');
    expect(chill(30.1, { cold: -10 })).toBe('cool-dry-ice');
  });

  it('a minute is the least time to fit a part in', () => {
    // Plate of wall w, cooled on both faces with 25 W/(m2 K): t = rho c w / 2 / h ln(dT1/dT2), solved for w at 60 s.
    const m = materials['aluminium-cast'];
    const wall = (60 * 2 * 25) / (m.density * m.heat * Math.log(60 / 50)) / 1e-3;
    const said = (w: number) => verdict({ ...housing(50), heatTo: 80, wall: w }, 'openVerdict');
    expect(wall).toBeGreaterThan(1);
    expect(said(wall * 0.99)).toBe('open-time-short');
    expect(said(wall)).toBe('open-time-fair');
    expect(said(wall * 1.01)).toBe('open-time-fair');
  });
});
