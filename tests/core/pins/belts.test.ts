/** Belt figures with a single source, typed from that source and not from the code. */
import { describe, expect, it } from 'vitest';
import { topics } from '../../../src/core/registry.ts';
import { readInputs } from '../../../src/core/contract/read-inputs.ts';
import { valueOf } from '../../../src/core/contract/result.ts';
import type { RawInputs } from '../../../src/core/contract/field.ts';

function answer(raw: RawInputs) {
  const topic = topics['belt-tension'];
  const read = readInputs(topic?.fields ?? [], { ...topic?.example, reading: 'none', ...raw });
  const result = read.ok ? topic?.compute(read.inputs) : undefined;
  if (!result?.ok) throw new Error(JSON.stringify([read, result]));
  return result;
}

describe('mass of one belt or rib, kg/m', () => {
  it.each([
    // Student design worksheets with textbook tables.
    ['Z', 0.06, 'belt-worksheets'],
    ['A', 0.1, 'belt-worksheets'],
    ['B', 0.17, 'belt-worksheets'],
    // Jindal, Machine Design.
    ['C', 0.35, 'jindal-design'],
    // Shigley, Table 17-16: Kc 3.498 lbf at 1000 ft/min is 0.603 kg/m.
    ['D', 0.603, 'shigley-belts'],
    // GB/T 13575.1-2008, from memory.
    ['E', 0.97, 'gb-t-13575-1-tables'],
    ['SPZ', 0.072, 'gb-t-13575-1-tables'],
    ['SPA', 0.112, 'gb-t-13575-1-tables'],
    ['SPB', 0.192, 'gb-t-13575-1-tables'],
    ['SPC', 0.37, 'gb-t-13575-1-tables'],
    // Ribs, from memory.
    ['PH', 0.005, 'ribbed-belt-data'],
    ['PJ', 0.008, 'ribbed-belt-data'],
    ['PK', 0.02, 'ribbed-belt-data'],
    ['PL', 0.036, 'ribbed-belt-data'],
    ['PM', 0.12, 'ribbed-belt-data'],
  ])('%s: %f', (section, mass, source) => {
    const value = valueOf(
      answer({ section, belts: 2, enginePulley: 400, bladePulley: 500, centre: 1000, rotation: 600, power: 1 }),
      'mass',
      'quantity',
    );
    expect([value.value, value.source]).toEqual([mass, source]);
  });
});

describe('service factor', () => {
  const load = ['light', 'medium', 'heavy'] as const;
  const hours = ['short', 'day', 'long'] as const;
  // V-belt service factors on a general engineering reference page (service-factor-table): rows light, medium, heavy;
  // columns 3 to 5, 8 to 10, 16 to 24 h. More cylinders stand under normal torque, one cylinder under high torque.
  const printed = {
    multi: [
      [1.0, 1.1, 1.2],
      [1.1, 1.2, 1.3],
      [1.2, 1.3, 1.4],
    ],
    single: [
      [1.1, 1.2, 1.3],
      [1.2, 1.3, 1.4],
      [1.4, 1.5, 1.6],
    ],
  };
  const cells = (['multi', 'single'] as const).flatMap((driver) =>
    load.flatMap((l, i) => hours.map((h, j) => [driver, l, h, printed[driver][i]?.[j]] as const)),
  );
  it.each(cells)('%s, %s, %s: %f', (driver, l, h, factor) => {
    const value = valueOf(answer({ driver, load: l, hours: h }), 'serviceFactor', 'number');
    expect([value.value, value.source]).toEqual([factor, 'service-factor-table']);
  });

  // The row for crushers was cut off in what was seen; from memory (service-factor-crushing).
  it.each([
    ['multi', 'short', 1.3],
    ['multi', 'day', 1.4],
    ['multi', 'long', 1.5],
    ['single', 'short', 1.5],
    ['single', 'day', 1.6],
    ['single', 'long', 1.8],
  ])('%s, crushing, %s: %f', (driver, h, factor) => {
    const value = valueOf(answer({ driver, load: 'crushing', hours: h }), 'serviceFactor', 'number');
    expect([value.value, value.source]).toEqual([factor, 'service-factor-crushing']);
  });
});

it('a wet belt is near slipping under a margin of 1.2, and slips under 1 (wet-belt-grip; our choice of 1.2)', () => {
  // The margin falls in one proportion with the power of the pull, so the share of grip is walked down.
  const at = (wetGrip: number) => {
    const result = answer({ wetGrip });
    return [valueOf(result, 'slipMarginWet', 'number').value, valueOf(result, 'wetVerdict', 'verdict').code] as const;
  };
  const walked = Array.from({ length: 90 }, (_, i) => at(100 - i));
  for (const [margin, code] of walked)
    expect(code, String(margin)).toBe(margin < 1 ? 'wet-slips' : margin < 1.2 ? 'wet-near' : 'wet-holds');
  expect(new Set(walked.map(([, code]) => code)).size).toBe(3);
});
