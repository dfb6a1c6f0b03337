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
import type { RawInputs } from '../../../../src/core/contract/field.ts';
import { readInputs } from '../../../../src/core/contract/read-inputs.ts';
import { valueOf, type Answer } from '../../../../src/core/contract/result.ts';

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

function answer(more: RawInputs) {
  const read = readInputs(fields, { ...example, ...more });
  if (!read.ok) throw new Error(JSON.stringify(read));
  return compute(read.inputs);
}
function told(more: RawInputs): Answer {
  const result = answer(more);
  if (!result.ok) throw new Error(JSON.stringify(result));
  return result;
}
const problem = (more: RawInputs) => {
  const result = answer(more);
  return result.ok ? 'an answer' : result.problems[0]?.code;
};

describe('what a dial gauge says', () => {
  const verdict = (more: RawInputs) => valueOf(told(more), 'runOutVerdict', 'verdict').code;

  it('wobbles above 1 mm for each meter of blade, or above the manual', () => {
    expect(verdict({ runOut: '0.349 mm' })).toBe('runs-true');
    expect(verdict({ runOut: '0.35 mm' })).toBe('runs-true');
    expect(verdict({ runOut: '0.351 mm' })).toBe('wobbles');
    expect(verdict({ diameter: '900 mm', rotation: '1500 rpm', runOut: '0.9 mm' })).toBe('runs-true');
    expect(verdict({ runOut: '0.2 mm', runOutLimit: '0.2 mm' })).toBe('runs-true');
    expect(verdict({ runOut: '0.21 mm', runOutLimit: '0.2 mm' })).toBe('wobbles');
  });

  it('says nothing where nobody put one on the blade', () => {
    expect(told({}).values.map((v) => v.key)).not.toContain('runOutVerdict');
  });
});

describe('figures no blade has', () => {
  it('are refused: a flange over the blade or under its bore', () => {
    expect(problem({ flange: '349 mm' })).toBe('an answer');
    expect(problem({ flange: '350 mm' })).toBe('flange-over-blade');
    expect(problem({ flange: '400 mm' })).toBe('flange-over-blade');
    expect(problem({ flange: '25.4 mm' })).toBe('flange-under-bore');
    expect(problem({ flange: '10 mm' })).toBe('flange-under-bore');
    expect(problem({ flange: '26 mm' })).toBe('an answer');
  });

  it('are refused or said: a rim faster than blades are marked for', () => {
    // pi 0.35 m n: 100 m/s at 5456.7 rpm, 150 m/s at 8185.1 rpm.
    const fast = (rpm: number) => told({ rotation: rpm });
    const has = (a: Answer) => a.values.some((v) => v.key === 'rimVerdict');
    expect(has(fast(5456))).toBe(false);
    expect(fast(5456).cautions.map((c) => c.hazard)).not.toContain('blade-overspeed');
    expect(has(fast(5457))).toBe(true);
    expect(fast(5457).cautions.map((c) => c.hazard)).toContain('blade-overspeed');
    expect(problem({ rotation: 8185 })).toBe('an answer');
    expect(problem({ rotation: 8186 })).toBe('rim-too-fast');
    expect(problem({ diameter: '2000 mm', rotation: '20000 rpm' })).toBe('rim-too-fast');
  });
});
