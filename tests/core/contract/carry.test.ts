import { describe, expect, it } from 'vitest';
import { carriedInputs, type CarryFrom } from '../../../src/core/contract/carry.ts';
import type { Field } from '../../../src/core/contract/field.ts';
import { readInputs } from '../../../src/core/contract/read-inputs.ts';
import type { Answer } from '../../../src/core/contract/result.ts';
import { topics } from '../../../src/core/registry.ts';

const all = Object.entries(topics).flatMap(([from, topic]) =>
  (topic.carries ?? []).map((carry) => ({ name: `${from} to ${carry.to}, ${carry.what}`, topic, carry })),
);

const answer: Answer = {
  ok: true,
  working: [],
  cautions: [],
  values: [
    { kind: 'quantity', key: 'fit', label: 'Fit', value: 17e-6, low: -4e-6, high: 39e-6, units: ['µm', 'thou'] },
    { kind: 'text', key: 'zone', label: 'Zone', value: 'N7' },
  ],
};

describe('figures carried on', () => {
  const most: CarryFrom = { value: 'fit', end: 'high' };

  it('takes a field, a value, an end of its range and a fixed choice', () => {
    const carry = {
      to: 'x',
      what: 'the fit',
      with: {
        part: { is: 'ring' },
        size: { field: 'size' },
        room: { field: 'room' },
        mean: { value: 'fit' },
        most,
        zone: { value: 'zone' },
      },
    } as const;
    expect(carriedInputs(carry, { size: 0.052 }, answer)).toEqual({
      part: 'ring',
      size: 0.052,
      mean: 17e-6,
      most: 39e-6,
      zone: 'N7',
    });
  });

  it('is not offered where its condition is not met or a value is missing', () => {
    const carry = { to: 'x', what: 'the fit', with: { most } } as const;
    const when = { field: 'seat', is: ['shaft'] };
    expect(carriedInputs({ ...carry, when }, { seat: 'housing' }, answer)).toBeUndefined();
    expect(carriedInputs({ ...carry, when }, { seat: 'shaft' }, answer)).toEqual({ most: 39e-6 });
    expect(carriedInputs({ ...carry, given: 'warm' }, {}, answer)).toBeUndefined();
    expect(carriedInputs({ ...carry, given: 'fit' }, {}, answer)).toEqual({ most: 39e-6 });
    expect(carriedInputs({ ...carry, with: { most: { value: 'none' } } }, {}, answer)).toBeUndefined();
  });
});

/** What a field takes, so that two of them can be compared. */
const nature = (f: Field | undefined) => (f?.kind === 'quantity' ? f.dimension : f?.kind);

describe.each(all)('$name', ({ topic, carry }) => {
  const target = topics[carry.to];
  const own = (key: string) => topic.fields.find((f) => f.key === key);

  it('goes from fields that exist to fields of the same nature', () => {
    expect(target, carry.to).toBeDefined();
    if (carry.when) expect(own(carry.when.field), carry.when.field).toBeDefined();
    for (const [key, from] of Object.entries(carry.with)) {
      const to = target?.fields.find((f) => f.key === key);
      expect(to, `${carry.to} has no field ${key}`).toBeDefined();
      if ('is' in from && to?.kind === 'choice') expect(to.options.map((o) => o.value)).toContain(from.is);
      if (!('field' in from)) continue;
      const source = own(from.field);
      expect(nature(source), from.field).toBe(nature(to));
      if (source?.kind !== 'choice' || to?.kind !== 'choice' || carry.when?.field === from.field) continue;
      expect(to.options.map((o) => o.value)).toEqual(expect.arrayContaining(source.options.map((o) => o.value)));
    }
  });

  it('is offered by the worked example, or by one with its condition met, and is taken by the other', () => {
    const raw = carry.when ? { ...topic.example, [carry.when.field]: String(carry.when.is[0]) } : topic.example;
    const read = readInputs(topic.fields, raw);
    const result = read.ok ? topic.compute(read.inputs) : undefined;
    if (!read.ok || !result?.ok) return;
    const carried = carriedInputs(carry, read.inputs, result);
    if (!carried) return;
    const wrong = target?.compute({ ...carried });
    const refused = wrong && !wrong.ok ? wrong.problems.filter((p) => p.field in carried) : [];
    expect(refused).toEqual([]);
  });
});
