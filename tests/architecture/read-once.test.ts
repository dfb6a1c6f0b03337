/**
 * A build keeps pages whose content still says the same. It can only know so if every page asks for content in one place,
 * and if nothing that was made of content waits in a module for the next page, which would not have asked.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { sourceFiles } from './imports.ts';

const project = fileURLToPath(new URL('../..', import.meta.url));
const makesPages = /^src\/(?:lib|components|layouts|pages)\//;
const files = sourceFiles(project, 'src').filter((file) => makesPages.test(file));
const asks = /\bget(?:Collection|Entry|Entries)\b/;
/** A variable of a module, or an empty box to put things in: code of a page (.astro) stands indented or is run for each. */
const waits = /^(?:export )?(?:let |const \w+[^=\n]* = new (?:Weak)?(?:Map|Set)(?:<.*>)?\(\))/m;
const textOf = (file: string) => readFileSync(join(project, file), 'utf8');

it('content is asked for in one place', () => {
  expect(files.length).toBeGreaterThan(100);
  expect(files.filter((file) => asks.test(textOf(file)))).toEqual(['src/lib/collection.ts']);
});

it('nothing waits in a module from one page to the next, but what says so', () => {
  const modules = files.filter((file) => file.endsWith('.ts') || file.endsWith('.tsx'));
  expect(modules.filter((file) => waits.test(textOf(file)))).toEqual([]);
  expect(waits.test('const cache = new Map<string, Promise<string>>();\n')).toBe(true);
  expect(waits.test('let cache: string | undefined;\n')).toBe(true);
  expect(waits.test("const greek = new Set(\n  'alpha beta'.split(' '),\n);\n")).toBe(false);
});
