/** Every page reads without scripts; a calculator page still carries a whole worked example. */
import type { Browser, Page } from 'playwright-core';
import { pathToFileURL } from 'node:url';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launch, watchedPage, type WatchedPage } from './support/browser.ts';
import { parsePage } from '../../src/steps/portable/parse-page.ts';
import { calculators, dist, oneOfEach, pages, readPage } from './support/site.ts';

let browser: Browser;
let watched: WatchedPage;
let page: Page;
beforeAll(async () => {
  browser = await launch();
  watched = await watchedPage(browser, { javaScriptEnabled: false });
  page = watched.page;
});
afterAll(() => browser.close());

const open = (file: string) => page.goto(pathToFileURL(join(dist, file)).href);

test('every page carries its heading and its text', () => {
  for (const file of pages) {
    const { html, elements } = parsePage(file, readPage(file));
    const main = elements.find((e) => e.tag === 'main');
    const [heading] = elements.filter((e) => e.tag === 'h1' && e.start > (main?.start ?? html.length));
    const words = (part = main) => html.slice(part?.startTagEnd, part?.end).replace(/<[^>]*>|\s+/g, ' ');
    expect(words(heading).trim(), file).not.toBe('');
    expect(words().replace(/ +/g, ' ').length, file).toBeGreaterThan(80);
  }
});

test('a page of each kind shows its heading and its text', async () => {
  for (const file of oneOfEach) {
    await open(file);
    expect(await page.locator('main h1').isVisible(), file).toBe(true);
    expect((await page.locator('main').innerText()).length, file).toBeGreaterThan(80);
  }
  expect(watched.troubles).toEqual([]);
});

test('a calculator page shows figures, answer and working of an example', async () => {
  for (const file of calculators) {
    await open(file);
    const answer = page.locator('section.calc .calc-answer').first();
    expect(await answer.isVisible(), file).toBe(true);
    expect(await answer.innerText(), file).toMatch(/\d/);
    expect(await page.locator('section.calc math').first().isVisible(), file).toBe(true);
  }
});

test('the search page says that it needs scripts and leads to the list of all pages', async () => {
  await open('search.html');
  expect(await page.locator('noscript p, noscript').first().isVisible()).toBe(true);
  await page.locator('main a[href="a-z.html"]').first().click();
  expect(await page.locator('main a').count()).toBeGreaterThan(20);
});
