/** A failing example of each thing that keeps a site from its readers, among content in which all else is right. */
import { cp, mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { builtEdition } from '../../src/commands/support/built-edition.ts';
import { editionName, editionOf } from '../../src/steps/edition/edition.ts';
import { skeleton } from '../../src/commands/new/skeleton.ts';
import { notReady } from '../../src/commands/publish/readiness.ts';
import { known } from '../steps/content-check/good-content.ts';

const good = fileURLToPath(new URL('../steps/content-check/fixtures/good', import.meta.url));
const photo = fileURLToPath(new URL('../steps/fixtures/picture-site/content/shop/jobs/worn-belt.jpg', import.meta.url));
const job = 'content/knowledge/jobs/wash-down.mdx';
const today = '2026-06-30';
let folder: string;
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'almanac-publish-'));
  await cp(good, folder, { recursive: true });
  await mkdir(join(folder, 'dist'));
});
afterEach(() => rm(folder, { recursive: true }));

const put = async (name: string, text: string | Uint8Array) => {
  await mkdir(dirname(join(folder, name)), { recursive: true });
  await writeFile(join(folder, name), text);
};
const change = async (name: string, from: RegExp, to: string) => {
  const text = await readFile(join(folder, name), 'utf8');
  expect(text).toMatch(from);
  await put(name, text.replace(from, to));
};
const found = async () =>
  (await notReady(folder, join(folder, 'dist'), known, today)).map((p) => `${p.file} ${p.field}: ${p.got}`);

test('content in order is ready', async () => {
  expect(await found()).toEqual([]);
});

test('content with a mistake is not', async () => {
  await change(job, /^reader: .*$/m, 'reader: owner');
  expect(await found()).toEqual([`${job} reader: "owner"`]);
});

test('a site built before the last change is not looked at, nor is one that is not there', async () => {
  const dist = join(folder, 'dist');
  expect(await builtEdition(folder, dist)).toContain('There is no built site in dist/');
  await put('dist/edition.txt', editionName(await editionOf(folder)));
  expect(await builtEdition(folder, dist)).toEqual({ edition: editionName(await editionOf(folder)) });
  await change(job, /$/, '\nOne more line.\n');
  expect(await builtEdition(folder, dist)).toMatch(
    /^dist\/ holds edition .*; what stands in the project now would be /,
  );
});

test('a draft is not', async () => {
  await put(
    'content/shop/jobs/later.mdx',
    (await readFile(join(folder, job), 'utf8')).replace(/^reviewed/m, 'draft: true\nreviewed'),
  );
  expect(await found()).toEqual(['content/shop/jobs/later.mdx draft: true']);
});

test('a page whose beginning nobody has written over is not', async () => {
  const page = { kind: 'job', title: 'Water valve', reader: 'mechanic', kinds: [], today, lang: 'en' } as const;
  const begun = skeleton(page)
    .replace(/^draft: .*\n/m, '')
    .replace('common-practice', 'shop-habits');
  await put('content/shop/jobs/water-valve.mdx', begun);
  const line = begun.split('\n').indexOf('1. One step a line, the verb first.') + 1;
  const unwritten = (await notReady(folder, join(folder, 'dist'), known, today)).filter((p) => p.field === 'text');
  expect(unwritten).toHaveLength(8);
  expect(unwritten).toContainEqual(expect.objectContaining({ line, got: '"1. One step a line, the verb first."' }));
  // A sentence of a beginning in a page that somebody else's knowledge brings is that page's own.
  await change(job, /$/, '\n1. One step a line, the verb first.\n');
  expect((await found()).filter((said) => said.startsWith(job))).toEqual([]);
});

test('a page reviewed 24 months ago is; one day more, and it is not', async () => {
  await change(job, /^reviewed: .*$/m, 'reviewed: 2024-06-30');
  expect(await found()).toEqual([]);
  await change(job, /^reviewed: .*$/m, 'reviewed: 2024-06-29');
  expect(await found()).toEqual([`${job} reviewed: 2024-06-29`]);
});

test('a source nobody has seen needs its mark on the built page', async () => {
  await put('content/knowledge/sources/unseen.yaml', 'title: A book nobody here has seen\nhow: memory\n');
  await change(job, /^sources:.*$/m, 'sources: [unseen]');
  const row = (mark: string) => `<ol><li id="source-unseen">A book <span class="how${mark}">(memory)</span></li></ol>`;
  await put('dist/jobs/wash-down.html', row(' unchecked'));
  expect(await found()).toEqual([]);
  await put('dist/jobs/wash-down.html', row(''));
  expect(await found()).toEqual([
    `${job} sources: "unseen", which nobody has seen, without the mark on the built page`,
  ]);
});

test('a guide without its twin is not ready where the shop speaks Spanish', async () => {
  await change('content/shop/shop.yaml', /^languages:.*$/m, 'languages: [en, es]');
  const guide = 'content/knowledge/guides/cutting-wet.mdx';
  await rm(join(folder, 'content/knowledge/guides/es'), { recursive: true, force: true });
  expect(await found()).toContain(`${guide} file name: a guide without a Spanish twin`);
  const text = await readFile(join(folder, guide), 'utf8');
  await put(
    'content/knowledge/guides/es/cutting-wet.mdx',
    text.replace(/^title: .*$/m, 'title: Con agua\ndraft: true'),
  );
  expect(await found()).toContain(`${guide} file name: a guide whose Spanish twin is still a draft`);
});

test('a picture of 300 kB is; one byte more, and it is not', async () => {
  await put('dist/pictures/yard.png', new Uint8Array(300_000));
  expect(await found()).toEqual([]);
  await put('dist/pictures/yard.png', new Uint8Array(300_001));
  expect(await found()).toEqual(['dist/pictures/yard.png the picture: 301 kB']);
});

test('a picture that says where it was taken is not', async () => {
  await put('dist/pictures/belt.jpg', await readFile(photo));
  expect(await found()).toEqual([
    'dist/pictures/belt.jpg the picture: what the camera wrote into it (Exif), often with place and day',
  ]);
});
