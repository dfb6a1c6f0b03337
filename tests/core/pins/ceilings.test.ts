/** Temperatures a part bears, each typed from its single source. */
import { expect, it } from 'vitest';
import { fromUnit } from '../../../src/core/quantity/index.ts';
import { topics } from '../../../src/core/registry.ts';
import { readInputs } from '../../../src/core/contract/read-inputs.ts';
import { valueOf } from '../../../src/core/contract/result.ts';
import type { RawInputs } from '../../../src/core/contract/field.ts';

it.each<[string, RawInputs, number, string]>([
  // A bearing-maintenance handbook: sealed or greased bearings to 80 °C.
  ['a sealed ring', { part: 'ring', sealed: true }, fromUnit(80, '°C'), 'sealed-bearing-heat'],
  // US Army TM 5-3810-307-24-1-1: not above 250 °F.
  ['an open ring', { part: 'ring', sealed: false }, fromUnit(250, '°F'), 'army-tm-bearing-heating'],
  // A vehicle workshop manual on bearings in light-alloy housings: 100 °C.
  [
    'a light-alloy housing',
    { part: 'housing', housingMaterial: 'magnesium', sealed: false },
    fromUnit(100, '°C'),
    'housing-heating',
  ],
])('%s', (_, raw, kelvin, source) => {
  const topic = topics['warming'];
  const read = readInputs(topic?.fields ?? [], { diameter: 40, interference: 10, ...raw });
  const result = read.ok ? topic?.compute(read.inputs) : undefined;
  if (!result?.ok) throw new Error(JSON.stringify([read, result]));
  const ceiling = valueOf(result, 'ceiling', 'quantity');
  expect(ceiling.value).toBeCloseTo(kelvin, 9);
  expect(ceiling.source).toBe(source);
});
