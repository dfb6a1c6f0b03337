/** What the hand needs stands on the first screen: first box, answer and drawing on a laptop, first box and answer line on a phone. */
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { wakeCalculator, watchedPage, type WatchedPage } from './support/browser.ts';
import { calculators } from './support/site.ts';
import { openedSite } from './support/opened-site.ts';

const site = openedSite();

interface Places {
  readonly firstBox: number;
  /** Foot of the first finding or figure of the answer. */
  readonly answer: number;
  /** Foot of the last sentence of the answer: where several things were found, all of them are the answer. */
  readonly said: number;
  readonly drawing: number;
  readonly line: number;
  readonly shift: number;
  readonly tooWide: number;
}

/** One window a size; every calculator is opened in it afresh. */
async function windowOf(viewport: { width: number; height: number }): Promise<WatchedPage> {
  const watched = await watchedPage(site.browser, { viewport });
  await watched.page.addInitScript(() => {
    const at = window as unknown as { shift: number };
    at.shift = 0;
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries()) at.shift += (entry as unknown as { value: number }).value;
    }).observe({ type: 'layout-shift', buffered: true });
  });
  return watched;
}

async function placesOf(file: string, page: Page): Promise<Places> {
  await page.goto(site.serving.address + file);
  await wakeCalculator(page);
  await page.evaluate(() => scrollTo(0, 0));
  return page.evaluate(() => {
    const edge = (query: string, side: 'top' | 'bottom') =>
      Math.round((document.querySelector(query)?.getBoundingClientRect()[side] ?? 0) + scrollY);
    const lowest = (query: string) =>
      Math.max(0, ...[...document.querySelectorAll(query)].map((e) => Math.round(e.getBoundingClientRect().bottom)));
    const answer = edge('.calc-main > .calc-verdict, .calc-main .calc-large > div', 'bottom');
    return {
      firstBox: edge('.calc .calc-box', 'top'),
      answer,
      said: Math.max(answer, lowest('.calc-main > .calc-verdict')),
      drawing: lowest('.calc-picture svg'),
      line: edge('.calc-line', 'bottom'),
      shift: (window as unknown as { shift: number }).shift,
      tooWide: document.documentElement.scrollWidth - innerWidth,
    };
  });
}

describe('laptop, 1366 by 768', () => {
  let watched: WatchedPage;
  beforeAll(async () => {
    watched = await windowOf({ width: 1366, height: 768 });
  });
  afterAll(() => watched.context.close());

  test.each(calculators)('%s', async (file) => {
    const at = await placesOf(file, watched.page);
    expect(at.firstBox).toBeLessThanOrEqual(300);
    expect(at.answer).toBeLessThanOrEqual(480);
    expect(at.drawing).toBeLessThanOrEqual(768);
    expect(at.shift).toBeLessThanOrEqual(0.02);
    expect(at.tooWide).toBe(0);
  });
});

describe('phone, 390 by 844', () => {
  let watched: WatchedPage;
  beforeAll(async () => {
    watched = await windowOf({ width: 390, height: 844 });
  });
  afterAll(() => watched.context.close());

  test.each(calculators)('%s', async (file) => {
    const at = await placesOf(file, watched.page);
    expect(at.firstBox).toBeLessThanOrEqual(320);
    expect(at.line).toBeLessThanOrEqual(260);
    expect(at.drawing - at.said).toBeLessThanOrEqual(600);
    expect(at.shift).toBeLessThanOrEqual(0.02);
    expect(at.tooWide).toBe(0);
  });

  test('a box with the focus is not covered by the answer line', async () => {
    const { page } = watched;
    await page.goto(`${site.serving.address}calculators/belt-tension.html`);
    await wakeCalculator(page);
    const boxes = page.locator('.calc-form .calc-fields').first().locator('input[type=text], select');
    for (let i = (await boxes.count()) - 1; i >= 0; i -= 1) {
      await boxes.nth(i).focus();
      const gap = await boxes.nth(i).evaluate((at) => {
        const line = document.querySelector('.calc-line')?.getBoundingClientRect();
        return at.getBoundingClientRect().top - (line?.bottom ?? 0);
      });
      expect(gap).toBeGreaterThanOrEqual(8);
    }
    await page.evaluate(() => scrollTo(0, 900));
    expect(await page.locator('.calc-line').evaluate((at) => at.getBoundingClientRect().top)).toBe(0);
  });
});
