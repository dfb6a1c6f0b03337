/** The square code on paper leads to the page it is printed on, read back by an independent decoder. */
import { createRequire } from 'node:module';
import { expect, test } from 'vitest';
import { readPage } from './support/site.ts';
import { pixelsOf } from './support/square-code.ts';

type Decode = (pixels: Uint8ClampedArray, width: number, height: number) => { data: string } | null;
const jsqr = createRequire(import.meta.url)('jsqr') as Decode | { default: Decode };
const decode = typeof jsqr === 'function' ? jsqr : jsqr.default;

/** The code of the page's foot; a page may hold others. */
const footCode = (html: string) => /<svg[^>]*class="square-code"[^>]*>.*?<\/svg>/s.exec(html)?.[0] ?? '';

test.each([
  'guides/cutting-wet.html',
  'es/guides/cutting-wet.html',
  'jobs/drive-belt-change.html',
  'calculators/belt-tension.html',
])('%s', (file) => {
  const { pixels, width } = pixelsOf(footCode(readPage(file)));
  expect(width).toBeGreaterThan(0);
  expect(decode(pixels, width, width)?.data).toBe(`https://almanac.example/${file}`);
});
