import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { isFaces, kindOf, Scales, type Weight } from '../../src/commands/weights/measure.ts';
import { dist, pages, readPage } from '../e2e/support/site.ts';
import { listFiles } from '../../src/steps/support/files.ts';

/**
 * Bytes after gzip that one page may weigh: the heaviest of its kind today and about a tenth more. `js` comes before
 * anybody touches the page, for which 25 kB is the most on a page with calculators; `woken` is that and all its
 * calculators reached. A job may carry several.
 */
const budgets: Readonly<Record<string, Omit<Weight, 'file'>>> = {
  'start and lists': { html: 30_000, css: 8_000, js: 19_500, woken: 19_500 },
  // The engine begins while its page is read.
  search: { html: 6_300, css: 8_000, js: 38_000, woken: 38_000 },
  guides: { html: 12_000, css: 8_800, js: 4_700, woken: 4_700 },
  'es/guides': { html: 12_000, css: 8_800, js: 4_700, woken: 4_700 },
  trouble: { html: 5_500, css: 6_700, js: 2_300, woken: 2_300 },
  'es/trouble': { html: 5_500, css: 6_700, js: 2_300, woken: 2_300 },
  // The words of the script come with the page, in its language alone.
  check: { html: 6_800, css: 7_200, js: 16_000, woken: 16_000 },
  'es/check': { html: 7_000, css: 7_200, js: 16_000, woken: 16_000 },
  point: { html: 9_500, css: 5_500, js: 2_100, woken: 2_100 },
  'es/point': { html: 9_500, css: 5_500, js: 2_100, woken: 2_100 },
  machines: { html: 8_500, css: 5_400, js: 2_100, woken: 2_100 },
  tables: { html: 11_000, css: 8_800, js: 2_100, woken: 2_100 },
  faults: { html: 13_500, css: 7_200, js: 24_500, woken: 24_500 },
  'kept on the device': { html: 6_500, css: 7_000, js: 32_500, woken: 32_500 },
  // Every component and every kind of file on one page, for the shop's own writer at a desk.
  'for whoever writes': { html: 52_000, css: 15_200, js: 56_000, woken: 90_000 },
  jobs: { html: 38_000, css: 15_500, js: 5_500, woken: 115_000 },
  explainers: { html: 16_000, css: 15_500, js: 5_500, woken: 64_000 },
  calculators: { html: 24_000, css: 15_500, js: 20_500, woken: 82_000 },
};
const scales = new Scales(dist);

describe.each(['html', 'css', 'js', 'woken'] as const)('%s', (part) => {
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

test('a page without a calculator carries nothing of one', async () => {
  const sheets = (await listFiles(dist)).filter((file) => /^_astro\/look\.\w+\.css$/.test(file));
  const rulesOf = (file: string) => readFileSync(join(dist, file), 'utf8').match(/\.calc-[a-z]/g)?.length ?? 0;
  const heavy = new Set(sheets.filter((file) => rulesOf(file) > 20));
  expect(heavy.size).toBeGreaterThan(0);
  const without = pages
    .map((file) => [file, readPage(file)] as const)
    .filter(([, html]) => !/class="calc[ "]/.test(html));
  expect(without.map(([file]) => kindOf(file))).toContain('guides');
  for (const [file, html] of without)
    for (const sheet of html.matchAll(/_astro\/look\.\w+\.css/g)) expect(heavy, file).not.toContain(sheet[0]);
  const guides = without.filter(([file]) => kindOf(file).endsWith('guides'));
  for (const [file, html] of guides) expect(html, file).not.toMatch(/islands\./);
});

test('every page has the faces, the same for the whole site, and one sheet of its kind', async () => {
  const faces = (await listFiles(dist)).filter(isFaces);
  expect(faces).toHaveLength(1);
  // Words 28 kB, two sets of digits 6 kB: files packed already, written as text and packed again.
  expect(scales.gzip(faces[0] ?? '')).toBeLessThan(35_000);
  for (const file of pages)
    // Rules that style attributes of the page became, where it has any, stand in a few bytes behind.
    expect(
      [...readPage(file).matchAll(/<link rel="stylesheet" href="[^"]*_astro\/(\w+)\.\w+\.css">/g)].flatMap((m) =>
        m[1] === 'own' ? [] : [m[1]],
      ),
      file,
    ).toEqual(['faces', 'look']);
});

test('a job with six calculators carries one kit', () => {
  const html = readPage('jobs/blade-shaft-bearings.html');
  const lists = [...html.matchAll(/client="reached"[^>]*/g), ...html.matchAll(/component-url="([^"]+)"/g)].flatMap(
    (m) => m[1]?.split(' ') ?? [],
  );
  expect(html.match(/client="reached"/g)?.length).toBeGreaterThan(3);
  expect(new Set(lists.filter((name) => name.startsWith('kit.'))).size).toBe(1);
});

test('what is loaded when someone types a sum stays near the size of its evaluator', async () => {
  // mathjs with numbers only and the functions a sum needs is 40 kB; with units it would be 67 kB, whole 190 kB.
  const sums = (await listFiles(dist)).filter((f) => f.startsWith('_astro/sum.'));
  expect(sums).toHaveLength(1);
  expect(scales.gzip(sums[0] ?? '')).toBeLessThan(46_000);
});

test('the search engine starts small', () => {
  // Of these, the words that mean the same and the sayings of both languages are 2 kB.
  expect(scales.gzip('pagefind/engine.js')).toBeLessThan(22_500);
});
