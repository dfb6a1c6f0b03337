/** Runs one check case through the core, as the terminal does, and compares what comes out. */
import { expect } from 'vitest';
import { topics } from '../../src/core/registry.ts';
import { readInputs } from '../../src/core/contract/read-inputs.ts';
import { readSum } from '../../src/core/quantity/sum.ts';
import { toUnit } from '../../src/core/quantity/index.ts';
import type { Answer, Result } from '../../src/core/contract/result.ts';
import type { Case, Expected } from './case.ts';

export function run(one: Pick<Case, 'id' | 'call' | 'inputs'>): Result {
  const [topicName = '', blockName] = one.call.split('/');
  const topic = topics[topicName];
  const callable = blockName === undefined ? topic : topic?.blocks[blockName];
  if (!callable) throw new Error(`${one.id}: nothing is called "${one.call}".`);
  const read = readInputs(callable.fields, one.inputs, { sum: readSum });
  if (!read.ok) return { ok: false, problems: 'problems' in read ? read.problems : [] };
  return callable.compute(read.inputs);
}

/** Without a stated tolerance a value must match but for the last bits of floating point. */
export function allowedDifference(wanted: Expected & { readonly value: number }): number {
  return wanted.abs ?? (wanted.rel ?? 1e-9) * Math.max(Math.abs(wanted.value), 1e-12);
}

export function compare(answer: Answer, key: string, wanted: Expected): void {
  const value = answer.values.find((v) => v.key === key);
  if (!value) throw new Error(`The answer has no "${key}"; it has ${answer.values.map((v) => v.key).join(', ')}.`);
  if (typeof wanted.value === 'string') {
    expect(value.kind === 'verdict' ? value.code : 'value' in value ? value.value : undefined).toBe(wanted.value);
    return;
  }
  if (!('value' in value) || typeof value.value !== 'number') throw new Error(`"${key}" is not a number.`);
  const got = value.kind === 'quantity' ? toUnit(value.value, wanted.unit ?? value.units[0]) : value.value;
  const allowed = allowedDifference({ ...wanted, value: wanted.value });
  expect(
    Math.abs(got - wanted.value),
    `${key}: got ${got}, source says ${wanted.value}, allowed difference ${allowed}`,
  ).toBeLessThanOrEqual(allowed);
}
