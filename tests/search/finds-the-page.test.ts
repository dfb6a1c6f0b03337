/** What readers type, and where the right page must come: asked of the built site's box, from disk and from a server. */
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import { watchedPage } from '../e2e/support/browser.ts';
import { dist } from '../e2e/support/site.ts';
import { placeOf, queries, scoreOf, type Query } from './score.ts';
import { openedSite } from '../e2e/support/opened-site.ts';

const fromDisk = pathToFileURL(join(dist, '/')).href;
const most = 8;
const site = openedSite();

const searchPage = (lang: string) => `${lang === 'es' ? 'es/' : ''}search.html`;

async function openAt(address: string): Promise<Page> {
  const { page } = await watchedPage(site.browser);
  await page.goto(address);
  await page.getByRole('searchbox').and(page.locator(':enabled')).waitFor();
  return page;
}

/** All questions put to the engine of one page: the addresses found, from the site's folder. */
async function answers(page: Page, root: string, asked: readonly string[]): Promise<string[][]> {
  await page.waitForFunction(() => globalThis.almanacSearch !== undefined);
  const found = await page.evaluate(
    async ([list, limit]) => {
      const out: string[][] = [];
      for (const question of list)
        out.push(((await globalThis.almanacSearch?.find(question, { limit }))?.hits ?? []).map((hit) => hit.address));
      return out;
    },
    [asked, most] as const,
  );
  return found.map((hits) => hits.map((address) => address.slice(root.length)));
}

describe.each(['en', 'es'] as const)('search in %s', (lang) => {
  const mine = queries.filter((q) => q.lang === lang && q.pages !== undefined);
  const places = new Map<Query, { place: number; hits: readonly string[] }>();
  let disk: string[][];

  beforeAll(async () => {
    const page = await openAt(fromDisk + searchPage(lang));
    disk = await answers(
      page,
      fromDisk,
      mine.map((q) => q.query),
    );
    mine.forEach((q, at) => places.set(q, { place: placeOf(q, disk[at] ?? []), hits: disk[at] ?? [] }));
  });

  afterAll(() => {
    const score = (held: boolean) =>
      scoreOf(mine.filter((q) => (q.held ?? false) === held).map((q) => places.get(q)?.place ?? 0));
    console.log(`${lang}: ${score(false)}\n${lang}, written unseen: ${score(true)}`);
  });

  it.each(mine.filter((q) => !q.held).map((q) => [q.query, q] as const))('finds the page for "%s"', (_, q) => {
    const { place, hits } = places.get(q) ?? { place: 0, hits: [] };
    const within = q.within ?? 1;
    expect(
      place > 0 && place <= within,
      `${String(q.pages)} should be ${within === 1 ? 'first' : 'among three'}: ${hits.slice(0, 4).join(', ')}`,
    ).toBe(true);
  });

  it('finds most of the questions written unseen among the first three', () => {
    const held = mine.filter((q) => q.held);
    const good = held.filter((q) => [1, 2, 3].includes(places.get(q)?.place ?? 0));
    expect(good.length / held.length).toBeGreaterThanOrEqual(0.92);
  });

  it('gives the same order from disk and from a server', async () => {
    const page = await openAt(site.serving.address + searchPage(lang));
    expect(
      await answers(
        page,
        site.serving.address,
        mine.map((q) => q.query),
      ),
    ).toEqual(disk);
  });
});

it('asks at least 200 different questions', () => {
  expect(new Set(queries.map((q) => `${q.lang} ${q.query}`)).size).toBe(queries.length);
  expect(queries.filter((q) => !q.held).length).toBeGreaterThanOrEqual(200);
});

