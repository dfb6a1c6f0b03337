/** Whatever a person may type within the limits, a topic answers or refuses in words: no NaN, no missing sentence, no stray source. */
import fc from 'fast-check';
import { existsSync } from 'node:fs';
import { expect, it } from 'vitest';
import { describeProblem, sayer } from '../../src/core/contract/messages.ts';
import { topics } from '../../src/core/registry.ts';
import { readInputs } from '../../src/core/contract/read-inputs.ts';
import type { Field, RawInputs, RawValue } from '../../src/core/contract/field.ts';
import type { Result } from '../../src/core/contract/result.ts';
import { runs } from '../runs.ts';

export type Sample = Readonly<Record<string, fc.Arbitrary<RawValue>>>;

function sample(field: Field): fc.Arbitrary<RawValue> {
  switch (field.kind) {
    case 'quantity':
    case 'number':
    case 'money': {
      const [min, max] = [field.min ?? -1000, field.max ?? 1000];
      return fc.oneof(fc.constantFrom(min, max), fc.double({ min, max, noNaN: true }));
    }
    case 'count':
      return fc.integer({ min: field.min ?? 0, max: field.max ?? 100 });
    case 'choice':
      return fc.constantFrom(...field.options.map((o) => o.value));
    case 'yes-no':
      return fc.boolean();
    case 'text':
      return fc.constantFrom('H7', 'k5', 'N7', 'j6', 'js7', 'ZC8', 'q7', 'H25', '6205', '9999');
    case 'rows':
      return fc.array(record(field.columns), { minLength: field.minRows, maxLength: Math.min(4, field.maxRows) });
  }
}

function record(fields: readonly Field[], own: Sample = {}): fc.Arbitrary<RawInputs> {
  return fc.record(Object.fromEntries(fields.map((f) => [f.key, own[f.key] ?? sample(f)])));
}

/** `own` replaces the sampler of single fields, to reach more answers and fewer refusals. */
export function answersAnything(name: string, own: Sample = {}): void {
  const topic = topics[name];
  if (!topic) throw new Error(`There is no topic ${name}.`);

  function judge(result: Result): void {
    if (!topic) return;
    if (!result.ok) {
      for (const p of result.problems) {
        expect(p.code).not.toBe('no-number');
        for (const system of ['metric', 'inch'] as const)
          expect(describeProblem(p, { fields: topic.fields, words: topic.words, system })).not.toMatch(
            /undefined|NaN|^$/,
          );
      }
      return;
    }
    for (const v of result.values) {
      if (v.source !== undefined) expect(topic.sources, v.key).toContain(v.source);
      if ('low' in v && v.low !== undefined && v.high !== undefined && 'value' in v) {
        expect(v.low, v.key).toBeLessThanOrEqual(v.value + 1e-9 * Math.abs(v.value));
        expect(v.high, v.key).toBeGreaterThanOrEqual(v.value - 1e-9 * Math.abs(v.value));
      }
      if (v.kind !== 'verdict') continue;
      const say = topic.words.verdicts[v.code];
      expect(say, v.code).toBeDefined();
      for (const system of ['metric', 'inch'] as const)
        expect(say?.(v.data ?? {}, sayer({ system })), v.code).not.toMatch(/undefined|NaN/);
    }
    expect(new Set(result.values.map((v) => v.key)).size, 'keys given twice').toBe(result.values.length);
    for (const c of result.cautions) expect(topic.hazards).toContain(c.hazard);
    for (const s of result.working) expect(topic.sources).toContain(s.source);
  }

  it('answers or refuses in words whatever is typed', () => {
    fc.assert(
      fc.property(record(topic.fields, own), (raw) => {
        const read = readInputs(topic.fields, raw);
        if (read.ok) judge(topic.compute(read.inputs));
      }),
      { numRuns: runs(400) },
    );
  });

  it('names only sources and hazards that have their file', () => {
    const content = new URL('../../content/knowledge/', import.meta.url);
    const used = [
      ...topic.sources.map((s) => `sources/${s}.yaml`),
      ...Object.values(topic.blocks).map((b) => `sources/${b.source}.yaml`),
      ...topic.formulas.map((f) => `sources/${f.source}.yaml`),
      ...topic.hazards.map((h) => `hazards/${h}.yaml`),
    ];
    expect(used.filter((f) => !existsSync(new URL(f, content)))).toEqual([]);
  });
}
