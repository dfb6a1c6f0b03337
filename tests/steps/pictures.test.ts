/** A picture beside an article: shrunk, its size given, and nothing in it of where it was taken. */
import { mkdir, readFile, readdir, rm, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { pictureFileProblems } from '../../src/steps/content-check/pictures.ts';
import { buildFixtureSite } from './fixture-site.ts';
import { problemsOf } from './content-check/good-content.ts';

/** 1600 by 1000 pixels, drawn for this test; its camera and its place are made up. */
const original = fileURLToPath(new URL('fixtures/picture-site/content/shop/jobs/worn-belt.jpg', import.meta.url));
let dist: string;
beforeAll(async () => {
  dist = await buildFixtureSite('picture-site');
});
afterAll(() => rm(dirname(dist), { recursive: true }));

/** How Exif is marked in JPEG (Exif 2.32, 4.7.2), in WebP and in PNG (chunks of their containers). */
const marks = ['Exif\0\0', 'EXIF', 'eXIf', 'Made-up camera'];
const marked = (bytes: Buffer) => marks.filter((mark) => bytes.includes(Buffer.from(mark, 'latin1')));

test('the picture as the camera left it says where it was taken', async () => {
  expect(marked(await readFile(original))).toEqual(['Exif\0\0', 'Made-up camera']);
});

test('the published one is smaller, without it; the original and what no article shows stay behind', async () => {
  const pictures = (await readdir(join(dist, '_astro'))).filter((name) => /\.(?:jpe?g|webp|png)$/.test(name));
  expect(pictures).toHaveLength(1);
  const bytes = await readFile(join(dist, '_astro', pictures[0] ?? ''));
  expect(pictures[0]).toMatch(/^worn-belt\..*\.webp$/);
  expect(marked(bytes)).toEqual([]);
  expect(bytes.length).toBeLessThan((await readFile(original)).length);
});

test('the page gives its size, so that nothing moves when it comes', async () => {
  const img = /<img[^>]*>/.exec(await readFile(join(dist, 'index.html'), 'utf8'))?.[0] ?? '';
  // 1280 / 1600 x 1000
  expect(img).toContain('width="1280" height="800"');
  expect(img).toContain('alt="A worn belt"');
});

test('the check of content takes it beside its article, and names what it does not take', async () => {
  const jpeg = await readFile(original);
  const put = (name: string, bytes: Uint8Array) =>
    problemsOf(async (folder) => {
      await mkdir(join(folder, 'content/shop/jobs'), { recursive: true });
      await writeFile(join(folder, `content/shop/${name}`), bytes);
    });
  expect(await put('jobs/worn-belt.jpg', jpeg)).toEqual([]);
  expect(await put('jobs/worn-belt.heic', jpeg)).toEqual([
    'shop/jobs/worn-belt.heic:1 file name: .heic | a picture ending in .jpg, .png, .webp; save it anew in one of these',
  ]);
  expect(await put('jobs/worn-belt.JPG', jpeg)).toEqual([
    'shop/jobs/worn-belt.JPG:1 file name: .JPG | the ending in small letters: .jpg',
  ]);
  expect(await put('jobs/IMG 2041.jpg', jpeg)).toEqual([
    'shop/jobs/IMG 2041.jpg:1 file name: IMG 2041.jpg | small letters, digits and single hyphens, like worn-belt.jpg',
  ]);
  expect(await put('jobs/worn-belt.png', jpeg)).toEqual([
    'shop/jobs/worn-belt.png:1 the file: something else under the name of a picture | a picture saved as .png',
  ]);
  expect((await put('worn-belt.jpg', jpeg))[0]).toContain('a picture in no folder | a picture beside the article');
});

test('4 MB are taken, one byte more is not', () => {
  const sized = (bytes: number) => {
    const file = new Uint8Array(bytes);
    file.set([0xff, 0xd8, 0xff]);
    return pictureFileProblems('content/shop/jobs/belt.jpg', 'jobs', file).map((p) => `${p.got} | ${p.allowed}`);
  };
  expect(sized(4_000_000)).toEqual([]);
  expect(sized(4_000_001)).toEqual(['4.01 MB | at most 4 MB; 2000 pixels a side are plenty']);
});
