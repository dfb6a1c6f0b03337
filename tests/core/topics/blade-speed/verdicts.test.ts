import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  bladeForDepth,
  compute,
  cutDepth,
  cutLength,
  example,
  fields,
  readMarks,
  rotationForSpeed,
  surfaceSpeed,
} from '../../../../src/core/topics/blade-speed/index.ts';
import { readInputs } from '../../../../src/core/contract/read-inputs.ts';
import { valueOf, type Answer } from '../../../../src/core/contract/result.ts';
import type { RawInputs } from '../../../../src/core/contract/field.ts';

function answer(more: RawInputs): Answer {
  const read = readInputs(fields, { ...example, known: 'spindle', spindle: 4000, ...more });
  if (!read.ok) throw new Error(JSON.stringify(read));
  const result = compute(read.inputs);
  if (!result.ok) throw new Error(JSON.stringify(result));
  return result;
}
const code = (a: Answer, key: string) => valueOf(a, key, 'verdict').code;
const rotations = fc.integer({ min: 200, max: 20000 });

describe('the verdict is never softer than the marking', () => {
  it('says no to every speed above a mark in revolutions, however little', () => {
    fc.assert(
      fc.property(
        rotations,
        fc.integer({ min: 1, max: 500 }),
        (marked, over) => code(answer({ spindle: marked + over, markedRotation: marked }), 'verdict') === 'over-marked',
      ),
    );
  });

  it('says no whenever any one of several marks is exceeded', () => {
    fc.assert(
      fc.property(rotations, rotations, fc.integer({ min: 20, max: 120 }), (spindle, markedRotation, alsoSpeed) => {
        const a = answer({ spindle, markedRotation, alsoSpeed });
        const exceeded = spindle > markedRotation || surfaceSpeed(0.35, spindle / 60) > alsoSpeed * (1 + 1e-9);
        return !exceeded || code(a, 'verdict') === 'over-marked';
      }),
    );
  });

  it('does not let a worn blade turn faster than a new one', () => {
    fc.assert(
      fc.property(fc.integer({ min: 200, max: 350 }), fc.constantFrom('diamond', 'abrasive'), (worn, bladeKind) => {
        const marked = { markedAs: 'speed', markedSpeed: 80, markedRotation: undefined, bladeKind } as const;
        const limit = (a: Answer) => valueOf(a, 'limitRotation', 'quantity').value;
        expect(limit(answer({ ...marked, diameter: worn, newDiameter: 350 }))).toBeCloseTo(
          limit(answer({ ...marked, diameter: 350 })),
          9,
        );
      }),
    );
  });

  it('raises the overspeed hazard with every stop, be it blade, guard or plate', () => {
    for (const more of [{ spindle: 6000 }, { guardSize: 300 }, { machineRotation: 3900 }, { alsoSpeed: 50 }]) {
      expect(answer(more).cautions.map((c) => c.hazard)).toContain('blade-overspeed');
    }
    expect(answer({ guardSize: 350, machineRotation: 4300 }).cautions.map((c) => c.hazard)).not.toContain(
      'blade-overspeed',
    );
  });

  it('does not count on a belt that slips: out of the cut it does not', () => {
    // 9300 rpm over 52/114 mm is 4242 rpm free, 4115 rpm with 3 % slip.
    const drive = {
      known: 'pulleys',
      engine: 9300,
      enginePulley: 52,
      bladePulley: 114,
      slip: 3,
      spindle: undefined,
    } as const;
    expect(code(answer({ ...drive, markedRotation: 4200 }), 'verdict')).toBe('over-marked-free');
    expect(code(answer({ ...drive, markedRotation: 4100 }), 'verdict')).toBe('over-marked');
    expect(code(answer({ ...drive, markedRotation: 5400, machineRotation: 4200 }), 'plateVerdict')).toBe('over-plate');
    expect(answer({ ...drive, markedRotation: 4200 }).cautions.map((c) => c.hazard)).toContain('blade-overspeed');
    expect(code(answer({ ...drive, markedRotation: 4300 }), 'verdict')).toBe('near-marked');
  });

  it('does not take a worn-down blade of a larger saw for one the guard is made for', () => {
    expect(code(answer({ diameter: 345, newDiameter: 400, guardSize: 350 }), 'guardVerdict')).toBe('over-guard');
  });

  it('does not trust a label that prints less than the blade measures', () => {
    expect(code(answer({ diameter: 350, newDiameter: 300 }), 'largerVerdict')).toBe('larger-than-printed');
    expect(answer({ diameter: 351, newDiameter: 350 }).values.map((v) => v.key)).not.toContain('largerVerdict');
  });

  it('puts what forbids the blade before anything good about its speed', () => {
    for (const [more, key] of [
      [{ guardSize: 300 }, 'guardVerdict'],
      [{ machineRotation: 3900 }, 'plateVerdict'],
      [{ alsoSpeed: 76 }, 'marksVerdict'],
    ] as const)
      expect(answer(more).values[0]?.key).toBe(key);
    expect(answer({ guardSize: 350 }).values[0]?.key).toBe('verdict');
  });

  it('mentions wear of the rim only for abrasive wheels', () => {
    expect(code(answer({ diameter: 330, newDiameter: 350, bladeKind: 'abrasive' }), 'wornVerdict')).toBe(
      'worn-abrasive',
    );
    expect(code(answer({ diameter: 330, newDiameter: 350, bladeKind: 'diamond' }), 'wornVerdict')).toBe('worn-diamond');
  });
});

