/** The list of wrong edits is run by hand; here only that each still has its place, and tests that could notice it. */
import { existsSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { edits } from './edits.ts';

it.each(edits.map((e) => [e.what, e] as const))('%s: has its place', (_, { file, from, to, tests }) => {
  expect(readFileSync(file, 'utf8').split(from).length - 1, `${from} in ${file}`).toBe(1);
  expect(to).not.toBe(from);
  for (const test of tests) expect(existsSync(test), test).toBe(true);
});
