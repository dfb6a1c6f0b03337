/** The square code on paper leads to the page it is printed on, read back by an independent decoder. */
import { createRequire } from 'node:module';
import { expect, test } from 'vitest';
import { readPage } from './support/site.ts';

type Decode = (pixels: Uint8ClampedArray, width: number, height: number) => { data: string } | null;
const jsqr = createRequire(import.meta.url)('jsqr') as Decode | { default: Decode };
const decode = typeof jsqr === 'function' ? jsqr : jsqr.default;

/** Pixels to a square of the code; the decoder wants a few. */
const scale = 4;

function pixelsOf(html: string): { pixels: Uint8ClampedArray; width: number } {
  const [, size = '0', path = ''] =
    /viewBox="0 0 (\d+) \d+"[^>]*class="square-code"[^>]*>\s*<path d="([^"]+)"/.exec(html) ?? [];
  const width = Number(size) * scale;
  const pixels = new Uint8ClampedArray(width * width * 4).fill(255);
  for (const [, x, y] of path.matchAll(/M(\d+) (\d+)h1v1h-1z/g))
    for (let row = 0; row < scale; row++)
      for (let column = 0; column < scale; column++) {
        const at = ((Number(y) * scale + row) * width + Number(x) * scale + column) * 4;
        pixels.fill(0, at, at + 3);
      }
  return { pixels, width };
}

test.each([
  'guides/cutting-wet.html',
  'es/guides/cutting-wet.html',
  'jobs/drive-belt-change.html',
  'calculators/belt-tension.html',
])('%s', (file) => {
  const { pixels, width } = pixelsOf(readPage(file));
  expect(width).toBeGreaterThan(0);
  expect(decode(pixels, width, width)?.data).toBe(`https://almanac.example/${file}`);
});
