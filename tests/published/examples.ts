/**
 * Inputs on which every formula of a topic gets used: its worked example, plus the whole-topic cases
 * of its published file and `more` for branches neither reaches.
 */
import { existsSync, readFileSync } from 'node:fs';
import type { RawInputs } from '../../src/core/contract/field.ts';
import type { CaseFile } from './case.ts';

export function examplesFor(topic: string, example: RawInputs): RawInputs[] {
  const file = new URL(`${topic}.json`, import.meta.url);
  const branches = new URL(`branches/${topic}.json`, import.meta.url);
  const cases = existsSync(file) ? (JSON.parse(readFileSync(file, 'utf8')) as CaseFile).cases : [];
  const more = existsSync(branches) ? (JSON.parse(readFileSync(branches, 'utf8')) as RawInputs[]) : [];
  return [example, ...cases.filter((c) => c.call === topic && c.problem === undefined).map((c) => c.inputs), ...more];
}
