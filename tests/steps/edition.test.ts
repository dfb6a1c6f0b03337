/** The edition follows every change, and nothing but changes. */
import { appendFile, mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { editionName, editionOf } from '../../src/steps/edition/edition.ts';

let folder: string;
const put = async (name: string, text: string) => {
  await mkdir(dirname(join(folder, name)), { recursive: true });
  await writeFile(join(folder, name), text);
};
const article = (reviewed: string, more = '') => `---\ntitle: Belts\nreviewed: ${reviewed}\n${more}---\n\nText.\n`;
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'almanac-edition-'));
  await put('content/shop/shop.yaml', 'labourRate: 95\n');
  await put('content/knowledge/jobs/old.mdx', article('2026-01-31'));
  await put('content/knowledge/jobs/new.mdx', article('2026-03-12'));
  await put('src/page.ts', 'export {};\n');
});
afterEach(() => rm(folder, { recursive: true }));
const now = async () => editionName(await editionOf(folder));

test('it bears the day of the newest review, and is the same for the same files', async () => {
  const first = await now();
  expect(first).toMatch(/^2026-03-12-[0-9a-f]{8}$/);
  expect(await now()).toBe(first);
});

test.each([
  ['a price in shop.yaml', 'content/shop/shop.yaml', 'labourRate: 96\n'],
  ['a word of an article', 'content/knowledge/jobs/old.mdx', `${article('2026-01-31')}More.\n`],
  ['a picture', 'content/shop/jobs/belt.jpg', 'bytes'],
  ['the program', 'src/page.ts', 'export const x = 1;\n'],
  ['the packages', 'package-lock.json', '{}'],
])('%s changes the mark, not the day', async (_what, name, text) => {
  const before = await now();
  await put(name, text);
  const after = await now();
  expect(after).not.toBe(before);
  expect(after.slice(0, 10)).toBe('2026-03-12');
});

test('a draft changes nothing until it is published', async () => {
  const before = await now();
  await put('content/shop/jobs/later.mdx', article('2026-05-01', 'draft: true\n'));
  expect(await now()).toBe(before);
  await put('content/shop/jobs/later.mdx', article('2026-05-01'));
  expect((await now()).slice(0, 10)).toBe('2026-05-01');
});

test('what moves from one file to another counts as a change', async () => {
  const before = await now();
  await put('content/shop/shop.yaml', 'labourRate: 95');
  await appendFile(join(folder, 'src/page.ts'), '\n');
  expect(await now()).not.toBe(before);
});
