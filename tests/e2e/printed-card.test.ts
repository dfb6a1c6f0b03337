/** A bench card is one side of the paper, and the square code on it opens the page with the figures of the card. */
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { sheetsIn } from './support/bench.ts';
import { wakeCalculator, watchedPage, type WatchedPage } from './support/browser.ts';
import { pixelsOf } from './support/square-code.ts';
import { openedSite } from './support/opened-site.ts';

type Decode = (pixels: Uint8ClampedArray, width: number, height: number) => { data: string } | null;
const jsqr = createRequire(import.meta.url)('jsqr') as Decode | { default: Decode };
const decode = typeof jsqr === 'function' ? jsqr : jsqr.default;

const site = openedSite();
let watched: WatchedPage;
let page: Page;
beforeAll(async () => {
  watched = await watchedPage(site.browser);
  page = watched.page;
  // The browser's own window for printing would stand in the way.
  await page.addInitScript(() => {
    window.print = () => undefined;
  });
});
afterAll(async () => {
  await watched.context.close();
});

async function open(name: string): Promise<void> {
  await page.goto(`${site.serving.address}calculators/${name}.html`);
  await wakeCalculator(page);
}

async function pressPrint(): Promise<void> {
  await page.locator('.calc-acts').getByRole('button', { name: 'Print', exact: true }).click();
  await page.locator('html[data-bench-card]').waitFor();
}

/** Sides of Letter, the shorter of the two papers. */
async function sides(): Promise<number> {
  return sheetsIn(await page.pdf({ format: 'Letter', preferCSSPageSize: true }));
}

// The longest.
test.each(['bearing-fit', 'repair-worth', 'water-supply', 'noise-dose'])(
  '%s: its page, and its card, fill one side of Letter',
  async (name) => {
    await open(name);
    expect(await sides()).toBe(1);
    await pressPrint();
    expect(await sides()).toBe(1);
  },
);

test('the code on a card, read by an independent decoder, opens the page with the figures of the card', async () => {
  await open('blade-speed');
  await page.fill('#blade-speed-diameter', '16 in');
  await page.fill('#blade-speed-engine', '9100');
  await pressPrint();
  const svg = await page.locator('#blade-speed-code').evaluate((at) => at.outerHTML);
  const { pixels, width } = pixelsOf(svg);
  const read = decode(pixels, width, width)?.data ?? '';
  expect(read).toMatch(/^https:\/\/almanac\.example\/calculators\/blade-speed\.html\?/);
  await page.goto(site.serving.address + read.replace('https://almanac.example/', ''));
  await wakeCalculator(page);
  expect(await page.inputValue('#blade-speed-diameter')).toBe('16 in');
  expect(await page.inputValue('#blade-speed-engine')).toMatch(/^9100/);
});
