import { describe, expect, it } from 'vitest';
import { readSum } from '../../../src/core/quantity/sum.ts';

const length = { dimension: 'length', unit: 'mm' } as const;

function read(text: string, unit: 'mm' | 'in' = 'mm') {
  return readSum(text, { dimension: 'length', unit });
}

function refusal(text: string): string {
  const r = read(text);
  return r.ok || 'sum' in r ? 'an answer' : r.problem.code;
}

describe('sums in a box', () => {
  it.each([
    ['3/8 in + 0.002 in', 0.0095758],
    ['1-3/16 in - 1/16 in', 0.028575],
    ['25 mm + 1 in', 0.0504],
    ['2 * 25 mm', 0.05],
    ['25 mm × 2', 0.05],
    ['(1 in + 2 in) / 2', 0.0381],
    ['25 + 0.02', 0.02502],
    ['2 * (25 + 1)', 0.052],
    ['1⅜ in + 5 thou', 0.035052],
    ['-(1 mm - 3 mm)', 0.002],
    ['25,4 mm', 0.0254],
    ['5 ft 3 in + 1 in', 1.6256],
    ['5\'3" + 1/2"', 1.6129],
    ['(5 ft 1-3/4 in) / 2', 0.784225],
  ])('%s', (text, metres) => {
    const r = read(text);
    expect(r.ok && r.si).toBeCloseTo(metres, 12);
  });

  it('takes bare numbers in the unit beside the box when nothing in the sum has a unit', () => {
    const r = read('1 + 3/16', 'in');
    expect(r.ok && r.si).toBeCloseTo(0.0301625, 12);
  });

  it.each([
    ['1 + 3/16 in', 'unit-each'],
    ['3 in * 2 in', 'sum-wrong-dimension'],
    ['3 / 2 in', 'sum-wrong-dimension'],
    ['3 in + 2 kg', 'wrong-dimension'],
    ['3 in + (2 in', 'sum-not-readable'],
    ['3 in + 2 blob', 'unknown-unit'],
    ['3 in / 0', 'sum-not-readable'],
    ['1.2.3 mm + 1 mm', 'two-points'],
    ['f(x) = x + 1', 'sum-not-readable'],
    ['createUnit("x") + 1', 'sum-not-readable'],
    ['[1,2] * 2', 'sum-not-readable'],
    ['9999999! + 1', 'unknown-unit'],
    ['1 in 5 ft + 1 in', 'not-one-quantity'],
    ['(25 mm + 1) * 2', 'unit-each'],
    ['2 * (3 mm * 4 mm)', 'sum-wrong-dimension'],
    ['-(3 mm * 4 mm) + 1 mm', 'sum-wrong-dimension'],
    ['5 ft 3 + 1 in', 'not-one-quantity'],
  ])('"%s" is refused: %s', (text, code) => expect(refusal(text)).toBe(code));

  it('adds no temperatures', () => {
    const r = readSum('20 °C + 5 °C', { dimension: 'temperature', unit: '°C' });
    expect(!r.ok && 'problem' in r && r.problem.code).toBe('no-temperature-sum');
  });

  it('reads a plain quantity as the plain reader does', () => {
    expect(readSum('5 ft 3 in', length)).toMatchObject({ ok: true, si: 1.6002 });
  });

  it.each([
    ['3/8 in + 0.002 in', 'length', 'mm', '9.5758 mm'],
    ['20 °C + 30 °C', 'temperature-difference', '°C diff', '50 °C'],
    ['20 mm2 + 3 mm2', 'area', 'mm2', '23 mm²'],
    ['1 + 2', 'ratio', '1', '3'],
  ] as const)('says what %s came to in units as people write them', (text, dimension, unit, said) => {
    const r = readSum(text, { dimension, unit });
    expect(r.ok && r.said).toBe(said);
  });

  it.each([
    ['1+'.repeat(5000) + '1', 'too-long'],
    ['-'.repeat(5000) + '1 + 1', 'too-long'],
    [`1 ${'+ 1 '.repeat(49)}`, 'an answer'],
    [`${'('.repeat(98)}1${')'.repeat(98)}`, 'an answer'],
  ])('a sum of any length is answered or refused', (text, outcome) => expect(refusal(text)).toBe(outcome));
});
