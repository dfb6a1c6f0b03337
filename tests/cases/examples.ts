/**
 * Inputs on which every formula of a topic gets used: its worked example, plus its whole-topic cases and `branches/`
 * for what neither reaches.
 */
import { existsSync, readFileSync } from 'node:fs';
import type { RawInputs } from '../../src/core/contract/field.ts';
import { casesOf } from './files.ts';

export function examplesFor(topic: string, example: RawInputs): RawInputs[] {
  const branches = new URL(`branches/${topic}.json`, import.meta.url);
  const more = existsSync(branches) ? (JSON.parse(readFileSync(branches, 'utf8')) as RawInputs[]) : [];
  const whole = casesOf(topic).filter((c) => c.call === topic && c.problem === undefined);
  return [example, ...whole.map((c) => c.inputs), ...more];
}
