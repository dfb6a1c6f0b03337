/** The site after one visit, with the server gone. */
import { createHash } from 'node:crypto';
import type { Page } from 'playwright-core';
import { beforeAll, expect, test } from 'vitest';
import { wakeCalculator, watchedPage, type WatchedPage } from './support/browser.ts';
import { oneOfEach, pages, readPage } from './support/site.ts';
import { openedSite } from './support/opened-site.ts';

const site = openedSite({ base: '/sub/kb/' });
let watched: WatchedPage;
let page: Page;
let movedWhileSaving: number;

beforeAll(async () => {
  watched = await watchedPage(site.browser, { saves: true });
  page = watched.page;
  await page.setViewportSize({ width: 390, height: 844 });
  await page.addInitScript(() => {
    let moved = 0;
    const count = (entries: readonly PerformanceEntry[]) => {
      for (const entry of entries) moved += (entry as PerformanceEntry & { readonly value: number }).value;
    };
    const seen = new PerformanceObserver((list) => count(list.getEntries()));
    seen.observe({ type: 'layout-shift', buffered: true });
    Object.assign(globalThis, { movedSoFar: () => (count(seen.takeRecords()), moved) });
  });
  await page.goto(site.serving.address);
  // At the foot, where what is said about the copy on the device stands; once the faces have come, which move a little.
  await page.evaluate(async () => {
    await document.fonts.ready;
    scrollTo(0, document.documentElement.scrollHeight);
  });
  const before = await movedSoFar();
  // Some hundred files, on a machine that may do much else.
  await page.locator('#edition-line[data-state=kept]').waitFor({ timeout: 120_000 });
  movedWhileSaving = (await movedSoFar()) - before;
  await site.serving.close();
});

/** Sum of the layout shifts of the page so far, once what was drawn last has been counted. */
const movedSoFar = () =>
  page.evaluate(async () => {
    for (let frame = 0; frame < 2; frame += 1) await new Promise(requestAnimationFrame);
    return (globalThis as unknown as { movedSoFar: () => number }).movedSoFar();
  });

const at = (path: string) => site.serving.address + path;

test('every page is kept as it was published, though one was visited', async () => {
  const kept = await page.evaluate(async (files) => {
    const out: Record<string, string> = {};
    for (const file of files) {
      const bytes = await (await fetch(file)).arrayBuffer();
      out[file] = Array.from(new Uint8Array(await crypto.subtle.digest('SHA-256', bytes)), (b) =>
        b.toString(16).padStart(2, '0'),
      ).join('');
    }
    return out;
  }, pages);
  const published = Object.fromEntries(
    pages.map((file) => [file, createHash('sha256').update(readPage(file)).digest('hex')]),
  );
  expect(kept).toEqual(published);
});

test('what is said about the copy on the device moves nothing: not while it is saved, not when a newer one is there', async () => {
  expect(movedWhileSaving).toBe(0);
  for (const place of ['top', 'middle', 'foot'] as const) {
    await page.goto(at('guides/keeping-dust-down.html'));
    await page.evaluate(async (part) => {
      await document.fonts.ready;
      const whole = document.documentElement.scrollHeight - innerHeight;
      scrollTo(0, { top: 0, middle: whole / 2, foot: whole }[part]);
    }, place);
    const before = await movedSoFar();
    // The worker's own words, the short one and the longest.
    for (const data of [{ type: 'kept', pages: 1234 }, { type: 'no-room' }] as const) {
      await page.evaluate((said) => {
        navigator.serviceWorker.dispatchEvent(new MessageEvent('message', { data: said }));
      }, data);
      await page.locator(`#edition-line[data-state=${data.type}]`).waitFor({ state: 'attached' });
    }
    expect((await movedSoFar()) - before, `said at the ${place}`).toBe(0);
    // As when another window has taken the newer edition.
    await page.evaluate(() => navigator.serviceWorker.dispatchEvent(new Event('controllerchange')));
    await page.locator('#edition-notice[data-state=elsewhere]:not([hidden])').waitFor();
    expect((await movedSoFar()) - before, `shown at the ${place}`).toBe(0);
    await page.evaluate(() => document.getElementById('edition-notice')?.setAttribute('hidden', ''));
    expect((await movedSoFar()) - before, `gone at the ${place}`).toBe(0);
  }
});

test('a page of each kind opens', async () => {
  const bad: string[] = [];
  for (const file of oneOfEach) {
    await page.goto(at(file));
    bad.push(...watched.troubles.splice(0).map((t) => `${file}: ${t}`));
  }
  expect(bad).toEqual([]);
});

test('a calculator works, sums and all', async () => {
  await page.goto(at('calculators/blade-speed.html'));
  await wakeCalculator(page);
  await page.fill('#blade-speed-diameter', '300 mm + 50 mm + 2 in');
  await page.getByText('Read as 400.8 mm').waitFor();
  expect(watched.troubles.splice(0)).toEqual([]);
});

test('search works', async () => {
  await page.goto(at('search.html?q=toothpick'));
  await page.locator('.find-results a').filter({ hasText: 'After the cut' }).click();
  await page.getByRole('heading', { level: 1, name: 'After the cut' }).waitFor();
  expect(watched.troubles.splice(0)).toEqual([]);
});

test('addresses with a slash and a query find the page', async () => {
  await page.goto(at('guides/after-the-cut/?from=code'));
  await page.getByRole('heading', { level: 1, name: 'After the cut' }).waitFor();
});

test('an address that is not saved says so on a page of ours', async () => {
  await page.goto(at('no/such/page'));
  await page.locator('main h1').waitFor();
  expect(new URL(page.url()).pathname).toBe('/sub/kb/offline.html');
  await page.locator('main a').first().click();
  await page.locator('main h1').waitFor();
});

test('a device may install it: name, start, icons and a worker', async () => {
  await page.goto(at('index.html'));
  const manifest = await page.evaluate(async () => {
    const link = document.querySelector<HTMLLinkElement>('link[rel=manifest]');
    const data = (await (await fetch(link?.href ?? '')).json()) as {
      name: string;
      start_url: string;
      icons: { src: string; sizes: string }[];
    };
    const icons = await Promise.all(data.icons.map(async (icon) => (await fetch(new URL(icon.src, link?.href))).ok));
    return { ...data, icons: data.icons.map((icon, i) => `${icon.sizes} ${icons[i]}`) };
  });
  expect(manifest.name).not.toBe('');
  expect(manifest.start_url).toBe('./index.html');
  expect(manifest.icons).toEqual(expect.arrayContaining(['192x192 true', '512x512 true']));
});
