/** Each verdict of the life sum just below, at and just above its limit, and the exponent of rollers. */
import { describe, expect, it } from 'vitest';
import {
  basicRevolutions,
  cleanliness,
  compute,
  fields,
  ratingNeeded,
  words,
} from '../../../../src/core/topics/bearing-life/index.ts';
import { sayer } from '../../../../src/core/contract/messages.ts';
import { readInputs } from '../../../../src/core/contract/read-inputs.ts';
import { valueOf } from '../../../../src/core/contract/result.ts';
import type { RawInputs } from '../../../../src/core/contract/field.ts';

const own = { rating: 'own', dynamicRating: 10, staticRating: 20, pitch: 40, belt: 900, speed: 3000, dirt: 'high' };

function work(raw: RawInputs) {
  const read = readInputs(fields, { ...own, ...raw });
  if (!read.ok) throw new Error(JSON.stringify(read));
  return compute(read.inputs);
}
function answer(raw: RawInputs) {
  const result = work(raw);
  if (!result.ok) throw new Error(`Refused: ${JSON.stringify(result)}`);
  return result;
}
const code = (raw: RawInputs, key: string) => valueOf(answer(raw), key, 'verdict').code;

describe('limits of the life sum', () => {
  it('the sum holds to half the dynamic rating, the races to the static one', () => {
    const load = (belt: number, staticRating = 20) => code({ belt, staticRating }, 'loadVerdict');
    expect([4999, 5000, 5001].map((n) => load(n))).toEqual(['load-fine', 'load-fine', 'load-high']);
    expect([3999, 4000, 4001].map((n) => load(n, 4))).toEqual(['load-fine', 'load-fine', 'load-dents']);
  });

  it('oil a tenth as thick as wanted is the thinnest', () => {
    // 4500 / sqrt(2500) / sqrt(81) = 10 mm2/s wanted (ISO 281), a tenth of it is 1.
    const thin = (viscosity: number) => work({ speed: 2500, pitch: 81, viscosity }).ok;
    expect([0.99, 1, 1.01].map(thin)).toEqual([false, true, true]);
  });

  it('1000 rpm and 100 mm change the sums', () => {
    const used = (raw: RawInputs) => answer(raw).working.map((s) => s.formula);
    expect(used({ speed: 999 })).toContain('bearing-life/viscosity-slow');
    expect(used({ speed: 1000 })).toContain('bearing-life/viscosity-fast');
    expect(used({ pitch: 100 })).toContain('bearing-life/fatigue-limit');
    expect(used({ pitch: 100.1 })).toContain('bearing-life/fatigue-limit-large');
    // The table of cleanliness counts 100 mm itself as large.
    expect([0.0999, 0.1, 0.1001].map((pitch) => cleanliness('slight', pitch)[0])).toEqual([0.3, 0.4, 0.4]);
  });

  it('a push along the shaft counts from where axial over radial passes e', () => {
    // C0 20 kN, push 280 N: share 0.014, e 0.19 (Shigley, Table 11-1): it counts below a pull of 280 / 0.19 = 1473.7 N.
    const load = (belt: number) => valueOf(answer({ axial: 280, belt }), 'load', 'quantity').value;
    expect(load(1473)).toBeCloseTo(0.56 * 1473 + 2.3 * 280, 6);
    expect(load(280 / 0.19)).toBeCloseTo(280 / 0.19, 6);
    expect(load(1474)).toBeCloseTo(1474, 6);
  });
});

describe('what seals are worth', () => {
  // Thick oil: the viscosity ratio is held at 4, so that life goes as one over the speed and nothing else.
  const thick = { viscosity: 2000, dynamicRating: 40, staticRating: 20, belt: 1000, dirt: 'very-severe' };

  it('ends where the machine ends, at 100,000 hours', () => {
    // Slurry leaves a tenth: 0.1 x 40^3 million turns last 100,000 h at 0.1 x 64e9 / 60 / 1e5 = 1066.67 rpm.
    const at = 64e9 / 60 / 1e6;
    const worth = (speed: number) => code({ ...thick, speed }, 'worth');
    expect([at * 1.001, at, at * 0.999].map(worth)).toEqual(['seal-worth-most', 'life-beyond', 'life-beyond']);
  });

  it('is a figure as long as the sealed bearing ends before that', () => {
    const raw = { ...thick, belt: 6000 };
    const sealed = valueOf(answer({ ...raw, speed: 3000 }), 'sealedLife', 'quantity').value / 3600;
    const at = (3000 * sealed) / 1e5;
    const worth = (speed: number) => code({ ...raw, speed }, 'worth');
    expect(at).toBeGreaterThan(10);
    expect([at * 1.001, at, at * 0.999].map(worth)).toEqual(['seal-worth', 'seal-worth', 'seal-worth-most']);
  });

  it('is nothing for seals that are whole', () => {
    expect(code({ dirt: 'high', belt: 3000 }, 'worth')).toBe('seal-whole');
    expect(code({ dirt: 'extreme', belt: 3000 }, 'worth')).toBe('seal-whole');
    expect(code({ dirt: 'typical', belt: 3000 }, 'worth')).toBe('seal-worth');
    // Thick oil and a light load: dust costs the steel nothing, both ways end at fifty times the basic life.
    expect(code({ ...thick, dirt: 'slight', dynamicRating: 2, belt: 600, speed: 30000 }, 'worth')).toBe('seal-no-gain');
  });

  it('is said in two figures, never as a power of ten', () => {
    const a = answer({ ...thick, belt: 6000, speed: 3000 });
    const v = valueOf(a, 'worth', 'verdict');
    const said = words.verdicts[v.code]?.(v.data ?? {}, sayer({})) ?? '';
    expect(said).not.toMatch(/e\+/);
    expect(said).toMatch(/[1-9]\d?0*(?:,\d00)*\u00a0h/);
    expect(valueOf(a, 'life', 'quantity').figures).toBe(2);
  });
});

describe('rollers', () => {
  it('last by the power of ten thirds (ISO 281)', () => {
    // 2^(10/3) = 10.0793684 by logarithms: 10 x lg 2 / 3 = 1.00343332.
    expect(basicRevolutions(2, 1, 'roller') / 1e6).toBeCloseTo(10.0793684, 6);
    expect(basicRevolutions(2, 1) / 1e6).toBeCloseTo(8, 9);
    expect(ratingNeeded(1, 10.0793684e6, 'roller')).toBeCloseTo(2, 6);
  });
});
