import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { correction, fuelForOil, oilForFuel, partsOf } from '../../../../src/core/topics/fuel-mix/index.ts';

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
