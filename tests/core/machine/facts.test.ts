/** The figures of a machine: read like any box, and fit for the boxes they fill. */
import { describe, expect, it } from 'vitest';
import { facts, readFacts, type Facts } from '../../../src/core/machine/index.ts';
import { topics } from '../../../src/core/registry.ts';
import type { SingleField } from '../../../src/core/contract/field.ts';

const problemsOf = (known: Facts) => {
  const read = readFacts(known);
  if (read.ok) return [];
  return 'problems' in read ? read.problems.map((p) => `${p.field} ${p.code}`) : ['a sum'];
};

describe('reading', () => {
  it('takes quantities with their unit, bare metric numbers, choices and yes or no', () => {
    const read = readFacts({
      bladeDiameter: { value: '14 in', from: 'plate' },
      displacement: { value: '71 cm³', from: 'plate' },
      engineSpeed: { value: 9500, from: 'plate' },
      beltSection: { value: 'PJ', from: 'parts-list' },
      clutch: { value: true, from: 'manual' },
      bearing: { value: '6205-2RS C3', from: 'parts-list' },
    });
    // 14 in are 355.6 mm and 9500 turns a minute 158.33 a second, by definition of inch and minute.
    expect(read.ok && read.inputs).toEqual({
      bladeDiameter: expect.closeTo(0.3556, 12) as number,
      displacement: expect.closeTo(71e-6, 15) as number,
      engineSpeed: expect.closeTo(9500 / 60, 9) as number,
      beltSection: 'PJ',
      clutch: true,
      bearing: '6205-2RS C3',
    });
  });

  it.each<[string, Facts, string]>([
    ['a mass for a length', { bladeDiameter: { value: '3 kg', from: 'plate' } }, 'bladeDiameter'],
    ['a figure beyond its limit', { idle: { value: '60000 rpm', from: 'plate' } }, 'idle'],
    ['a section that does not exist', { beltSection: { value: 'QX', from: 'plate' } }, 'beltSection'],
    ['a zone that is none', { housingZone: { value: 'seven', from: 'plate' } }, 'housingZone'],
    ['a fact nobody knows', { colour: { value: 'red', from: 'plate' } } as Facts, 'colour'],
  ])('refuses %s and names it', (_, known, key) => {
    const problems = problemsOf(known);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatch(new RegExp(`^${key} `));
  });

  it('asks for none of them', () => {
    expect(facts.filter((f) => !f.optional)).toEqual([]);
    expect(new Set(facts.map((f) => f.key)).size).toBe(facts.length);
  });
});

/** Why a fact does not fit a box, or nothing. */
function misfit(box: SingleField, fact: SingleField): string | undefined {
  if (box.kind !== fact.kind) return `a ${fact.kind} for a ${box.kind}`;
  if (box.kind === 'quantity' && fact.kind === 'quantity' && box.dimension !== fact.dimension)
    return `${fact.dimension} for ${box.dimension}`;
  if (box.kind === 'choice' && fact.kind === 'choice') {
    const extra = fact.options.filter((o) => !box.options.some((b) => b.value === o.value));
    if (extra.length > 0) return `no choice ${extra.map((o) => o.value).join(', ')}`;
  }
  return undefined;
}

describe('what a topic takes from a machine', () => {
  const plates = Object.entries(topics).flatMap(([name, topic]) =>
    Object.entries(topic.plate ?? {}).map(([box, fact]) => ({ name, topic, box, fact })),
  );
  it('names boxes and facts that exist and fit each other', () => {
    const wrong = plates.flatMap(({ name, topic, box, fact }) => {
      const field = topic.fields.find((f) => f.key === box);
      const known = facts.find((f) => f.key === fact);
      if (!field || field.kind === 'rows') return [`${name}: no single box "${box}"`];
      if (!known) return [`${name}: no fact "${fact}"`];
      const why = misfit(field, known);
      return why ? [`${name}: ${fact} in ${box}: ${why}`] : [];
    });
    expect(wrong).toEqual([]);
  });

  it('would tell a fact that does not fit', () => {
    const by = (key: string) => facts.find((f) => f.key === key) as SingleField;
    expect(misfit(by('idle'), by('mass'))).toMatch(/mass for rotation/);
    expect(misfit(by('bladeBolt'), by('beltSection'))).toMatch(/no choice PH/);
    expect(misfit(by('plug'), by('mass'))).toMatch(/quantity for a text/);
  });
});
