import { block } from '../../contract/block.ts';
import { defineFields } from '../../contract/field.ts';
import { densityRatio, gasDensityRatio, gaugeElsewhere, mixtureElsewhere, standardPressure } from './air.ts';
import { isUnder } from '../../thresholds/index.ts';
import { engineBlocks } from './engine-blocks.ts';
import { hoseVolume, readingThroughHose } from './hose.ts';
import { chamberVolume, readingWithOil } from './wet-test.ts';

const height = {
  key: 'height',
  label: 'Height',
  kind: 'quantity',
  dimension: 'length',
  units: ['m', 'ft'],
  min: -500,
  max: 11000,
} as const;
const pressure = <const K extends string>(key: K, label: string) =>
  ({ key, label, kind: 'quantity', dimension: 'pressure', units: ['kPa', 'psi'], min: 0, above: true }) as const;
const temperature = <const K extends string>(key: K, label: string) =>
  ({
    key,
    label,
    kind: 'quantity',
    dimension: 'temperature',
    units: ['°C', '°F'],
    default: 15,
    min: -100,
    max: 100,
  }) as const;

const volume = <const K extends string, const U extends 'cm3' | 'mL'>(
  key: K,
  label: string,
  units: readonly [U, 'in3' | 'mL'],
) => ({ key, label, kind: 'quantity', dimension: 'volume', units, min: 0, above: true }) as const;

const trapped = {
  key: 'trapped',
  label: 'Share of the stroke behind the closed port',
  kind: 'number',
  default: 0.7,
  min: 0.1,
  max: 1,
} as const;
const inside = <const K extends string>(key: K, label: string) =>
  ({ key, label, kind: 'quantity', dimension: 'length', units: ['mm', 'in'], min: 0 }) as const;

export const blocks = {
  ...engineBlocks,
  'standard-atmosphere': block({
    what: 'air pressure and density at a height, standard atmosphere',
    source: 'us-std-atm-1976',
    fields: defineFields([height]),
    gives: { pressure: { label: 'Pressure', units: ['kPa', 'psi'] }, density: { label: 'Density against sea level' } },
    run: (i) => ({ pressure: standardPressure(i.height), density: densityRatio(i.height) }),
  }),
  'gauge-at-height': block({
    what: 'what a compression gauge shows at a height, the engine unchanged',
    source: 'gauge-altitude',
    fields: defineFields([
      {
        key: 'gauge',
        label: 'Reading at sea level',
        kind: 'quantity',
        dimension: 'pressure',
        units: ['bar', 'psi'],
        min: 0,
      },
      height,
    ]),
    gives: { gauge: { label: 'Reading', units: ['bar', 'psi'] } },
    run: (i) => ({ gauge: gaugeElsewhere(i.gauge, standardPressure(0), standardPressure(i.height)) }),
  }),
  'gauge-by-ratio': block({
    what: 'a gauge reading or a power scaled by two barometers or two densities',
    source: 'gauge-altitude',
    fields: defineFields([
      { key: 'value', label: 'Value there', kind: 'number', min: 0 },
      { key: 'here', label: 'Barometer or density there', kind: 'number', min: 0, above: true },
      { key: 'there', label: 'Barometer or density here', kind: 'number', min: 0 },
    ]),
    gives: { value: { label: 'Value here' } },
    run: (i) => ({ value: gaugeElsewhere(i.value, i.here, i.there) }),
  }),
  mixture: block({
    what: 'air to fuel ratio of an unchanged carburetor in other air',
    source: 'gupta-carburettor',
    fields: defineFields([
      { key: 'airFuel', label: 'Air to fuel, by mass', kind: 'number', min: 1, max: 100 },
      pressure('from', 'Pressure it was set at'),
      temperature('fromTemperature', 'Temperature it was set at'),
      pressure('to', 'Pressure now'),
      temperature('toTemperature', 'Temperature now'),
    ]),
    gives: { airFuel: { label: 'Air to fuel now' } },
    run: (i) => ({
      airFuel: mixtureElsewhere(i.airFuel, gasDensityRatio(i.from, i.fromTemperature, i.to, i.toTemperature)),
    }),
  }),
  'reading-through-hose': block({
    what: 'what a gauge reads on a sound engine when its check valve sits in the gauge and the hose adds to the chamber',
    source: 'wet-test-model',
    fields: defineFields([
      volume('swept', 'Swept volume', ['cm3', 'in3']),
      trapped,
      { ...pressure('gauge', 'Reading with the valve at the plug'), units: ['bar', 'psi'] },
      { ...pressure('air', 'Air outside'), default: 101.325 },
      inside('bore', 'Hose, inside diameter'),
      inside('length', 'Hose, length'),
    ]),
    gives: {
      hose: { label: 'Room in the hose', units: ['cm3', 'in3'] },
      gauge: { label: 'Reading', units: ['bar', 'psi'] },
      low: { label: 'Reads low by', units: ['%', '%'] },
    },
    run: (i) => {
      const hose = hoseVolume(i.bore, i.length);
      const chamber = chamberVolume(i.swept, i.trapped, i.gauge, i.air);
      const gauge = readingThroughHose(i.swept, i.trapped, chamber, hose, i.air);
      return { hose, gauge, low: 1 - gauge / i.gauge };
    },
  }),
  'reading-with-oil': block({
    what: 'what a compression gauge reads if oil in the cylinder only takes up room',
    source: 'wet-test-model',
    fields: defineFields([
      volume('swept', 'Swept volume', ['cm3', 'in3']),
      trapped,
      { ...pressure('gauge', 'Dry reading'), units: ['bar', 'psi'] },
      { ...pressure('air', 'Air outside'), default: 101.325 },
      volume('oil', 'Oil', ['mL', 'mL']),
    ]),
    gives: {
      chamber: { label: 'Combustion chamber', units: ['cm3', 'in3'] },
      gauge: { label: 'Reading', units: ['bar', 'psi'] },
    },
    run: (i) => {
      const chamber = chamberVolume(i.swept, i.trapped, i.gauge, i.air);
      if (!isUnder(i.oil, chamber))
        return { problem: { field: 'oil', code: 'no-room-for-oil', data: { room: chamber } } };
      return { chamber, gauge: readingWithOil(i.swept, i.trapped, chamber, i.oil, i.air) };
    },
  }),
};
