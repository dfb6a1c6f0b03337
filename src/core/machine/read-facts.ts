import type { RawInputs } from '../contract/field.ts';
import { readInputs, type InputsRead } from '../contract/read-inputs.ts';
import { checkInputs } from '../contract/check-inputs.ts';
import { facts, type Facts } from './facts.ts';

/**
 * Reads and checks the figures of one machine, as a form's boxes are read: unknown keys, texts that are no quantity,
 * figures beyond their limits, choices that do not exist.
 * @param known the figures, by key; a bare number is in the metric unit
 * @returns SI values by key, or every problem with its key
 * Example: { bladeDiameter: { value: '350 mm', from: 'plate' } } -> { bladeDiameter: 0.35 }. Source: arithmetic.
 */
export function readFacts(known: Facts): InputsRead {
  const raw: RawInputs = Object.fromEntries(Object.entries(known).map(([key, fact]) => [key, fact.value]));
  const read = readInputs(facts, raw);
  if (!read.ok) return read;
  const problems = checkInputs(facts, read.inputs);
  return problems.length > 0 ? { ...read, ok: false, problems } : read;
}
