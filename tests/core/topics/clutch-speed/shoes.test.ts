import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  compute,
  engagement,
  example,
  fields,
  gripSpeed,
  heldTorque,
  shoeForce,
  shoeMassFor,
  words,
} from '../../../../src/core/topics/clutch-speed/index.ts';
import { sayer } from '../../../../src/core/contract/messages.ts';
import { readInputs } from '../../../../src/core/contract/read-inputs.ts';
import { valueOf, type Answer } from '../../../../src/core/contract/result.ts';
import type { RawInputs } from '../../../../src/core/contract/field.ts';

function answer(more: RawInputs): Answer {
  const read = readInputs(fields, { ...example, ...more });
  if (!read.ok) throw new Error(JSON.stringify(read));
  const result = compute(read.inputs);
  if (!result.ok) throw new Error(JSON.stringify(result));
  return result;
}
const shoesAny = fc.record({
  mass: fc.double({ min: 0.005, max: 5, noNaN: true }),
  radius: fc.double({ min: 0.01, max: 0.3, noNaN: true }),
  spring: fc.double({ min: 1, max: 2000, noNaN: true }),
});

describe('a centrifugal clutch', () => {
  it('engages with the square root of its spring force', () => {
    fc.assert(
      fc.property(
        shoesAny,
        fc.double({ min: 0.05, max: 1, noNaN: true }),
        (shoe, share) =>
          Math.abs(engagement({ ...shoe, spring: shoe.spring * share }) / engagement(shoe) - Math.sqrt(share)) < 1e-12,
      ),
    );
  });

  it('presses on the drum only above its engagement speed', () => {
    fc.assert(
      fc.property(
        shoesAny,
        (shoe) => shoeForce(shoe, engagement(shoe) * 0.999) === 0 && shoeForce(shoe, engagement(shoe) * 1.001) > 0,
      ),
    );
  });

  it('holds exactly the torque at the speed it was asked to grip from', () => {
    fc.assert(
      fc.property(
        shoesAny,
        fc.double({ min: 0.1, max: 500, noNaN: true }),
        (shoe, torque) =>
          Math.abs(heldTorque(shoe, 3, 0.3, 0.04, gripSpeed(shoe, 3, 0.3, 0.04, torque)) / torque - 1) < 1e-6,
      ),
    );
  });

  it('carries its torque with the shoe mass worked out for it', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 500, noNaN: true }),
        fc.double({ min: 20, max: 150, noNaN: true }),
        fc.double({ min: 0.3, max: 0.95, noNaN: true }),
        (torque, rotation, part) => {
          const mass = shoeMassFor(torque, 4, 0.3, 0.1, 0.08, rotation, rotation * part);
          const spring = mass * 0.08 * (2 * Math.PI * rotation * part) ** 2;
          expect(heldTorque({ mass, radius: 0.08, spring }, 4, 0.3, 0.1, rotation) / torque).toBeCloseTo(1, 8);
        },
      ),
    );
  });
});

describe('the verdict', () => {
  it('stops work whenever idle comes within a quarter of engagement or over it', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1000, max: 6000 }), fc.integer({ min: 1000, max: 8000 }), (idle, engages) => {
        const a = answer({ idle, known: 'speed', engages });
        const { level } = valueOf(a, 'verdict', 'verdict');
        expect(level).toBe(engages >= 1.25 * idle ? 'good' : 'stop');
        expect(a.cautions.some((c) => c.hazard === 'blade-turns-at-idle')).toBe(level === 'stop');
      }),
    );
  });

  it('stops work when the blade was seen to turn, whatever the figures say', () => {
    for (const observed of ['cord', 'idle', 'lingers']) {
      const a = answer({ observed });
      expect(valueOf(a, 'observedVerdict', 'verdict').level).toBe('stop');
      expect(a.cautions.map((c) => c.hazard)).toContain('blade-turns-at-idle');
    }
  });

  it('shows a weak spring that brings the blade to turn at idle', () => {
    expect(valueOf(answer({ weak: '30 %' }), 'weakVerdict', 'verdict').code).toBe('weak-turns-at-idle');
    expect(valueOf(answer({ weak: '90 %' }), 'weakVerdict', 'verdict').code).toBe('weak-holds-off');
  });

  it('changes at its limits and not beside them', () => {
    const code = (more: RawInputs, key = 'verdict') => valueOf(answer(more), key, 'verdict').code;
    const at = (engages: number) => code({ idle: 2800, engages });
    // A quarter over 2800 rpm is 3500 rpm.
    expect([3499, 3500, 3501].map(at)).toEqual(['idle-too-near', 'idle-clear', 'idle-clear']);
    expect([2799, 2800, 2801].map(at)).toEqual(['idle-over-engagement', 'idle-over-engagement', 'idle-too-near']);
    // 4000 rpm with a spring at 49 % of its force: 2800 rpm.
    const weak = (percent: number) => code({ idle: 2800, engages: 4000, weak: percent }, 'weakVerdict');
    expect([48.9, 49, 49.1].map(weak)).toEqual(['weak-turns-at-idle', 'weak-turns-at-idle', 'weak-holds-off']);
    // Four shoes of 1.5 kg at 110 mm, 700 N, 0.3 on 140 mm hold 512.74 N m at 1440 rpm (Bhandari, Example 11.13): 77.319 kW.
    const large = {
      known: 'parts',
      idle: 400,
      running: 1440,
      shoes: 4,
      mass: '1500 g',
      radius: '110 mm',
      drum: '280 mm',
      gap: 0,
      spring: '700 N',
      friction: 0.3,
    };
    const grip = (power: string) => code({ ...large, power }, 'gripVerdict');
    expect(['77.2 kW', '77.4 kW'].map(grip)).toEqual(['clutch-holds', 'clutch-slips']);
  });

  it('asks for three figures where the engagement is known, and says nothing of the grip then', () => {
    expect(answer({}).values.map((v) => v.key)).not.toContain('gripVerdict');
  });

  it('never puts the engagement higher because nobody measured how the force grows', () => {
    const parts = { known: 'parts', running: 9300, power: '4 kW' };
    const speed = (more: RawInputs) => valueOf(answer({ ...parts, ...more }), 'engagement', 'quantity').value;
    expect(speed({})).toBeLessThan(speed({ rate: 12 }));
  });

  it('says nothing good, and nothing twice, beside a blade that was seen to turn', () => {
    const at = (observed: string, idle: number) => {
      const verdict = valueOf(answer({ known: 'speed', engages: 3500, observed, idle }), 'verdict', 'verdict');
      return `${verdict.level}: ${words.verdicts[verdict.code]?.(verdict.data ?? {}, sayer({ system: 'metric' }))}`;
    };
    expect(at('stands', 2500)).toMatch(/^good: .*must stand still/);
    expect(at('idle', 2500)).toMatch(/^note: .*do not explain what you saw/);
    expect(at('idle', 3600)).toMatch(/^stop: /);
    expect(at('idle', 3600)).not.toMatch(/manual’s speed/);
    // The figures say it turns, and it was seen to stand: neither is believed.
    expect(at('stands', 3600)).toMatch(/^stop: .*You saw it stand: one of the two is not so.*manual’s speed/);
  });

  it('does not forbid the very cure it names', () => {
    for (const code of ['turns-at-idle-seen', 'idle-over-engagement', 'idle-too-near'])
      expect(words.verdicts[code]?.({ highest: 50 }, sayer({ system: 'metric' }))).toMatch(
        /Set the idle to the manual’s speed.*do not go lower/,
      );
  });
});
