import { describe, expect, test } from 'vitest';
import { kindOf, Scales, type Weight } from '../../src/commands/weights/measure.ts';
import { dist, pages } from '../e2e/support/site.ts';
import { listFiles } from '../../src/steps/support/files.ts';

/**
 * Bytes after gzip that one page may weigh: the heaviest of its kind today and about a fifth more.
 * A job may carry several calculators at once.
 */
const budgets: Readonly<Record<string, Omit<Weight, 'file'>>> = {
  'start and lists': { html: 30_000, css: 10_000, js: 15_000 },
  guides: { html: 12_000, css: 18_000, js: 4_500 },
  'es/guides': { html: 12_000, css: 18_000, js: 4_500 },
  trouble: { html: 5_500, css: 8_000, js: 2_000 },
  'es/trouble': { html: 5_500, css: 8_000, js: 2_000 },
  check: { html: 6_500, css: 9_000, js: 17_000 },
  'es/check': { html: 6_500, css: 9_000, js: 17_000 },
  point: { html: 9_500, css: 6_000, js: 2_000 },
  'es/point': { html: 9_500, css: 6_000, js: 2_000 },
  machines: { html: 8_500, css: 6_000, js: 2_000 },
  jobs: { html: 38_000, css: 18_000, js: 95_000 },
  tables: { html: 11_000, css: 18_000, js: 2_000 },
  explainers: { html: 16_000, css: 18_000, js: 55_000 },
  faults: { html: 12_500, css: 9_000, js: 24_000 },
  'kept on the device': { html: 6_500, css: 9_000, js: 33_000 },
  calculators: { html: 24_000, css: 18_000, js: 68_000 },
};
const scales = new Scales(dist);

describe.each(['html', 'css', 'js'] as const)('%s', (part) => {
  test('no page is heavier than its kind may be', () => {
    const over = pages.map((file) => scales.page(file)).filter((w) => w[part] > (budgets[kindOf(w.file)]?.[part] ?? 0));
    expect(
      over.map(
        (w) =>
          `${w.file}: ${w[part]} bytes of ${part}, at most ${budgets[kindOf(w.file)]?.[part] ?? 'no budget for this kind'}`,
      ),
    ).toEqual([]);
  });
});

test('a page without a calculator carries none', () => {
  expect(
    pages
      .filter((file) => kindOf(file) === 'guides')
      .map((file) => scales.page(file).js)
      .every((js) => js < 4_500),
  ).toBe(true);
});

test('what is loaded when someone types a sum stays near the size of its evaluator', async () => {
  // mathjs with numbers only and the functions a sum needs is 40 kB; with units it would be 67 kB, whole 190 kB.
  const sums = (await listFiles(dist)).filter((f) => f.startsWith('_astro/sum.'));
  expect(sums).toHaveLength(1);
  expect(scales.gzip(sums[0] ?? '')).toBeLessThan(46_000);
});

test('the search engine starts small', () => {
  expect(scales.gzip('pagefind/engine.js')).toBeLessThan(20_000);
});
