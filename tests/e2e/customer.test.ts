/** What whoever uses a saw sees first, on a phone and on a laptop, in both languages; what it does; and its paper. */
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { watchedPage } from './support/browser.ts';
import { parsePage } from '../../src/steps/portable/parse-page.ts';
import { dist, pages, readPage } from './support/site.ts';
import { openedSite } from './support/opened-site.ts';

const site = openedSite();

const sizes = { laptop: { width: 1366, height: 768 }, phone: { width: 390, height: 844 } } as const;
const inBoth = (of: RegExp) => pages.filter((p) => of.test(p.replace(/^es\//, '')));
const withChecks = inBoth(/^guides\/before-you-start/);
const complaints = inBoth(/^trouble\/./);
const guides = inBoth(/^guides\/./);
const starts = ['index.html', 'es.html'];
const stepThroughs = inBoth(/^check\/./);

async function opened(size: { width: number; height: number }) {
  const { page, context, troubles } = await watchedPage(site.browser, { viewport: size });
  const open = (file: string) => page.goto(site.serving.address + file, { waitUntil: 'load' });
  return { page, context, troubles, open };
}

const box = (page: Page, what: string) =>
  page
    .locator(what)
    .first()
    .evaluate((e) => {
      const { top, bottom } = e.getBoundingClientRect();
      return { top: top + window.scrollY, bottom: bottom + window.scrollY };
    });

// The measures of the look: how far down the page the thing the reader came for may stand.
describe.each(['laptop', 'phone'] as const)('first screen on a %s', (size) => {
  const laptop = size === 'laptop';

  test('check 1 of a guide', async () => {
    const { page, context, open } = await opened(sizes[size]);
    for (const file of withChecks) {
      await open(file);
      expect((await box(page, '.checks input')).top, file).toBeLessThanOrEqual(laptop ? 340 : 420);
    }
    expect(withChecks).toHaveLength(4);
    await context.close();
  });

  test('first thing to look at of a complaint', async () => {
    const { page, context, open } = await opened(sizes[size]);
    for (const file of complaints) {
      await open(file);
      expect((await box(page, '.three li')).top, file).toBeLessThanOrEqual(laptop ? 300 : 400);
    }
    expect(complaints.length).toBeGreaterThanOrEqual(24);
    await context.close();
  });

  test('both doors and the whole drawing of the start page', async () => {
    const { page, context, open } = await opened(sizes[size]);
    for (const file of starts) {
      await open(file);
      const doors = await page
        .locator('.start-door')
        .evaluateAll((all) => all.map((e) => e.getBoundingClientRect().bottom));
      expect(Math.max(...doors), file).toBeLessThanOrEqual(laptop ? 400 : 320);
      expect((await box(page, '.start .saw')).bottom, file).toBeLessThanOrEqual(laptop ? 768 : 760);
    }
    await context.close();
  });

  test('nothing moves after the first paint', async () => {
    const { page, context, open } = await opened(sizes[size]);
    await page.addInitScript(() => {
      const seen = { shift: 0 };
      (window as unknown as { seen: typeof seen }).seen = seen;
      new PerformanceObserver((list) => {
        for (const entry of list.getEntries()) seen.shift += (entry as unknown as { value: number }).value;
      }).observe({ type: 'layout-shift', buffered: true });
    });
    for (const file of [...withChecks, ...starts, 'trouble/will-not-start.html', 'check/hand-held.html']) {
      await open(file);
      await page.waitForTimeout(300);
      const shift = await page.evaluate(() => (window as unknown as { seen: { shift: number } }).seen.shift);
      expect(shift, file).toBeLessThan(0.02);
    }
    await context.close();
  });
});

test('the whole list of checks, folded, is two phone screens at most', async () => {
  const { page, context, open } = await opened(sizes.phone);
  for (const file of withChecks) {
    await open(file);
    const [first, last] = [await box(page, '.checks'), await box(page, '.stop-bar')];
    expect(last.top - first.top, file).toBeLessThanOrEqual(2 * sizes.phone.height);
  }
  await context.close();
});

test('no sideways movement, at five widths, with text as it is and twice as large', async () => {
  const bad: string[] = [];
  const { page, context, open } = await opened(sizes.phone);
  const looked = [...starts, ...withChecks, ...complaints.slice(0, 2), ...stepThroughs, 'shop.html', 'es/shop.html'];
  for (const file of [
    ...looked,
    'guides/keeping-dust-down.html',
    'es/guides/keeping-dust-down.html',
    'es/hazards.html',
    'search.html',
    'es/404.html',
  ].filter((f) => pages.includes(f))) {
    await open(file);
    for (const width of [320, 390, 768, 1024, 1366])
      for (const text of ['', '200%']) {
        await page.setViewportSize({ width, height: 800 });
        const over = await page.evaluate((size) => {
          document.documentElement.style.fontSize = size;
          return document.documentElement.scrollWidth - document.documentElement.clientWidth;
        }, text);
        if (over > 0) bad.push(`${file} at ${width}${text && ', text twice as large'}: ${over} px`);
      }
  }
  expect(bad).toEqual([]);
  await context.close();
});

test('what is pressed alone is 44 px high', async () => {
  const { page, context, open } = await opened(sizes.phone);
  const small: string[] = [];
  for (const file of [...withChecks, ...starts, ...stepThroughs, 'trouble/will-not-start.html', 'shop.html']) {
    await open(file);
    const found = await page
      .locator(
        'main :is(button, summary, .call, .plain-button, .cut-button, .start-door, .start-quick a, .start-names a, .checks label)',
      )
      .evaluateAll((all) =>
        all
          .filter((e) => e.getClientRects().length > 0 && e.getBoundingClientRect().height < 44)
          .map((e) => `${e.textContent.trim().slice(0, 30)} ${e.getBoundingClientRect().height}`),
      );
    small.push(...found.map((f) => `${file}: ${f}`));
  }
  expect(small).toEqual([]);
  await context.close();
});

test('every customer page leads to the shop by telephone, and the way it is written is a link', () => {
  for (const file of [...guides, ...complaints, ...starts, ...stepThroughs, 'shop.html', 'es/shop.html']) {
    const { html, elements } = parsePage(file, readPage(file));
    const within = (tag: string) => elements.findLast((e) => e.tag === tag);
    const calls = (tag: string) =>
      elements.filter(
        (e) =>
          e.tag === 'a' &&
          e.attributes['href']?.startsWith('tel:') &&
          e.start > (within(tag)?.start ?? html.length) &&
          e.start < (within(tag)?.end ?? 0),
      );
    expect(calls('main').length, file).toBeGreaterThan(0);
    expect(calls('footer').length, file).toBe(1);
  }
});

test('ticks stay for the day, and are cleared', async () => {
  const { page, context, troubles, open } = await opened(sizes.phone);
  const file = 'guides/before-you-start-a-cut-off-saw.html';
  await open(file);
  const ticked = () => page.locator('.checks input:checked').count();
  expect(await ticked()).toBe(0);
  await page.locator('.checks input').nth(0).check();
  await page.locator('.checks input').nth(3).check();
  await page.reload();
  expect(await ticked()).toBe(2);
  // The day after, in the same site.browser.
  await page.clock.install({ time: Date.now() + 86_400_000 });
  await page.reload();
  expect(await ticked()).toBe(0);
  await page.clock.setFixedTime(Date.now());
  await page.reload();
  expect(await ticked()).toBe(2);
  await page.getByRole('button', { name: 'Clear the ticks' }).click();
  await page.reload();
  expect(await ticked()).toBe(0);
  expect(troubles).toEqual([]);
  await context.close();
});

test('without scripts all is open and the boxes are plain boxes', async () => {
  const context = await site.browser.newContext({ viewport: sizes.phone, javaScriptEnabled: false });
  const page = await context.newPage();
  await page.goto(pathToFileURL(join(dist, 'guides/before-you-start-a-cut-off-saw.html')).href);
  for (const more of await page.locator('.checks details > p').all()) expect(await more.isVisible()).toBe(true);
  await page.locator('.checks input').first().check();
  expect(await page.locator('.checks input:checked').count()).toBe(1);
  await context.close();
});

describe.each([
  [
    'en',
    'check/hand-held.html',
    'Begin',
    'Yes, it is so',
    'No',
    'Does not apply',
    'Keep the reason and go on',
    'Stop here',
  ],
  [
    'es',
    'es/check/floor-saw.html',
    'Empezar',
    'Sí, así está',
    'No',
    'No corresponde',
    'Guardar la razón',
    'Parar aquí',
  ],
])('one check at a time in %s, from disk', (_, file, begin, yes, no, notHere, keep, end) => {
  const press = (page: Page, name: string) => page.getByRole('button', { name, exact: name === no }).click();

  async function start() {
    const { page, context, troubles } = await watchedPage(site.browser, { viewport: sizes.phone });
    await page.goto(pathToFileURL(join(dist, file)).href);
    await page.waitForFunction(() => !document.querySelector('astro-island[ssr]'));
    await press(page, begin);
    return { page, context, troubles };
  }

  test('a check is not waved through without a reason, and the record says the reason', async () => {
    const { page, context, troubles } = await start();
    await press(page, notHere);
    await press(page, keep);
    expect(await page.getByRole('alert').count()).toBe(1);
    await page.locator('#cut-why').fill('ab');
    await press(page, keep);
    expect(await page.getByRole('alert').count()).toBe(1);
    await page.locator('#cut-why').fill('abc');
    await press(page, keep);
    while ((await page.locator('.cut-record').count()) === 0) await press(page, yes);
    expect(await page.locator('.cut-clear').count()).toBe(1);
    expect(await page.locator('.cut-record li').first().innerText()).toContain('abc');
    await page.reload();
    await page.waitForFunction(() => !document.querySelector('astro-island[ssr]'));
    expect(await page.locator('.cut-earlier li').count()).toBe(1);
    expect(troubles).toEqual([]);
    await context.close();
  });

  test('a "no" stops with the number to call, and the record says so', async () => {
    const { page, context } = await start();
    await press(page, yes);
    await press(page, no);
    expect(await page.locator('.cut-stop a[href^="tel:"]').count()).toBe(1);
    await press(page, end);
    expect(await page.locator('.cut-stopped').count()).toBe(1);
    expect(await page.locator('.cut-record [data-said=no]').count()).toBe(1);
    await context.close();
  });

  test('what was answered outlives the page', async () => {
    const { page, context } = await start();
    await press(page, yes);
    await press(page, yes);
    await page.reload();
    await page.waitForFunction(() => !document.querySelector('astro-island[ssr]'));
    await page.locator('.cut-first').click();
    expect(await page.locator('.cut-count').innerText()).toMatch(/3/);
    await context.close();
  });
});

test('on paper a guide is one sheet, a complaint one side, on A4 and on Letter, with every caution open', async () => {
  const { page, context, open } = await opened(sizes.laptop);
  const sides: Record<string, number> = {};
  for (const file of [...guides, ...complaints]) {
    await open(file);
    for (const format of ['A4', 'Letter'] as const) {
      const pdf = (await page.pdf({ format, preferCSSPageSize: false })).toString('latin1');
      sides[`${file} ${format}`] = (pdf.match(/\/Type\s*\/Page\b(?!s)/g) ?? []).length;
    }
  }
  const tooMany = Object.entries(sides).filter(([name, n]) => n > (name.includes('trouble/') ? 1 : 2));
  expect(tooMany).toEqual([]);
  await context.close();
}, 300_000);
