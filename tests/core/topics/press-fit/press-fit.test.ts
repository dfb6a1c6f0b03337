import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hoop, pressure, slideForce, slideTorque, type Joint } from '../../../../src/core/topics/press-fit/index.ts';
import { compute, example, fields } from '../../../../src/core/topics/press-fit/index.ts';
import { readInputs } from '../../../../src/core/contract/read-inputs.ts';
import { valueOf } from '../../../../src/core/contract/result.ts';
import { answersAnything } from '../../any-input.ts';
import type { RawInputs } from '../../../../src/core/contract/field.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const anyJoint = fc
  .tuple(
    between(5, 300),
    between(1.05, 10),
    between(0, 0.95),
    between(40, 210),
    between(40, 210),
    between(0.2, 0.35),
    between(0.2, 0.35),
  )
  .map(([d, wall, hole, Eh, Es, nh, ns]): Joint => ({
    diameter: d / 1000,
    hubOutside: (d * wall) / 1000,
    shaftBore: (d * hole) / 1000,
    hubE: Eh * 1e9,
    shaftE: Es * 1e9,
    hubNu: nh,
    shaftNu: ns,
  }));

function answer(raw: RawInputs) {
  const read = readInputs(fields, { ...example, ...raw });
  const result = read.ok ? compute(read.inputs) : undefined;
  if (!result?.ok) throw new Error('Refused.');
  return result;
}

describe('press fit', () => {
  answersAnything('press-fit', {
    diameter: between(20, 60),
    hubOutside: between(62, 120),
    shaftBore: between(0, 18),
    least: between(-20, 20),
    most: between(20, 120),
  });

  it('clearance presses on nothing', () => {
    fc.assert(
      fc.property(anyJoint, between(-1e-3, 0), (j, delta) => {
        expect(pressure(j, delta)).toBe(0);
      }),
    );
  });

  it('twice the interference is twice the pressure', () => {
    fc.assert(
      fc.property(anyJoint, between(1e-6, 1e-4), (j, delta) => {
        expect(pressure(j, 2 * delta) / pressure(j, delta)).toBeCloseTo(2, 9);
      }),
    );
  });

  it('a thicker wall outside and a smaller hole inside raise the pressure', () => {
    fc.assert(
      fc.property(anyJoint, (j) => {
        expect(pressure({ ...j, hubOutside: j.hubOutside * 1.2 }, 2e-5)).toBeGreaterThan(pressure(j, 2e-5));
        expect(pressure({ ...j, shaftBore: j.shaftBore * 0.8 }, 2e-5)).toBeGreaterThanOrEqual(pressure(j, 2e-5));
      }),
    );
  });

  it('the pull in a cut through the hub balances the pressure in its bore', () => {
    // Thick-cylinder stress is A + B / r^2; its sum over the wall must be p d / 2 on each side.
    fc.assert(
      fc.property(anyJoint, (j) => {
        const p = 10e6;
        const { hubBore, hubOutside } = hoop(j, p);
        const [a, b] = [j.diameter / 2, j.hubOutside / 2];
        const B = (hubBore - hubOutside) / (1 / a ** 2 - 1 / b ** 2);
        const A = hubBore - B / a ** 2;
        expect((A * (b - a) + B * (1 / a - 1 / b)) / (p * a)).toBeCloseTo(1, 6);
      }),
    );
  });

  it('torque is force at the radius', () => {
    expect(slideTorque(0.05, 0.02, 10e6, 0.1)).toBeCloseTo(slideForce(0.05, 0.02, 10e6, 0.1) * 0.025, 9);
  });

  it('names the tool for the most force, and none when it slides in', () => {
    const tool = (raw: RawInputs) => valueOf(answer(raw), 'tool', 'verdict').code;
    expect(tool({ least: -20, most: 0 })).toBe('tool-none');
    expect(tool({})).toBe('tool-vise');
    const steel = { hub: 'carbon-steel', smoothing: 'no', surface: 'dry', hubStrength: '3000 MPa' };
    expect(tool({ ...steel, most: 39 })).toBe('tool-arbor');
    expect(tool({ ...steel, most: 150 })).toBe('tool-hydraulic');
    expect(tool({ ...steel, most: 300, hubOutside: 200, shaftBore: 0, length: 200 })).toBe('tool-too-much');
    // Refused by the outer part, it needs no tool.
    expect(tool({ ...steel, most: 900, hubOutside: 200, shaftBore: 0, length: 50, hubStrength: '200 MPa' })).toBe(
      'tool-refused',
    );
  });

  it('stops a fit that would stretch or crack the outer part', () => {
    expect(valueOf(answer({ most: 400, shaftBore: 0 }), 'stress', 'verdict').code).toBe('stress-yields');
    expect(valueOf(answer({ most: 400, shaftBore: 0, hub: 'grey-iron' }), 'stress', 'verdict').code).toBe(
      'stress-cracks',
    );
  });
});
