/**
 * What is painted first stays where it is, however late the scripts come: they are held back until the page is painted
 * and set in its faces, then let go. And what is read stays where it is while a figure is typed, also through a key by
 * which the box is refused. Nothing here waits for a time.
 */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { serveFolder } from '../../src/commands/support/serve.ts';
import { launch, wakeCalculator, watchedPage } from './support/browser.ts';
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

/** Where everything stands that is read, by the words that are seen. */
const places = (page: Page) =>
  page.evaluate(() => {
    const isHidden = (e: Element) => getComputedStyle(e).visibility === 'hidden';
    // Without what waits inside for its turn to be seen.
    const textOf = (e: Element): string =>
      [...e.childNodes]
        .map((node) => {
          if (!(node instanceof Element)) return node.textContent;
          return isHidden(node) && !isHidden(e) ? '' : textOf(node);
        })
        .join('');
    return [...document.querySelectorAll('main :is(h1, h2, h3, p, li, summary, dt, button)')]
      .filter((e) => e.checkVisibility())
      .map((e) => {
        const { top, left, height } = e.getBoundingClientRect();
        return `${Math.round(left)} ${Math.round(top)} ${Math.round(height)} ${textOf(e).slice(0, 40)}`;
      });
  });

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

/** Where every box, every word of the answer and all that lies below stands, in whatever ink. */
const everything = (page: Page) =>
  page.evaluate(() =>
    [
      ...document.querySelectorAll(
        'section.calc :is(input, select, button, label, legend, th, summary, .calc-box, .calc-top, .calc-answer, .calc-main, .calc-main *, .calc-side, .calc-below > *, svg, table, article), main > *, .article > *, footer',
      ),
    ]
      .filter((e) => e.checkVisibility() && !e.closest('.calc-earlier, .calc-unit'))
      .map((e) => {
        const { left, top, width, height } = e.getBoundingClientRect();
        const at = [left + scrollX, top + scrollY, width, height].map((n) => Math.round(n * 10) / 10).join(' ');
        return `${e.tagName} ${e.id} ${e.getAttribute('class') ?? ''} ${e.textContent?.slice(0, 20)}: ${at}`;
      }),
  );

/** Boxes and rows, on a laptop, and on a phone where rows are cards. */
test.each([
  { width: 1366, height: 768 },
  { width: 390, height: 844 },
])('a figure that is refused moves nothing, nor does the one put right; $width px', async (viewport) => {
  const { page, context, troubles } = await watchedPage(browser, { viewport });
  const moved: Record<string, readonly string[]> = {};
  for (const name of ['bearing-fit', 'belt-tension', 'repair-worth', 'hand-arm-vibration', 'service-interval']) {
    await page.goto(`${serving.address}calculators/${name}.html`);
    const calculator = await wakeCalculator(page);
    const box = calculator.locator('input[inputmode=decimal]:visible').first();
    const answer = calculator.locator('.calc-answer');
    // What follows a key a moment later is made out of sight of a test: printing brings it up to date.
    const settle = () => page.evaluate(() => void dispatchEvent(new Event('beforeprint')));
    const typed = async (text: string, stale: 'yes' | 'no') => {
      await box.fill(text);
      await calculator.locator(`.calc-answer[data-stale=${stale}]`).waitFor();
      await settle();
      return everything(page);
    };
    // A figure of the reader's own, as the form takes it.
    const figure = await box.inputValue();
    await box.fill(`${figure} `);
    const before = await typed(figure, 'no');
    expect(before.length).toBeGreaterThan(50);
    const words = await answer.innerText();
    // A letter; then a figure far above what any of these boxes takes.
    for (const wrong of [`${figure}x`, '9'.repeat(15)]) {
      for (const [text, stale] of [
        [wrong, 'yes'],
        [figure, 'no'],
      ] as const) {
        const off = (await typed(text, stale)).filter((at) => !before.includes(at));
        if (off.length > 0) moved[`${name}: ${text}`] = off.slice(0, 5);
      }
    }
    expect(await answer.innerText()).toBe(words);
  }
  expect(moved).toEqual({});
  expect(troubles).toEqual([]);
  await context.close();
});
