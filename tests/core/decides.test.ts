/**
 * A topic names the fields that decide each verdict. Here one field is changed at a time, from many starting points, and
 * the verdicts are looked at with every word and figure of their sentences: whatever changes one must be on its list.
 * The search is by chance with a fixed seed; it can find a gap in a list, not prove that there is none.
 */
import { describe, expect, it } from 'vitest';
import { isAsked } from '../../src/core/contract/check-inputs.ts';
import type { Field, Inputs, InputValue, SingleField } from '../../src/core/contract/field.ts';
import { sayer } from '../../src/core/contract/messages.ts';
import { readInputs } from '../../src/core/contract/read-inputs.ts';
import type { Topic } from '../../src/core/contract/topic.ts';
import { fromUnit } from '../../src/core/quantity/index.ts';
import { topics } from '../../src/core/registry.ts';
import { examplesFor } from '../cases/examples.ts';

/** Sums done for a topic in all, and changes of each field from each starting point. */
const sums = 6000;
const changes = 8;

/** A small generator of even chances (Lehmer's, modulus 2^31 - 1, multiplier 48271: Park and Miller, 1993). */
function chances(seed: number): () => number {
  let state = seed;
  return () => (state = (state * 48271) % 2147483647) / 2147483647;
}

function pickOne<T>(from: readonly T[], chance: () => number): T {
  return from[Math.floor(chance() * from.length)] as T;
}

/** Another lawful figure for a field, near the old one as often as far from it. */
function another(field: SingleField, old: InputValue, chance: () => number): InputValue {
  switch (field.kind) {
    case 'choice':
      return pickOne(field.options, chance).value;
    case 'yes-no':
      return chance() < 0.5;
    case 'text':
      return old;
    case 'quantity':
    case 'number':
    case 'count':
    case 'money': {
      if (field.optional && chance() < 0.25) return undefined;
      const si = (n: number) => (field.kind === 'quantity' ? fromUnit(n, field.units[0]) : n);
      const low = si(field.min ?? 0);
      const high = si(field.max ?? Math.max(10, 4 * (field.default ?? 1)));
      const near = typeof old === 'number' && chance() < 0.6;
      const value = near ? old * (0.7 + 0.6 * chance()) : low + (high - low) * chance() ** 3;
      const inside = Math.min(high, Math.max(low, value));
      return field.kind === 'count' ? Math.round(inside) : inside;
    }
  }
}

function changed(field: Field, old: InputValue, chance: () => number): InputValue {
  if (field.kind !== 'rows') return another(field, old, chance);
  const rows = Array.isArray(old) ? (old as readonly Inputs[]) : [];
  if (rows.length === 0) return old;
  if (chance() < 0.2 && rows.length > field.minRows) return rows.slice(1);
  const at = Math.floor(chance() * rows.length);
  const column = pickOne(field.columns, chance);
  return rows.map((row, i) => (i === at ? { ...row, [column.key]: another(column, row[column.key], chance) } : row));
}

/** Verdict key -> its code, its level and its sentence, in both unit systems. */
function verdicts(topic: Topic, inputs: Inputs): Readonly<Record<string, string>> | undefined {
  const result = topic.compute(inputs);
  if (!result.ok) return undefined;
  return Object.fromEntries(
    result.values.flatMap((v) => {
      if (v.kind !== 'verdict') return [];
      const sentence = topic.words.verdicts[v.code];
      const say = (system: 'metric' | 'inch') => sentence?.(v.data ?? {}, sayer({ system, currency: 'USD' }));
      return [[v.key, [v.code, v.level, v.note ?? '', say('metric'), say('inch')].join(' | ')]];
    }),
  );
}

/** "verdict <- field" for every change of a verdict by a field its list does not name. */
function undeclared(topic: Topic, name: string): string[] {
  const decides = topic.decides ?? {};
  const chance = chances(20261125);
  const known = examplesFor(name, topic.example).flatMap((raw) => {
    const read = readInputs(topic.fields, raw);
    return read.ok ? [read.inputs] : [];
  });
  const found = new Set<string>();
  const starts = Math.ceil(sums / changes / topic.fields.length);
  for (let start = 0; start < starts; start += 1) {
    let inputs = pickOne(known, chance);
    // A few steps away from the printed cases, so that not all starts are somebody's nice figures.
    for (let step = 0; step < start % 4; step += 1) {
      const field = pickOne(topic.fields, chance);
      const moved = { ...inputs, [field.key]: changed(field, inputs[field.key], chance) };
      if (topic.compute(moved).ok) inputs = moved;
    }
    const before = verdicts(topic, inputs);
    if (!before) continue;
    for (const field of topic.fields) {
      if (!isAsked(field, inputs)) continue;
      for (let change = 0; change < changes; change += 1) {
        const after = verdicts(topic, { ...inputs, [field.key]: changed(field, inputs[field.key], chance) });
        if (!after) continue;
        for (const key of new Set([...Object.keys(before), ...Object.keys(after)]))
          if (before[key] !== after[key] && !decides[key]?.includes(field.key)) found.add(`${key} <- ${field.key}`);
      }
    }
  }
  return [...found].sort();
}

const declaring = Object.entries(topics).filter(([, topic]) => topic.decides !== undefined);

it('a field that is changed is seen to change a verdict, or the search finds nothing anywhere', () => {
  const [name, topic] = Object.entries(topics).find(([n]) => n === 'blade-speed') ?? [];
  if (!name || !topic) throw new Error('There is no blade-speed.');
  expect(undeclared({ ...topic, decides: {} }, name).join()).toMatch(/<- markedRotation/);
});

describe.each(declaring)('%s', (name, topic) => {
  it('names only fields it has, and only once', () => {
    const keys = topic.fields.map((f) => f.key);
    for (const [verdict, fields] of Object.entries(topic.decides ?? {})) {
      expect(
        fields.filter((f) => !keys.includes(f)),
        verdict,
      ).toEqual([]);
      expect(new Set(fields).size, verdict).toBe(fields.length);
    }
  });

  it('has a list for every verdict it gives, complete as far as a search by chance can tell', () => {
    expect(undeclared(topic, name)).toEqual([]);
  }, 300_000);
});
