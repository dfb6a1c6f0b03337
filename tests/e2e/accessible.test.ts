/** axe on every page, light and dark, at phone and laptop width: WCAG 2.2 AA. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { serveFolder, type Serving } from '../../src/build/serve.ts';
import { launch } from './support/browser.ts';
import { dist, pages } from './support/site.ts';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const rules = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

let browser: Browser;
let serving: Serving;
beforeAll(async () => {
  browser = await launch();
  serving = await serveFolder(dist);
});
afterAll(async () => {
  await browser.close();
  await serving.close();
});

declare const window: { axe: { run: (where: Document, options: unknown) => Promise<AxeResults> } };

const looks = (['light', 'dark'] as const).flatMap((colorScheme) => [
  { name: `${colorScheme}, phone`, colorScheme, viewport: { width: 390, height: 844 } },
  { name: `${colorScheme}, laptop`, colorScheme, viewport: { width: 1366, height: 768 } },
]);

describe.each(looks)('$name', ({ colorScheme, viewport }) => {
  test('no page has a barrier, and none is wider than the screen', async () => {
    const context = await browser.newContext({ colorScheme, viewport, serviceWorkers: 'block', bypassCSP: true, reducedMotion: 'reduce' });
    const page = await context.newPage();
    const found = new Map<string, string[]>();
    const note = (what: string, where: string) => found.set(what, [...(found.get(what) ?? []), where]);
    for (const file of pages) {
      await page.goto(serving.address + file, { waitUntil: 'load' });
      await page.evaluate(axe);
      const { violations } = await page.evaluate((values) => window.axe.run(document, { runOnly: { type: 'tag', values }, resultTypes: ['violations'] }), rules);
      for (const v of violations) for (const node of v.nodes) note(`${v.id}: ${v.help}`, `${file} at ${node.target.join(' ')}: ${node.failureSummary?.split('\n').slice(1, 3).join(' ').trim()}`);
      const tooWide = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
      if (tooWide > 0) note('wider than the screen', `${file} by ${tooWide} px`);
    }
    // One mark in a shared part fails on every page: three places of each are enough to find it.
    expect([...found].map(([what, places]) => ({ what, count: places.length, first: places.slice(0, 3) }))).toEqual([]);
    await context.close();
  }, 300_000);
});
