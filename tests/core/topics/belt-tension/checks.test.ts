import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  axialStiffness,
  compute,
  deflectionForce,
  example,
  fields,
  spanFrequency,
  stretch,
  tensionFromDeflection,
  tensionFromFrequency,
  tensionFromStretch,
} from '../../../../src/core/topics/belt-tension/index.ts';
import { readInputs } from '../../../../src/core/contract/read-inputs.ts';
import { valueOf, type Answer } from '../../../../src/core/contract/result.ts';
import type { RawInputs } from '../../../../src/core/contract/field.ts';
import { runs } from '../../../runs.ts';

const tensions = fc.double({ min: 1, max: 3000, noNaN: true });
const spans = fc.double({ min: 0.05, max: 2, noNaN: true });
const masses = fc.double({ min: 0.003, max: 1, noNaN: true });

function answer(more: RawInputs): Answer {
  const read = readInputs(fields, { ...example, ...more });
  if (!read.ok) throw new Error(JSON.stringify(read));
  const result = compute(read.inputs);
  if (!result.ok) throw new Error(JSON.stringify(result));
  return result;
}

describe('each check reads back the tension it was made from', () => {
  it('by pushing the span', () => {
    fc.assert(
      fc.property(
        tensions,
        spans,
        fc.double({ min: 0.002, max: 0.1, noNaN: true }),
        fc.double({ min: 0, max: 60, noNaN: true }),
        (t, span, part, extra) =>
          Math.abs(
            tensionFromDeflection(deflectionForce(t, part * span, span, extra), part * span, span, extra) / t - 1,
          ) < 1e-9,
      ),
    );
  });
  it('by plucking it, limp or stiff', () => {
    fc.assert(
      fc.property(
        tensions,
        masses,
        spans,
        fc.double({ min: 0, max: 0.5, noNaN: true }),
        (t, mass, span, bending) =>
          Math.abs(tensionFromFrequency(spanFrequency(t, mass, span, bending), mass, span, bending) - t) <
          1e-9 * (t + (10 * bending) / span ** 2),
      ),
    );
  });
  it('by measuring its stretch', () => {
    fc.assert(
      fc.property(
        tensions,
        spans,
        fc.double({ min: 1000, max: 1e6, noNaN: true }),
        (t, apart, axial) => Math.abs(tensionFromStretch(stretch(t, apart, axial), apart, axial) / t - 1) < 1e-12,
      ),
    );
    fc.assert(
      fc.property(
        tensions,
        spans,
        fc.double({ min: 1000, max: 1e6, noNaN: true }),
        (t, apart, axial) => Math.abs(axialStiffness(t, apart, stretch(t, apart, axial)) / axial - 1) < 1e-12,
      ),
    );
  });
});

describe('the note of a span', () => {
  it('is higher for a stiff belt than for a limp one, and the same when the stiffness is 0', () => {
    fc.assert(
      fc.property(
        tensions,
        masses,
        spans,
        (t, mass, span) => spanFrequency(t, mass, span, 0.1) > spanFrequency(t, mass, span, 0),
      ),
    );
    fc.assert(
      fc.property(
        tensions,
        masses,
        spans,
        (t, mass, span) => Math.abs(spanFrequency(t, mass, span, 0) / (Math.sqrt(t / mass) / (2 * span)) - 1) < 1e-12,
      ),
    );
  });
});

describe('the window', () => {
  it('lets a run-in belt carry its design power dry, with exactly the service factor in hand', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 40, max: 90 }),
        fc.integer({ min: 91, max: 200 }),
        fc.integer({ min: 200, max: 800 }),
        fc.constantFrom('light', 'medium', 'heavy'),
        (enginePulley, bladePulley, centre, load) => {
          const a = answer({ enginePulley, bladePulley, centre, load, beltState: 'run-in' });
          const [low, factor] = [
            valueOf(a, 'staticTension', 'quantity').low as number,
            valueOf(a, 'serviceFactor', 'number').value,
          ];
          const own = valueOf(a, 'centrifugal', 'quantity').value;
          const aim = valueOf(a, 'staticTension', 'quantity').value;
          // The margin is linear in the tension above the centrifugal part: at the low end it is the service factor.
          expect((valueOf(a, 'slipMargin', 'number').value * (low - own)) / (aim - own) / factor).toBeCloseTo(1, 8);
        },
      ),
      { numRuns: runs(50) },
    );
  });

  it('says slack below it, right inside, tight over it and too tight far over it', () => {
    const note = valueOf(answer({}), 'pluck', 'quantity');
    const verdict = (hz: number) => valueOf(answer({ reading: 'frequency', frequency: hz }), 'verdict', 'verdict').code;
    expect(verdict((note.low as number) * 0.99)).toBe('belt-slack');
    expect(verdict(note.value)).toBe('belt-right');
    expect(verdict((note.high as number) * 1.01)).toBe('belt-tight');
    expect(verdict((note.high as number) * 1.2)).toBe('belt-too-tight');
  });

  it('is the same whether the belt is pushed or plucked', () => {
    const a = answer({});
    const push = valueOf(a, 'pushForce', 'quantity');
    const measured = valueOf(answer({ reading: 'force', force: push.value }), 'measured', 'quantity').value;
    expect(measured / valueOf(a, 'staticTension', 'quantity').value).toBeCloseTo(1, 10);
  });

  it('is set higher for a new belt than for one that has run in', () => {
    const [fresh, old] = [
      valueOf(answer({}), 'staticTension', 'quantity'),
      valueOf(answer({ beltState: 'run-in' }), 'staticTension', 'quantity'),
    ];
    expect(fresh.low).toBeCloseTo(old.high as number, 10);
  });
});
