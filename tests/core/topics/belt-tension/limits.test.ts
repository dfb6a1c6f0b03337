/**
 * Each verdict just below, at and just above its limit, and the hazard of a belt set too tight. Expected tensions come from
 * the taut string, T = 4 m S^2 f^2, and from the printed window (Bloch and Geitner, vol. 4, p. 326); belt speeds from pi d n;
 * stresses from a C belt of 22 x 14 mm allowed 2.2 MPa (Jindal). Highest belt speeds are from memory.
 */
import { describe, expect, it } from 'vitest';
import { compute, example, fields } from '../../../../src/core/topics/belt-tension/index.ts';
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
const code = (a: Answer, key: string) => valueOf(a, key, 'verdict').code;
const has = (a: Answer, key: string) => a.values.some((v) => v.key === key);

describe('a reading against the window', () => {
  const window = valueOf(answer({ beltState: 'run-in' }), 'staticTension', 'quantity');
  const [low, high] = [window.low ?? 0, window.high ?? 0];
  const span = valueOf(answer({}), 'span', 'quantity').value;
  /** The note of a limp span of the weighed belt at a tension. */
  const plucked = (tension: number) =>
    answer({
      beltState: 'run-in',
      reading: 'frequency',
      mass: '8 g/m',
      frequency: `${Math.sqrt(tension / 0.008) / (2 * span)} Hz`,
    });
  const verdicts = (tension: number) => [0.999, 1, 1.001].map((k) => code(plucked(tension * k), 'verdict'));

  it('is as wide as printed: one to one and a half times the least tension', () => {
    expect(high / low).toBeCloseTo(1.5, 9);
  });

  it('changes its verdict at each limit and not beside it', () => {
    expect(verdicts(low)).toEqual(['belt-slack', 'belt-right', 'belt-right']);
    expect(verdicts(high)).toEqual(['belt-right', 'belt-right', 'belt-tight']);
    expect(verdicts(high * 1.33)).toEqual(['belt-tight', 'belt-tight', 'belt-too-tight']);
  });

  it('raises the hazard of too tight a belt only then', () => {
    const raised = (tension: number) => plucked(tension).cautions.some((c) => c.hazard === 'belt-over-tension');
    expect([low, high, high * 1.32, high * 1.34].map(raised)).toEqual([false, false, false, true]);
    expect(answer({}).cautions.map((c) => c.hazard)).toEqual(['moving-belt']);
  });

  it('refuses a push deeper than an eighth of the span', () => {
    const pushed = (share: number) => {
      const read = readInputs(fields, {
        ...example,
        reading: 'force',
        force: '200 N',
        deflection: `${share * span * 1000} mm`,
      });
      const result = read.ok ? compute(read.inputs) : undefined;
      return result?.ok ? 'an answer' : result?.problems[0]?.code;
    };
    expect([0.1249, 0.125, 0.1251].map(pushed)).toEqual(['an answer', 'an answer', 'pushed-too-far']);
  });
});

describe('grip when wet', () => {
  /** The margin when wet, found again from the strands: (T_0 - T_c) 2 (R - 1) / (R + 1) / F. */
  const at = (wetGrip: number) => answer({ wetGrip });
  const margin = (wetGrip: number) => valueOf(at(wetGrip), 'slipMarginWet', 'number').value;
  /** The share of grip at which the margin is what is asked, by halving. */
  const gripFor = (wanted: number) => {
    let [low, high] = [5, 100];
    for (let n = 0; n < 60; n += 1) {
      const middle = (low + high) / 2;
      if (margin(middle) < wanted) low = middle;
      else high = middle;
    }
    return high;
  };

  it('slips under a margin of 1, is near under 1.2, holds from there', () => {
    const [one, near] = [gripFor(1), gripFor(1.2)];
    expect([one * 0.999, one * 1.001].map((g) => code(at(g), 'wetVerdict'))).toEqual(['wet-slips', 'wet-near']);
    expect([near * 0.999, near * 1.001].map((g) => code(at(g), 'wetVerdict'))).toEqual(['wet-near', 'wet-holds']);
  });
});

