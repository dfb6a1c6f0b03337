/**
 * A calculator nobody has touched is at rest: its script has not come. What is typed and pressed while it comes counts,
 * and is kept; a form far down a page sleeps on; a script that does not come is said and asked for again.
 */
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { watchedPage } from './support/browser.ts';
import { dist } from './support/site.ts';
import { openedSite } from './support/opened-site.ts';

const site = openedSite();

const form = (page: Page) => page.locator('section.calc').first();
const atRest = (page: Page) => page.locator('section.calc[data-live=rest]').first().waitFor();
const alive = (page: Page) => page.locator('section.calc[data-live=yes]').first().waitFor();

describe.each(['from disk', 'from a server'])('%s', (way) => {
  const address = (file: string) =>
    way === 'from disk' ? pathToFileURL(join(dist, file)).href : site.serving.address + file;

  test('what is typed first is taken up, answered and kept', async () => {
    const { page, context, troubles } = await watchedPage(site.browser);
    await page.goto(address('calculators/blade-speed.html'));
    await atRest(page);
    const box = page.locator('#blade-speed-diameter');
    await box.fill('412');
    await alive(page);
    expect(await box.inputValue()).toBe('412');
    await page.locator('.calc-mark', { hasText: /example/ }).waitFor();
    await page.waitForFunction(() => Object.keys(localStorage).some((key) => key.includes('/figures/blade-speed')));
    await page.reload();
    // The device holds figures for this form now: it comes alive by itself.
    await alive(page);
    expect(await box.inputValue()).toBe('412');
    expect(troubles).toEqual([]);
    await context.close();
  });
});

test('a browser that cannot tell what is in view still wakes the form of figures it kept, and by hand', async () => {
  const { page, context, troubles } = await watchedPage(site.browser, { serviceWorkers: 'block' });
  await page.addInitScript(() => Reflect.deleteProperty(window, 'IntersectionObserver'));
  await page.goto(`${site.serving.address}calculators/warming.html`);
  await atRest(page);
  await page.locator('#warming-diameter').fill('61');
  await alive(page);
  await page.waitForFunction(() => Object.keys(localStorage).some((key) => key.includes('/figures/warming')));
  await page.reload();
  await alive(page);
  expect(await page.locator('#warming-diameter').inputValue()).toBe('61');
  expect(troubles).toEqual([]);
  await context.close();
});

test('a button pressed at rest does its act once the form can; the units switch counts too', async () => {
  const { page, context } = await watchedPage(site.browser, { serviceWorkers: 'block' });
  await page.goto(`${site.serving.address}calculators/warming.html`);
  await atRest(page);
  // By script, so that no pointer has reached the form before.
  await page.evaluate(() => {
    document.querySelector<HTMLElement>('#warming-units-inch')?.click();
    document.querySelector<HTMLElement>('.calc-actions button')?.click();
  });
  await alive(page);
  await page.getByRole('button', { name: 'Undo' }).and(page.locator(':enabled')).waitFor();
  expect(await page.locator('#warming-units-inch').isChecked()).toBe(true);
  expect(await form(page).locator('input[type=text]').first().inputValue()).toBe('');
  await context.close();
});

test('a job with several forms wakes the one that is reached, and it is the same page to look at', async () => {
  const { page, context } = await watchedPage(site.browser, { serviceWorkers: 'block' });
  await page.goto(`${site.serving.address}jobs/blade-shaft-bearings.html`);
  await atRest(page);
  const forms = await page.locator('section.calc').count();
  expect(forms).toBeGreaterThan(3);
  const heights = () =>
    page.evaluate(() => [...document.querySelectorAll('section.calc')].map((f) => Math.round(f.clientHeight)));
  const before = await heights();
  await page.locator('section.calc').nth(2).dispatchEvent('pointerover');
  await page.locator('section.calc').nth(2).and(page.locator('[data-live=yes]')).waitFor();
  expect(await page.locator('section.calc[data-live=rest]').count()).toBe(forms - 1);
  expect(await heights()).toEqual(before);
  await context.close();
});

test('a script that does not come is said, what was typed stands, and the next touch asks again', async () => {
  const { page, context } = await watchedPage(site.browser, { serviceWorkers: 'block' });
  await page.route(/_astro\/kit\./, (route) => route.abort());
  await page.goto(`${site.serving.address}calculators/blade-speed.html`);
  await atRest(page);
  const box = page.locator('#blade-speed-diameter');
  await box.fill('412');
  await page.locator('.calc-lost', { hasText: 'could not be loaded' }).waitFor();
  expect(await box.inputValue()).toBe('412');
  await page.unroute(/_astro\/kit\./);
  await box.press('End');
  await alive(page);
  expect(await box.inputValue()).toBe('412');
  expect(await page.locator('.calc-lost').count()).toBe(0);
  await context.close();
});