describe('guard and depth', () => {
  it('refuses a blade larger than the guard, and a depth that needs one', () => {
    expect(code(answer({ guardSize: 300 }), 'guardVerdict')).toBe('over-guard');
    expect(code(answer({ guardSize: 350 }), 'guardVerdict')).toBe('within-guard');
    expect(code(answer({ guardSize: 500 }), 'guardVerdict')).toBe('under-guard');
    expect(code(answer({ guardSize: 350, wanted: 150 }), 'wantedVerdict')).toBe('depth-guard-refuses');
    expect(code(answer({ guardSize: 450, wanted: 150 }), 'wantedVerdict')).toBe('depth-larger');
    expect(code(answer({ wanted: 150 }), 'wantedVerdict')).toBe('depth-larger-ask-guard');
    expect(code(answer({ wanted: 100 }), 'wantedVerdict')).toBe('depth-reached');
  });

  it('lets a twin head go deeper than half its blade, and says why', () => {
    const a = answer({ head: 'twin', reach: 280, diameter: 230, flange: 60, markedRotation: 6000 });
    expect(valueOf(a, 'depth', 'quantity').value).toBeGreaterThan(valueOf(a, 'halfBlade', 'quantity').value);
    expect(code(a, 'twinVerdict')).toBe('twin-deeper-than-half');
    expect(valueOf(a, 'passes', 'count').value).toBe(Math.ceil((280 + 115 - 3) / (115 - 30 - 3)));
    expect(code(answer({ head: 'twin', reach: 280, wanted: 600 }), 'wantedVerdict')).toBe('depth-arm-too-short');
  });

  it('gives back the blade a depth came from', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 0.09, noNaN: true }),
        fc.double({ min: 0, max: 0.02, noNaN: true }),
        (blade, flange, gap) => Math.abs(bladeForDepth(cutDepth(blade, flange, gap), flange, gap) - blade) < 1e-12,
      ),
    );
  });

  it('cuts as long at the surface as the chord of the blade, never longer than the blade', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (blade, depth) => cutLength(blade, depth) <= blade * (1 + 1e-12),
      ),
    );
    expect(cutLength(0.35, 0.175)).toBeCloseTo(0.35, 12);
  });
});

describe('marks', () => {
  it('agree whatever the label rounded them to, up to a percent', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 1, noNaN: true }),
        fc.constantFrom(50, 63, 80, 100),
        fc.double({ min: 0.99, max: 1.01, noNaN: true }),
        (diameter, v, off) =>
          readMarks({ diameter, rotation: rotationForSpeed(v, diameter) * off, speeds: [v] })?.agree === true,
      ),
    );
  });
});
