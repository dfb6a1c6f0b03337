/** Zones as people write them, and kinds of fit at their limits. */
import { describe, expect, it } from 'vitest';
import {
  compute,
  fields,
  kindOfFit,
  readZone,
  words,
  zonePair,
} from '../../../../src/core/topics/limits-fits/index.ts';
import { describeProblem } from '../../../../src/core/contract/messages.ts';
import { readInputs } from '../../../../src/core/contract/read-inputs.ts';
import type { RawInputs } from '../../../../src/core/contract/field.ts';

function work(raw: RawInputs) {
  const read = readInputs(fields, raw);
  return read.ok ? compute(read.inputs) : { ok: false as const, problems: 'problems' in read ? read.problems : [] };
}

const texts = (raw: RawInputs) => {
  const result = work(raw);
  return result.ok ? result.values.flatMap((v) => (v.kind === 'text' ? [v.value] : [])) : [];
};
const refusal = (raw: RawInputs) => {
  const result = work(raw);
  return result.ok ? '' : describeProblem(result.problems[0] ?? { field: '', code: '' }, { fields, words });
};

describe('zones as typed', () => {
  it('a nought before the grade is no other grade, 01 and 0 are', () => {
    expect(readZone('H07')?.name).toBe('H7');
    expect(readZone('js06')?.name).toBe('js6');
    expect(readZone('H01')?.name).toBe('H01');
    expect(readZone('H0')?.name).toBe('H0');
    expect(texts({ size: 52, zone: 'H07' })).toContain('H7');
  });

  it('a whole fit fills both boxes', () => {
    expect(zonePair('H7/k6')).toEqual({ hole: 'H7', shaft: 'k6' });
    expect(zonePair('k06 / H7')).toEqual({ hole: 'H7', shaft: 'k6' });
    for (const typed of ['H7k6', 'H7-k6', 'H7 k6', 'k6H7'])
      expect(zonePair(typed)).toEqual({ hole: 'H7', shaft: 'k6' });
    expect(zonePair('H7/K6')).toBeUndefined();
    expect(texts({ size: 52, zone: 'H7/k6' })).toContain('H7/k6');
  });

  it('where one is wanted it says which two were written', () => {
    expect(refusal({ size: 52, zone: 'H7', mate: 'H7/k6' })).toMatch(/Write one of them here: H7 .* or k6/);
    expect(refusal({ size: 52, zone: 'H7/k6', mate: 'h6' })).toMatch(/Write one of them here/);
  });

  it('a comma in the size is the decimal one where the other reading is far outside the tables', () => {
    const read = readInputs(fields, { size: '19,996 mm', zone: 'h6' }, {});
    expect('said' in read && read.said['size']).toBe('19.996 mm');
  });

  it('a size a hair over the end of the tables is named in full', () => {
    expect(refusal({ size: 3150.0000001, zone: 'H7' })).toMatch(/3150\.0000001\u00a0mm is outside/);
    expect(work({ size: 3150, zone: 'H7' }).ok).toBe(true);
  });

  it('no clearance and no interference is a clearance fit; a picometer is where either begins', () => {
    const kind = (least: number, most: number) => kindOfFit({ least, most, mean: (least + most) / 2 });
    expect([-1e-9, 0, 1e-9].map((most) => kind(-1e-6, most))).toEqual(['clearance', 'clearance', 'transition']);
    expect([-1e-9, 0, 1e-9].map((least) => kind(least, 1e-6))).toEqual(['transition', 'transition', 'interference']);
  });
});
