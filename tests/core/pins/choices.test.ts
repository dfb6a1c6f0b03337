/** Limits that are the shop's or our own choice: they stand here so that they change on purpose only. */
import { describe, expect, it } from 'vitest';
import { formatNumber } from '../../../src/core/quantity/index.ts';
import { costOfSayingYes } from '../../../src/core/topics/repair-worth/index.ts';
import { topics } from '../../../src/core/registry.ts';
import { readInputs } from '../../../src/core/contract/read-inputs.ts';
import type { RawInputs } from '../../../src/core/contract/field.ts';
import type { Result } from '../../../src/core/contract/result.ts';

function run(name: string, raw: RawInputs): Result | undefined {
  const topic = topics[name];
  const read = readInputs(topic?.fields ?? [], raw);
  return read.ok ? topic?.compute(read.inputs) : { ok: false, problems: 'problems' in read ? read.problems : [] };
}

describe('bearing seats', () => {
  const far = (across: number) => {
    const result = run('bearing-fit', {
      seat: 'shaft',
      size: 25,
      zone: 'k5',
      basis: 'readings',
      readings: [{ across, quarter: 25 }],
    });
    return result && !result.ok ? result.problems.map((p) => p.code) : [];
  };

  it('a reading over 2 % and half a millimeter off the size is a slip: 25 +/- 1 mm', () => {
    expect(far(26.001)).toEqual(['reading-far']);
    expect(far(23.999)).toEqual(['reading-far']);
    expect(far(25.999)).toEqual([]);
  });

  it('readings may differ by half the tolerance and what the gauge can tell', () => {
    // 25 k5 is 9 µm wide (ISO 286-1): 4.5 µm and a gauge of 3 µm.
    const form = (apart: number) => {
      const readings = [{ across: 25.006 + apart / 1000, quarter: 25.006 }];
      const result = run('bearing-fit', { seat: 'shaft', size: 25, zone: 'k5', basis: 'readings', gauge: 3, readings });
      return result?.ok ? result.values.flatMap((v) => (v.kind === 'verdict' && v.key === 'form' ? [v.code] : [])) : [];
    };
    expect([form(4.4), form(4.6), form(7.4), form(7.6)].flat()).toEqual([
      'form-even',
      'form-at-limit',
      'form-at-limit',
      'form-uneven',
    ]);
  });

  it('two zones whose means lie within 3 µm hold alike', () => {
    // 25 k5 +11/+2 and j6 +9/-4 (ISO 286-1) lie 4 µm apart in the mean, k5 and k5 none.
    const choice = (zone: string) => {
      const result = run('bearing-fit', { seat: 'shaft', size: 25, zone, basis: 'limits', turning: 'inner' });
      return result?.ok
        ? result.values.flatMap((v) => (v.kind === 'verdict' && v.key === 'choice' ? [v.code] : []))
        : [];
    };
    expect([choice('k5'), choice('j6'), choice('m5')].flat()).toEqual([
      'zone-as-advised',
      'zone-looser',
      'zone-tighter',
    ]);
  });
});

it.each([
  [1_234_567, '1234567'],
  [9_999_400, '9999400'],
  [12_345_678, '1.235e7'],
  [0.0000123, '0.0000123'],
  [0.00000123, '1.23e−6'],
])('%f is written out between 1e-5 and 1e7', (value, text) => {
  expect(formatNumber(value)).toBe(text);
});

it('a credited fee never pays the customer: a bill of 30 with a fee of 45 credited costs nothing more', () => {
  expect(costOfSayingYes(30, 45, true)).toBe(0);
  expect(costOfSayingYes(130, 45, true)).toBe(85);
  expect(costOfSayingYes(30, 45, false)).toBe(30);
});