describe('a belt that cannot be this drive’s belt', () => {
  it('is said where one classical Z belt has to carry 3.9 kW at 31 m/s', () => {
    const z = {
      section: 'Z',
      belts: 1,
      enginePulley: '66 mm',
      bladePulley: '110 mm',
      centre: '255 mm',
      power: '3.9 kW',
      rotation: 9000,
    };
    const a = answer(z);
    // pi 66 mm 9000 rpm = 31.1 m/s; 10 x 6 mm at 40 degrees is 46.9 mm2.
    expect(a.values.slice(0, 2).map((v) => v.key)).toEqual(['speedVerdict', 'loadVerdict']);
    expect(code(a, 'loadVerdict')).toBe('belt-overloaded');
    // One narrow belt of the same width, or two of them, is a drive.
    expect(has(answer({ ...z, section: 'SPZ' }), 'loadVerdict')).toBe(false);
    expect(has(answer({ ...z, section: 'SPZ' }), 'speedVerdict')).toBe(false);
    expect(has(answer({ ...z, belts: 3 }), 'loadVerdict')).toBe(false);
  });

  it('is not said of a floor saw on three A belts, a hire yard’s ribbed belt, a hobby saw', () => {
    const floor = {
      section: 'A',
      belts: 3,
      enginePulley: '118 mm',
      bladePulley: '150 mm',
      centre: '400 mm',
      power: '9.5 kW',
      rotation: 3600,
    };
    for (const drive of [floor, {}, { section: 'PJ', belts: 5, power: '2 kW', rotation: 8000 }]) {
      expect(has(answer(drive), 'loadVerdict')).toBe(false);
      expect(has(answer(drive), 'speedVerdict')).toBe(false);
    }
  });

  it('is said above the speed of its section and not at it', () => {
    // 30 m/s on 100 mm is 5729.58 rpm, 40 m/s 7639.44 rpm; 60 m/s on 52 mm 22036.9 rpm is out of the box, on 114 mm 10051.9.
    const fast = (section: string, rotation: number) =>
      has(
        answer({ section, belts: 4, enginePulley: '100 mm', bladePulley: '160 mm', power: '2 kW', rotation }),
        'speedVerdict',
      );
    expect([5729, 5730].map((n) => fast('A', n))).toEqual([false, true]);
    expect([7639, 7640].map((n) => fast('SPZ', n))).toEqual([false, true]);
    expect([9549, 9550].map((n) => fast('PK', n))).toEqual([false, true]);
    expect([11459, 11460].map((n) => fast('PJ', n))).toEqual([false, true]);
  });

  it('is said from twice what the textbook allows, 4.4 MPa, and not at it', () => {
    // C, 22 x 14 mm, 40 degrees: 14 (22 - 14 tan 20) = 236.661 mm2. Equal pulleys of 250 mm at 1000 rpm: 13.0900 m/s, ratio 5.
    // 4.4 MPa is 1041.31 N; less m v^2 = 0.35 x 171.35 = 59.97 N leaves 981.34 N, of which 4/5 pull: 785.07 N, 10.2766 kW.
    const loaded = (power: string) =>
      has(
        answer({
          section: 'C',
          belts: 1,
          enginePulley: '250 mm',
          bladePulley: '250 mm',
          centre: '800 mm',
          rotation: 1000,
          power,
        }),
        'loadVerdict',
      );
    expect(['10.27 kW', '10.29 kW'].map(loaded)).toEqual([false, true]);
  });
});

describe('the small pulley', () => {
  it('is called small under the least diameter of its section and not at it', () => {
    const small = (section: string, d: string) =>
      has(answer({ section, belts: 2, enginePulley: d, power: '1 kW', rotation: 3000 }), 'pulleyVerdict');
    // Least datum diameters: A 71 mm (DIN 2211), PJ 20 mm (memory).
    expect(['70.9 mm', '71 mm', '71.1 mm'].map((d) => small('A', d))).toEqual([true, false, false]);
    expect(['19.9 mm', '20 mm'].map((d) => small('PJ', d))).toEqual([true, false]);
  });
});

describe('ribbed belts', () => {
  it('are said to be reckoned otherwise by some', () => {
    expect(valueOf(answer({}), 'staticTension', 'quantity').note).toMatch(/4 to 1/);
    expect(valueOf(answer({ section: 'A', belts: 3 }), 'staticTension', 'quantity').note).toBeUndefined();
  });
});
