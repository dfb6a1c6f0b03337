import { describe, expect, it } from 'vitest';
import {
  compute,
  example,
  fields,
  preload,
  preloadAt,
  proofStress,
  sizes,
  stressArea,
  threadOf,
  tighteningTorque,
} from '../../../../src/core/topics/bolt-torque/index.ts';
import { readInputs } from '../../../../src/core/contract/read-inputs.ts';
import { valueOf } from '../../../../src/core/contract/result.ts';
import type { RawInputs } from '../../../../src/core/contract/field.ts';
import { answersAnything } from '../../any-input.ts';

function answer(raw: RawInputs) {
  const read = readInputs(fields, { ...example, ...raw });
  const result = read.ok ? compute(read.inputs) : undefined;
  if (!result?.ok) throw new Error(`Refused: ${JSON.stringify(result ?? read)}`);
  return result;
}
const torque = (raw: RawInputs) => valueOf(answer(raw), 'torque', 'quantity').value;

describe('bolt torque', () => {
  answersAnything('bolt-torque');

  it('the stress areas agree with the thread formula within the rounding of the table', () => {
    for (const size of sizes) {
      const t = threadOf(size);
      expect(Math.abs(stressArea(t.diameter, t.pitch) / t.area - 1), size).toBeLessThan(0.005);
    }
  });

  it('torque and preload undo each other', () => {
    expect(preloadAt(tighteningTorque(0.18, 16000, 0.008), 0.18, 0.008)).toBeCloseTo(16000, 9);
    expect(preload(0.75, 580e6, 36.6e-6)).toBeCloseTo(15921, 6);
  });

  it('a larger bolt, a higher class and a drier thread take more torque', () => {
    sizes.slice(1).forEach((size, i) => expect(torque({ size }), size).toBeGreaterThan(torque({ size: sizes[i] })));
    expect(torque({ boltClass: '10.9' })).toBeGreaterThan(torque({ boltClass: '8.8' }));
    expect(torque({ boltClass: '12.9' })).toBeGreaterThan(torque({ boltClass: '10.9' }));
    const states = ['plain', 'zinc', 'oiled', 'cadmium', 'anti-seize'];
    states.slice(1).forEach((state, i) => expect(torque({ state }), state).toBeLessThan(torque({ state: states[i] })));
  });

  it('class 8.8 is stronger above 16 mm', () => {
    expect([proofStress('M16', '8.8'), proofStress('M18', '8.8')]).toEqual([580e6, 600e6]);
  });

  it('ten oiled bolts at one torque would lie in the range given', () => {
    // Shigley Table 8-14: 30.3 to 40.5 kN about a mean of 34.3 kN.
    const p = valueOf(answer({ state: 'oiled' }), 'preload', 'quantity');
    expect((p.low ?? NaN) / p.value).toBeLessThan(30.3 / 34.3);
    expect((p.high ?? NaN) / p.value).toBeGreaterThan(40.5 / 34.3);
  });

  it('reminds of left-hand threads, thread-locker and soft threads only where they are', () => {
    const codes = (raw: RawInputs) => answer(raw).values.flatMap((v) => (v.kind === 'verdict' ? [v.code] : []));
    expect(codes({ leftHand: 'no' })).not.toContain('left-hand');
    expect(codes({ leftHand: 'yes', locker: 'yes', into: 'light', engaged: '5 mm' })).toEqual(
      expect.arrayContaining(['left-hand', 'locker-on-oil', 'casting-governs']),
    );
    expect(answer({ share: 90 }).cautions.map((c) => c.hazard)).toEqual(['bolt-breaks']);
  });

  it('does not call a bolt overloaded at exactly its proof load', () => {
    const overloaded = (share: number) => answer({ share, state: 'oiled' }).values.some((v) => v.key === 'overload');
    // Oiled, the pull may be a quarter more: 80 % of 1.25 is the proof load.
    expect([79.9, 80, 80.1].map(overloaded)).toEqual([false, false, true]);
  });
});

describe('a thread in light alloy', () => {
  const m6 = { size: 'M6', state: 'zinc', into: 'light', shear: '144 MPa' };

  it('has no torque without the length engaged', () => {
    expect(readInputs(fields, { ...example, ...m6 })).toMatchObject({ ok: false });
  });

  it('cuts the torque to half its stripping force, said above the figure', () => {
    // 0.875 pi 6 mm L 144 MPa / 2 is 8743.5 N, the bolt's 75 %, at L = 7.363 mm.
    const code = (engaged: string) => valueOf(answer({ ...m6, engaged }), 'casting', 'verdict').code;
    expect(code('7.36 mm')).toBe('casting-governs');
    expect(code('7.37 mm')).toBe('casting-bears-it');
    const short = answer({ ...m6, engaged: '6 mm' });
    expect(short.values[0]).toMatchObject({ key: 'casting', level: 'caution', main: true });
    expect(valueOf(short, 'torque', 'quantity').value).toBeLessThan(torque({ ...m6, into: 'steel' }));
    expect(short.cautions.map((c) => c.hazard)).toEqual(['bolt-breaks']);
  });

  it('never gives more than the same bolt in steel', () => {
    for (const size of sizes)
      for (const engaged of ['4 mm', '12 mm', '60 mm'])
        expect(torque({ size, into: 'light', engaged })).toBeLessThanOrEqual(
          torque({ size, into: 'steel' }) * (1 + 1e-12),
        );
  });
});

describe('hydrogen in hard plated steel', () => {
  const warned = (raw: RawInputs) =>
    answer(raw).values.some((v) => v.key === 'plated' && 'level' in v && v.level === 'stop');

  it('stops a plated 12.9 and nothing softer or unplated', () => {
    expect(['zinc', 'cadmium'].map((state) => warned({ boltClass: '12.9', state }))).toEqual([true, true]);
    expect(['plain', 'oiled', 'anti-seize'].map((state) => warned({ boltClass: '12.9', state }))).toEqual([
      false,
      false,
      false,
    ]);
    expect(['8.8', '10.9'].map((boltClass) => warned({ boltClass, state: 'zinc' }))).toEqual([false, false]);
    expect(answer({ boltClass: '12.9', state: 'zinc' }).values[0]?.key).toBe('plated');
    expect(warned({ series: 'inch', grade: '8', state: 'zinc' })).toBe(false);
  });
});
