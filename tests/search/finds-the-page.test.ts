/** What a reader types, and the page that must come first (or among the first four). */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Browser, Page } from 'playwright-core';
import { launch, watchedPage } from '../e2e/support/browser.ts';
import { dist } from '../e2e/support/site.ts';

interface Query {
  readonly lang: 'en' | 'es';
  readonly query: string;
  readonly first?: string;
  readonly among?: readonly string[];
  readonly also?: readonly string[];
}

const queries = JSON.parse(readFileSync(new URL('queries.json', import.meta.url), 'utf8')) as readonly Query[];
const root = pathToFileURL(join(dist, '/')).href;
let browser: Browser;

beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser.close());

async function hitsFor(page: Page, query: string): Promise<string[]> {
  await page.getByRole('searchbox').fill(query);
  await page.getByRole('status').filter({ hasText: query }).waitFor();
  const links = await page
    .locator('.find-results a')
    .evaluateAll((list) => list.map((a) => (a as HTMLAnchorElement).href));
  return links.map((href) => href.slice(root.length).replace(/#.*$/, ''));
}

describe.each(['en', 'es'] as const)('search in %s', (lang) => {
  let page: Page;
  beforeAll(async () => {
    ({ page } = await watchedPage(browser));
    await page.goto(`${root}${lang === 'es' ? 'es/' : ''}search.html`);
    await page.getByRole('searchbox').and(page.locator(':enabled')).waitFor();
  });

  it.each(queries.filter((q) => q.lang === lang).map((q) => [q.query, q] as const))(
    'finds the page for "%s"',
    async (_, { query, first, among = [], also = [] }) => {
      const hits = await hitsFor(page, query);
      if (first) expect(hits[0]).toBe(first);
      if (among.length > 0)
        expect(
          hits.slice(0, 4).some((h) => among.includes(h)),
          `${hits.slice(0, 4).join(', ')} holds none of ${among.join(', ')}`,
        ).toBe(true);
      for (const page of also) expect(hits).toContain(page);
    },
  );
});

it('says so when no page holds the word, and offers help when nothing comes near', async () => {
  const { page } = await watchedPage(browser);
  await page.goto(`${root}search.html`);
  await page.getByRole('searchbox').and(page.locator(':enabled')).waitFor();
  // The engine shortens a word until something matches: "zzzz" leads to "ZZ", a bearing shield.
  await page.getByRole('searchbox').fill('zzzz');
  await page.getByText('No page says “zzzz” just so').waitFor();
  await page.getByRole('searchbox').fill('qqxv');
  await page.getByText('Nothing found for “qqxv”').waitFor();
  expect(await page.getByText('Try one word instead of several').count()).toBe(1);
});

it('is worked by keyboard: arrows between the results, Escape back to the box', async () => {
  const { page } = await watchedPage(browser);
  await page.goto(`${root}search.html?q=silica`);
  await page.locator('.find-results a').first().waitFor();
  await page.getByRole('searchbox').focus();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowUp');
  expect(await page.evaluate(() => document.activeElement === document.querySelector('.find-results a'))).toBe(true);
  await page.keyboard.press('Escape');
  expect(await page.evaluate(() => document.activeElement?.getAttribute('type'))).toBe('search');
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  await page.waitForURL(/keeping-dust-down/);
});

it('shows only bench pages when asked', async () => {
  const { page } = await watchedPage(browser);
  await page.goto(`${root}search.html?q=silica`);
  await page.locator('.find-results a').first().waitFor();
  await page.getByLabel('Bench pages').check();
  await page.waitForFunction(() =>
    [...document.querySelectorAll('.find-results a')].every((a) => !(a as HTMLAnchorElement).href.includes('/guides/')),
  );
  expect(await page.locator('.find-results a').count()).toBeGreaterThan(0);
});
