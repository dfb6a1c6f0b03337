import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { topics } from '../../src/core/registry.ts';
import { readInputs } from '../../src/core/contract/read-inputs.ts';
import { readSum } from '../../src/core/quantity/sum.ts';
import { toUnit } from '../../src/core/quantity/index.ts';
import type { Answer, Result } from '../../src/core/contract/result.ts';
import type { CaseFile, Expected, PublishedCase } from './case.ts';

const folder = new URL('.', import.meta.url);
const files = readdirSync(folder).filter((f) => f.endsWith('.json'));

function run(one: PublishedCase): Result {
  const [topicName = '', blockName] = one.call.split('/');
  const topic = topics[topicName];
  const callable = blockName === undefined ? topic : topic?.blocks[blockName];
  if (!callable) throw new Error(`${one.id}: nothing is called "${one.call}".`);
  const read = readInputs(callable.fields, one.inputs, { sum: readSum });
  if (!read.ok) return { ok: false, problems: 'problems' in read ? read.problems : [] };
  return callable.compute(read.inputs);
}

function compare(answer: Answer, key: string, wanted: Expected): void {
  const value = answer.values.find((v) => v.key === key);
  if (!value) throw new Error(`The answer has no "${key}"; it has ${answer.values.map((v) => v.key).join(', ')}.`);
  if (typeof wanted.value === 'string') {
    expect(value.kind === 'verdict' ? value.code : 'value' in value ? value.value : undefined).toBe(wanted.value);
    return;
  }
  if (!('value' in value) || typeof value.value !== 'number') throw new Error(`"${key}" is not a number.`);
  const got = value.kind === 'quantity' ? toUnit(value.value, wanted.unit ?? value.units[0]) : value.value;
  // Without a stated tolerance the value must match but for the last bits of floating point.
  const allowed = wanted.abs ?? (wanted.rel ?? 1e-9) * Math.max(Math.abs(wanted.value), 1e-12);
  expect(
    Math.abs(got - wanted.value),
    `${key}: got ${got}, source says ${wanted.value}, allowed difference ${allowed}`,
  ).toBeLessThanOrEqual(allowed);
}

describe.each(files)('%s', (name) => {
  const file = JSON.parse(readFileSync(new URL(name, folder), 'utf8')) as CaseFile;

  it('holds as many cases as it says, each with its own id, source and reason', () => {
    expect(file.cases.length).toBe(file.count);
    expect(file.count).toBeGreaterThanOrEqual(8);
    expect(new Set(file.cases.map((c) => c.id)).size).toBe(file.count);
    for (const c of file.cases) {
      expect(c.source.length, c.id).toBeGreaterThan(5);
      expect(c.why.length, c.id).toBeGreaterThan(3);
      expect(Object.keys(c.expected ?? {}).length > 0 || c.problem !== undefined, c.id).toBe(true);
    }
  });

  it.each(file.cases.map((c) => [c.id, c] as const))('%s', (_, one) => {
    const result = run(one);
    if (one.problem !== undefined) {
      expect(result.ok ? 'an answer' : result.problems[0]?.code).toBe(one.problem);
      return;
    }
    if (!result.ok) throw new Error(`Refused: ${JSON.stringify(result.problems)}`);
    for (const [key, wanted] of Object.entries(one.expected ?? {})) compare(result, key, wanted);
  });
});

it('every topic has a file of published cases', () => {
  expect(Object.keys(topics).filter((t) => !files.includes(`${t}.json`))).toEqual([]);
});
