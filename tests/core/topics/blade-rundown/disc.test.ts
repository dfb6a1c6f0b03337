import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  compute,
  example,
  fields,
  frictionTorque,
  hoopAtBore,
  ringInertia,
  ringMass,
  ringStress,
  spinEnergy,
  stopTime,
  turnsToStop,
} from '../../../../src/core/topics/blade-rundown/index.ts';
import { readInputs } from '../../../../src/core/contract/read-inputs.ts';
import { valueOf } from '../../../../src/core/contract/result.ts';

const rotations = fc.double({ min: 5, max: 300, noNaN: true });
const outers = fc.double({ min: 0.1, max: 1.5, noNaN: true });

describe('a spinning disc', () => {
  it('is stressed at the bore like a thin ring when almost nothing but the rim is left', () => {
    fc.assert(
      fc.property(
        outers,
        rotations,
        (outer, n) =>
          Math.abs(hoopAtBore(outer, outer * (1 - 1e-9), n, 7850, 0.3) / ringStress(7850, Math.PI * outer * n) - 1) <
          1e-6,
      ),
    );
  });

  it('is stressed twice as much at a pinhole as a solid disc at its centre', () => {
    fc.assert(
      fc.property(
        outers,
        rotations,
        (outer, n) =>
          Math.abs(
            hoopAtBore(outer, 0, n, 7850, 0.3) / (2 * ((3.3 / 8) * 7850 * (2 * Math.PI * n) ** 2 * (outer / 2) ** 2)) -
              1,
          ) < 1e-12,
      ),
    );
  });

  it('holds four times the energy at twice the speed', () => {
    fc.assert(fc.property(rotations, (n) => Math.abs(spinEnergy(0.03, 2 * n) / spinEnergy(0.03, n) - 4) < 1e-9));
  });

  it('gives all its energy to the friction on the turns it takes to stop', () => {
    fc.assert(
      fc.property(rotations, fc.double({ min: 0.01, max: 20, noNaN: true }), (n, torque) => {
        const time = stopTime(0.03, n, torque);
        expect((torque * 2 * Math.PI * turnsToStop(n, time)) / spinEnergy(0.03, n)).toBeCloseTo(1, 9);
        expect(frictionTorque(0.03, n, time) / torque).toBeCloseTo(1, 9);
      }),
    );
  });

  it('weighs what is left when a small disc is cut out of a large one', () => {
    fc.assert(
      fc.property(
        outers,
        fc.double({ min: 0.05, max: 0.95, noNaN: true }),
        (outer, part) =>
          Math.abs(
            ringMass(outer, outer * part, 0.003, 7850) +
              ringMass(outer * part, 0, 0.003, 7850) -
              ringMass(outer, 0, 0.003, 7850),
          ) < 1e-9,
      ),
    );
    expect(ringInertia(1, 0.4, 0)).toBeCloseTo(0.5 * 0.2 ** 2, 12);
  });
});

it('says that a blade wobbles when the dial gauge reads more than the limit', () => {
  const verdict = (runOut: string) => {
    const read = readInputs(fields, { ...example, runOut });
    if (!read.ok) throw new Error(JSON.stringify(read));
    const result = compute(read.inputs);
    if (!result.ok) throw new Error(JSON.stringify(result));
    return valueOf(result, 'runOutVerdict', 'verdict').code;
  };
  expect(verdict('0.34 mm')).toBe('runs-true');
  expect(verdict('0.36 mm')).toBe('wobbles');
});
