import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  ageToChange,
  compute,
  costOfChangingNow,
  costOfLeaving,
  costOfMending,
  fields,
  wearToReplace,
  words,
} from '../../../../src/core/topics/part-change/index.ts';
import type { RawInputs } from '../../../../src/core/contract/field.ts';
import { readInputs } from '../../../../src/core/contract/read-inputs.ts';

const money = fc.integer({ min: 1, max: 500 });
const life = fc.record({
  shape: fc.double({ min: 1.1, max: 5, noNaN: true }),
  scale: fc.integer({ min: 50, max: 2000 }),
});
const horizon = fc.integer({ min: 1, max: 800 });

describe('a healthy part within reach', () => {
  it('is left when it is new', () => {
    fc.assert(
      fc.property(money, money, life, horizon, (part, reopen, l, h) => {
        expect(costOfLeaving(part, reopen, l, h, 0)).toBeLessThan(costOfChangingNow(part, reopen, l, h));
      }),
    );
  });

  it('costs more to leave the older it is', () => {
    fc.assert(
      fc.property(money, money, life, horizon, fc.integer({ min: 0, max: 500 }), (part, reopen, l, h, age) => {
        expect(costOfLeaving(part, reopen, l, h, age + 50)).toBeGreaterThanOrEqual(
          costOfLeaving(part, reopen, l, h, age) - 1e-9,
        );
      }),
    );
  });

  it('is changed from the age on at which both cost the same', () => {
    fc.assert(
      fc.property(money, money, life, horizon, (part, reopen, l, h) => {
        const age = ageToChange(part, reopen, l, h);
        if (age !== undefined && age > 0)
          expect(costOfLeaving(part, reopen, l, h, age)).toBeCloseTo(costOfChangingNow(part, reopen, l, h), 4);
      }),
    );
  });

  it('that fails by chance is never changed early', () => {
    fc.assert(
      fc.property(money, money, horizon, (part, reopen, h) => {
        expect(ageToChange(part, reopen, { shape: 1, scale: 400 }, h)).toBeUndefined();
      }),
    );
  });

  it('does not depend on the unit of time', () => {
    fc.assert(
      fc.property(money, money, life, horizon, (part, reopen, l, h) => {
        expect(costOfLeaving(part, reopen, { ...l, scale: l.scale * 3600 }, h * 3600, 100 * 3600)).toBeCloseTo(
          costOfLeaving(part, reopen, l, h, 100),
          8,
        );
      }),
    );
  });
});

describe('a failed part', () => {
  it('costs the same to mend or replace at the wear between the two', () => {
    fc.assert(
      fc.property(money, money, money, life, horizon, (mend, part, reopen, l, h) => {
        const wear = wearToReplace(mend, part, reopen, l, h);
        if (wear !== undefined)
          expect(costOfMending(mend, part, reopen, l, h, wear)).toBeCloseTo(costOfChangingNow(part, reopen, l, h), 6);
      }),
    );
  });
});

describe('the answer', () => {
  const answer = (raw: RawInputs) => {
    const read = readInputs(fields, raw);
    return read.ok ? compute(read.inputs) : { ok: false as const, problems: [] };
  };
  it('has words for every verdict it gives', () => {
    for (const raw of [{}, { age: 0 }, { shape: 1 }, { shape: 0.7 }, { mend: true }, { mend: true, mendWear: 5 }]) {
      const result = answer(raw);
      expect(result.ok).toBe(true);
      if (result.ok)
        for (const v of result.values) if (v.kind === 'verdict') expect(words.verdicts[v.code], v.code).toBeDefined();
    }
  });
  it('stands up to a part many lives old', () => {
    expect(answer({ age: 100000, mean: 1 }).ok).toBe(true);
  });
  it('shows what leaving and changing cost as money, at every age', () => {
    const result = answer({});
    const table = result.ok ? result.values.find((v) => v.key === 'ageTable') : undefined;
    expect(table?.kind === 'table' && table.columns.filter((c) => c.money).map((c) => c.key)).toEqual(['leave', 'now']);
  });
});
