/**
 * What is painted first stays where it is, however late the scripts come: they are held back until the page is painted
 * and set in its faces, then let go. Nothing here waits for a time.
 */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { serveFolder } from '../../src/commands/support/serve.ts';
import { launch, watchedPage } from './support/browser.ts';
import { dist } from './support/site.ts';

let browser: Browser;
let serving: Awaited<ReturnType<typeof serveFolder>>;
beforeAll(async () => {
  browser = await launch();
  serving = await serveFolder(dist);
});
afterAll(async () => {
  await browser.close();
  await serving.close();
});

/** Where everything stands that is read, by its words. */
const places = (page: Page) =>
  page.evaluate(() =>
    [...document.querySelectorAll('main :is(h1, h2, h3, p, li, summary, dt, button)')]
      .filter((e) => e.checkVisibility())
      .map((e) => {
        const { top, left, height } = e.getBoundingClientRect();
        return `${Math.round(left)} ${Math.round(top)} ${Math.round(height)} ${e.textContent?.slice(0, 40)}`;
      }),
  );

test.each([
  ['index.html', undefined],
  ['es/guides/before-you-start-a-cut-off-saw.html', undefined],
  ['trouble/will-not-start.html', undefined],
  ['jobs/crankcase-leak-test.html', undefined],
  ['jobs/blade-shaft-bearings.html', '.calc[data-live=rest]'],
  ['faults/hard-to-start.html', '.fault[data-live=yes]'],
  ['calculators/belt-tension.html', '.strip[data-live=yes]'],
])('%s', async (file, awake) => {
  const { page, context, troubles } = await watchedPage(browser, { viewport: { width: 390, height: 844 } });
  let release = (): void => undefined;
  const held = new Promise<void>((done) => (release = done));
  await page.route(/_astro\/(?!inline\.)[\w.-]+\.js$/, async (route) => {
    await held;
    await route.continue();
  });
  await page.addInitScript(() => {
    const at = window as unknown as { shift: number };
    at.shift = 0;
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries()) at.shift += (entry as unknown as { value: number }).value;
    }).observe({ type: 'layout-shift', buffered: true });
  });
  await page.goto(serving.address + file, { waitUntil: 'commit' });
  await page.locator('#edition-notice').waitFor({ state: 'attached' });
  await page.waitForFunction(() => performance.getEntriesByName('first-contentful-paint').length > 0);
  expect(
    await page.evaluate(() => document.fonts.check('1em Bitter') && document.fonts.check('1em "Bench Figures"', '0')),
  ).toBe(true);
  expect(await page.locator('details.fold[open]').count()).toBe(0);
  const before = await places(page);
  expect(before.length).toBeGreaterThan(5);
  release();
  await page.waitForLoadState('load');
  if (awake !== undefined) await page.locator(awake).first().waitFor();
  expect(await places(page)).toEqual(before);
  expect(await page.evaluate(() => (window as unknown as { shift: number }).shift)).toBe(0);
  expect(troubles).toEqual([]);
  await context.close();
});
