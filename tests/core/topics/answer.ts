/** A topic's answer to raw inputs, for tests that only care for what comes out. */
import { topics } from '../../../src/core/registry.ts';
import { readInputs } from '../../../src/core/contract/read-inputs.ts';
import { valueOf, type Answer, type VerdictValue } from '../../../src/core/contract/result.ts';
import type { RawInputs } from '../../../src/core/contract/field.ts';

/** The worked example with some of its figures replaced. */
export function answerOf(name: string, more: RawInputs = {}): Answer {
  const topic = topics[name];
  if (!topic) throw new Error(`There is no topic ${name}.`);
  const read = readInputs(topic.fields, { ...topic.example, ...more });
  if (!read.ok) throw new Error(JSON.stringify(read));
  const result = topic.compute(read.inputs);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result;
}

export function verdictOf(answer: Answer, key = 'verdict'): VerdictValue | undefined {
  const found = answer.values.find((v) => v.key === key);
  return found?.kind === 'verdict' ? found : undefined;
}

export const codeOf = (answer: Answer, key = 'verdict') => verdictOf(answer, key)?.code;
export const figureOf = (answer: Answer, key: string) => valueOf(answer, key, 'quantity').value;
export const numberOf = (answer: Answer, key: string) => valueOf(answer, key, 'number').value;
export const has = (answer: Answer, key: string) => answer.values.some((v) => v.key === key);
