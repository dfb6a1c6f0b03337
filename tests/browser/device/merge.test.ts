/** Two windows changed one record: what each changed alone is kept, what both changed is told. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { merge } from '../../../src/browser/device/merge.ts';
import { readRecord, writeRecord, isParts, type Kind } from '../../../src/browser/device/record.ts';
import { emptyHead, entryKind, headKind } from '../../../src/browser/device/sheet.ts';

describe('merging', () => {
  it('takes each part from the side that changed it', () => {
    const base = { customer: '', notes: 'wet', checks: { idle: true } };
    const mine = { customer: 'R. Amsel', notes: 'wet', checks: { idle: true, water: true } };
    const theirs = { customer: '', notes: 'cut wet all week', checks: { idle: true, stop: false } };
    expect(merge(base, mine, theirs)).toEqual({
      data: { customer: 'R. Amsel', notes: 'cut wet all week', checks: { idle: true, water: true, stop: false } },
      conflicts: [],
    });
  });

  it('names the part both changed, and holds mine there', () => {
    const merged = merge({ a: { b: 1 }, c: 1 }, { a: { b: 2 }, c: 1 }, { a: { b: 3 }, c: 5 });
    expect(merged).toEqual({ data: { a: { b: 2 }, c: 5 }, conflicts: ['a.b'] });
  });

  it('keeps what one side took out and the other left alone taken out', () => {
    expect(merge({ a: 1, b: 2 }, { b: 2 }, { a: 1, b: 3 })).toEqual({ data: { b: 3 }, conflicts: [] });
  });

  it('asks about everything that differs when the page never saw the record', () => {
    expect(merge(undefined, { a: 1, b: 1 }, { a: 2, b: 1 }).conflicts).toEqual(['a']);
  });

  it('loses nothing: every part of the outcome is mine or theirs, and a part that differs from both sides’ wish is told', () => {
    const parts = fc.dictionary(fc.constantFrom('a', 'b', 'c'), fc.integer({ min: 0, max: 3 }));
    fc.assert(
      fc.property(parts, parts, parts, (base, mine, theirs) => {
        const { data, conflicts } = merge(base, mine, theirs);
        for (const key of ['a', 'b', 'c']) {
          const [b, m, t] = [base[key], mine[key], theirs[key]];
          const both = m !== b && t !== b && m !== t;
          expect(conflicts.includes(key) || conflicts.includes('')).toBe(both);
          expect((data as Record<string, unknown>)[key]).toBe(m !== b ? m : t);
        }
      }),
    );
  });
});

describe('a record as text', () => {
  const kind: Kind<{ n: number }> = {
    name: 'number',
    version: 2,
    read: (data, version) => {
      const n = isParts(data) ? data[version === 1 ? 'count' : 'n'] : undefined;
      return typeof n === 'number' ? { n } : undefined;
    },
  };

  it('is read back', () => {
    expect(readRecord(kind, writeRecord(kind, { n: 3 }, 17))).toEqual({ data: { n: 3 }, at: 17 });
  });
  it('of an older schema is brought up to date', () => {
    expect(readRecord(kind, '{"v":1,"at":5,"data":{"count":4}}')).toEqual({ data: { n: 4 }, at: 5 });
  });
  it('of a newer schema is left alone', () => {
    expect(readRecord(kind, '{"v":3,"at":5,"data":{"m":4}}')).toEqual({ bad: 'newer' });
  });
  it.each([
    '',
    '{',
    'null',
    '7',
    '[]',
    '{"v":2}',
    '{"v":2,"at":1,"data":{"n":"4"}}',
    '{"v":"2","at":1,"data":{"n":4}}',
  ])('%j is no record', (text) => expect(readRecord(kind, text)).toEqual({ bad: 'corrupt' }));
});

describe('what a job sheet takes in', () => {
  it('leaves out parts it does not know and fills those that are missing', () => {
    expect(headKind.read({ customer: 'R. Amsel', checks: { idle: true, stop: 'perhaps' }, colour: 'red' }, 1)).toEqual({
      ...emptyHead,
      customer: 'R. Amsel',
      checks: { idle: true },
    });
  });
  it('refuses an entry without a kind or a time', () => {
    expect(entryKind.read({ kind: 'joke', at: 1 }, 1)).toBeUndefined();
    expect(entryKind.read({ kind: 'note' }, 1)).toBeUndefined();
    expect(entryKind.read({ kind: 'note', at: 1, title: 'Cut wet' }, 1)).toMatchObject({
      title: 'Cut wet',
      inputs: [],
    });
  });
});