describe('the box', () => {
  const ask = async (question: string, lang: 'en' | 'es' = 'en') => {
    const page = await openAt(fromDisk + searchPage(lang));
    await page.getByRole('searchbox').fill(question);
    await page.locator('.find-said').filter({ hasText: question }).waitFor();
    return page;
  };

  it('says what stands in for a misspelled word, and finds by it', async () => {
    const page = await ask('belt sqeal');
    expect(await page.locator('.find-said').innerText()).toContain('“sqeal” is on no page; searched for “squeal”');
  });

  it('says what was left out, and finds by the rest', async () => {
    const page = await ask('silica qqxvz');
    expect(await page.locator('.find-said').innerText()).toContain('“qqxvz” is on no page and was left out');
    expect(await page.locator('.find-results li').count()).toBeGreaterThan(0);
  });

  it.each(['hernia', 'zzzz', 'qqxv'])('finds nothing for "%s", says so and helps', async (word) => {
    const page = await openAt(fromDisk + searchPage('en'));
    await page.getByRole('searchbox').fill(word);
    await page.getByText(`Nothing found for “${word}”`).waitFor();
    expect(await page.locator('.find-help').innerText()).toContain('as you would at the counter');
  });

  it('says what each result is', async () => {
    const page = await ask('belt tension');
    expect(await page.locator('.find-kind').first().innerText()).toMatch(/^Calculator/);
  });

  it('opens a calculator filled with a size, and it answers from it', async () => {
    const page = await ask('25 x 52 x 15');
    await page.locator('.find-offer').click();
    await page.waitForURL(/calculators\/bearing-size\.html\?/);
    await page.locator('section.calc[data-live=yes]').first().waitFor();
    expect(await page.locator('section.calc').first().innerText()).toContain('6205');
  });

  it('counts the pages a choice of readers hides, and shows them', async () => {
    const page = await openAt(`${fromDisk}search.html?q=6205-2RS`);
    await page.locator('.find-results a').first().waitFor();
    await page.getByLabel('For users').check();
    await page.getByText(/more pages? outside “For users”/).waitFor();
    await page.getByRole('button', { name: 'Show all' }).click();
    await page.locator('.find-results a[href*="bearing-size"]').waitFor();
  });

  it('shows only bench pages when asked', async () => {
    const page = await openAt(`${fromDisk}search.html?q=silica`);
    await page.locator('.find-results a').first().waitFor();
    await page.getByLabel('For the bench').check();
    await page.waitForFunction(
      () =>
        document.querySelectorAll('.find-results a').length > 0 &&
        [...document.querySelectorAll('.find-results a')].every(
          (a) => !(a as HTMLAnchorElement).href.includes('/guides/'),
        ),
    );
  });

  it.each(queries.filter((q) => q.other).map((q) => [q.query, q.lang] as const))(
    'points to the other language for "%s"',
    async (question, lang) => {
      const page = await openAt(`${fromDisk}${searchPage(lang)}?q=${encodeURIComponent(question)}`);
      const link = page.locator('.find-aside a');
      await link.waitFor();
      expect(await link.getAttribute('lang')).toBe(lang === 'en' ? 'es' : 'en');
      await link.click();
      await page.locator('.find-results a').first().waitFor();
      expect(await page.getByRole('searchbox').inputValue()).toBe(question);
    },
  );

  it('keeps the question in the address', async () => {
    const page = await ask('no water');
    await page.waitForURL(/\?q=no\+water$/);
    await page.reload();
    await page.locator('.find-results a').first().waitFor();
    expect(await page.getByRole('searchbox').inputValue()).toBe('no water');
  });

  it('lets go of the keyboard on Enter', async () => {
    const page = await ask('no water');
    await page.getByRole('searchbox').press('Enter');
    expect(await page.evaluate(() => document.activeElement?.matches('input'))).toBe(false);
    expect(page.url()).toContain('search.html');
  });

  it('is worked by keyboard: arrows between the results, Escape back to the box', async () => {
    const page = await openAt(`${fromDisk}search.html?q=silica`);
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

  it('shows the first result above a phone’s keyboard, and moves nothing sideways', async () => {
    const { page } = await watchedPage(site.browser, { viewport: { width: 390, height: 844 } });
    await page.goto(`${fromDisk}search.html?q=no%20water`);
    const first = page.locator('.find-results a').first();
    await first.waitFor();
    const box = await first.boundingBox();
    // A keyboard takes about 340 of 844 px.
    expect((box?.y ?? 999) + (box?.height ?? 0)).toBeLessThan(480);
    const readers = await page.locator('.find-readers').boundingBox();
    expect(readers?.height ?? 999).toBeLessThan(60);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
  });
});
