import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  compute,
  correction,
  fields,
  fuelForOil,
  oilForFuel,
  partsOf,
} from '../../../../src/core/topics/fuel-mix/index.ts';
import { readInputs } from '../../../../src/core/contract/read-inputs.ts';
import { valueOf } from '../../../../src/core/contract/result.ts';

const volumes = fc.double({ min: 1e-4, max: 1, noNaN: true });
const ratios = fc.double({ min: 10, max: 200, noNaN: true });

describe('oil and gasoline', () => {
  it('come back to the gasoline they were measured for', () => {
    fc.assert(
      fc.property(
        volumes,
        ratios,
        (fuel, ratio) => Math.abs(fuelForOil(oilForFuel(fuel, ratio), ratio) / fuel - 1) < 1e-12,
      ),
    );
  });

  it('fill the can together, at the ratio asked for', () => {
    fc.assert(
      fc.property(volumes, ratios, (can, ratio) => {
        const { fuel, oil } = partsOf(can, ratio);
        expect((fuel + oil) / can).toBeCloseTo(1, 12);
        expect(fuel / oil / ratio).toBeCloseTo(1, 10);
      }),
    );
  });

  it('put a can mixed wrong right, by adding one of the two', () => {
    fc.assert(
      fc.property(volumes, ratios, ratios, (can, was, ratio) => {
        const now = partsOf(can, was);
        const add = correction(now, ratio);
        expect((now.fuel + add.fuel) / (now.oil + add.oil) / ratio).toBeCloseTo(1, 9);
        expect(Math.min(add.oil, add.fuel)).toBe(0);
      }),
    );
  });

  it('leave a can alone that is mixed right already', () => {
    fc.assert(
      fc.property(
        volumes,
        ratios,
        (can, ratio) => JSON.stringify(correction(partsOf(can, ratio), ratio)) === '{"oil":0,"fuel":0}',
      ),
    );
  });
});

describe('the ratio box', () => {
  const read = (ratio: string) => readInputs(fields, { known: 'fuel', fuel: '1 L', ratio });

  it('takes the ratio as cans and plates write it', () => {
    for (const ratio of ['50', '50:1', '50 : 1', '1:50', '50 to 1', '2 %', '2%']) {
      const got = read(ratio);
      expect(got.ok && got.inputs['ratio'], ratio).toBeCloseTo(50, 9);
    }
    // 128 fl oz to the gallon: 32:1 is 4 fl oz, and so is 3.125 %.
    const percent = read('3.125 %');
    expect(percent.ok && percent.inputs['ratio']).toBeCloseTo(32, 9);
  });

  it('still refuses what is no ratio of an engine', () => {
    for (const ratio of ['50 mL', '5:1', '300', '50:1:1']) {
      const got = read(ratio);
      expect(got.ok && compute(got.inputs).ok, ratio).toBe(false);
    }
  });

  it('takes quarts and fluid ounces', () => {
    const got = readInputs(fields, { known: 'can', can: '4 qt', ratio: '50:1' });
    expect(got.ok && got.inputs['can']).toBeCloseTo(0.003785411784, 12);
  });
});

describe('the verdict on a can', () => {
  const code = (ratio: string, mixedAt: string) => {
    const read = readInputs(fields, { known: 'mixed', can: '5 L', ratio, mixedAt });
    const result = read.ok ? compute(read.inputs) : undefined;
    if (!result?.ok) throw new Error('refused');
    return valueOf(result, 'verdict', 'verdict').code;
  };

  it('changes a twentieth beside the ratio asked for, and is right only there', () => {
    expect(code('50:1', '47')).toBe('mix-rich');
    expect(code('50:1', '49.9')).toBe('mix-near');
    expect(code('50:1', '1:50')).toBe('mix-right');
    expect(code('50:1', '2 %')).toBe('mix-right');
    expect(code('50:1', '50.1')).toBe('mix-near');
    expect(code('50:1', '53')).toBe('mix-lean');
    expect(code('33.3', '3.003003003003 %')).toBe('mix-right');
  });
});
