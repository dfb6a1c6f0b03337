/**
 * A new user with a phone, from the start page to the answer: how often the thumb taps, and how often it pushes the page
 * up. DEVELOPERS.md says what it took before there were pages for customers.
 */
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launch, watchedPage } from './support/browser.ts';
import { dist } from './support/site.ts';

const screen = { width: 390, height: 844 };
/** A push of the thumb moves a page about so far. */
const push = 600;

interface Job {
  readonly wants: string;
  readonly from?: 'es.html';
  /** What is tapped, one after the other: a link's address without the ending of its file. */
  readonly taps: readonly string[];
  /** The answer: the first text in the page that matches. */
  readonly answer: string | RegExp;
  readonly pushes: number;
}

const jobs: readonly Job[] = [
  {
    wants: 'what to look at before a cut',
    taps: ['guides/before-you-start-a-cut-off-saw'],
    answer: /Boots, gloves/,
    pushes: 0,
  },
  { wants: 'it will not start', taps: ['trouble/will-not-start'], answer: 'Look at these', pushes: 0 },
  { wants: 'the switch does not stop it', taps: ['trouble/engine-will-not-stop'], answer: /choke/i, pushes: 0 },
  {
    wants: 'the blade does not come to rest',
    taps: ['trouble/blade-will-not-stop'],
    answer: 'Look at these',
    pushes: 0,
  },
  { wants: 'which mask', taps: ['guides/keeping-dust-down'], answer: /half mask with P95/, pushes: 2 },
  { wants: 'no tap on site', taps: ['guides/cutting-wet'], answer: 'No tap on site?', pushes: 3 },
  { wants: 'oil to a gallon', taps: ['guides/fuel-and-fumes'], answer: /^"50:1" is|^“50:1” is/, pushes: 1 },
  { wants: 'clean it and give it back', taps: ['guides/after-the-cut'], answer: '2. Rinse', pushes: 2 },
  { wants: 'a blade for asphalt', taps: ['guides/blade-for-the-material'], answer: 'asphalt', pushes: 2 },
  { wants: 'is it worth fixing', taps: ['guides/worth-fixing'], answer: /Our quote/, pushes: 3 },
  { wants: 'a floor saw', taps: ['guides/before-you-start-a-floor-saw'], answer: /Boots/, pushes: 1 },
  { wants: 'when the shop opens', taps: ['shop'], answer: /^Monday/, pushes: 3 },
  { wants: 'to call', taps: [], answer: /^Call/, pushes: 0 },
  { wants: 'the belt squeals', taps: ['trouble', 'trouble/belt-squeals'], answer: 'Look at these', pushes: 2 },
  { wants: 'it smokes', taps: ['trouble', 'trouble/smokes'], answer: 'Look at these', pushes: 3 },
  { wants: 'it leaks fuel', taps: ['trouble', 'trouble/fuel-leaks'], answer: 'Look at these', pushes: 2 },
  { wants: 'the cord is stuck', taps: ['trouble', 'trouble/cord'], answer: 'Look at these', pushes: 3 },
  { wants: 'it shakes', taps: ['trouble', 'trouble/shakes'], answer: 'Look at these', pushes: 2 },
  { wants: 'it loses power in the cut', taps: ['trouble', 'trouble/loses-power'], answer: 'Look at these', pushes: 2 },
  { wants: 'it overheats', taps: ['trouble', 'trouble/overheats'], answer: 'Look at these', pushes: 2 },
  { wants: 'it starts, then dies', taps: ['trouble', 'trouble/starts-then-dies'], answer: 'Look at these', pushes: 2 },
  { wants: 'no water at the blade', taps: ['trouble', 'trouble/no-water'], answer: 'Look at these', pushes: 2 },
  { wants: 'may it run in the garage', taps: ['guides/fuel-and-fumes'], answer: /garage/, pushes: 0 },
  {
    wants: 'the blade is stuck in the cut',
    taps: ['trouble', 'guides/kickback-and-pinch#the-blade-is-stuck'],
    answer: 'The blade is stuck',
    pushes: 3,
  },
  {
    wants: 'somebody is hurt',
    taps: ['trouble', 'guides/cuts-that-hurt#if-somebody-is-hurt'],
    answer: /press hard/,
    pushes: 1,
  },
  {
    wants: 'a blade for steel bars in the slab',
    taps: ['guides/choosing-and-fitting-a-blade'],
    answer: /Steel bars/,
    pushes: 2,
  },
  { wants: 'a cracked blade', taps: ['guides/choosing-and-fitting-a-blade'], answer: /Crack at a slot/, pushes: 2 },
  { wants: 'how long without earplugs', taps: ['guides/ears-hands-eyes'], answer: '2 h 31 min', pushes: 2 },
  { wants: 'put away for the winter', taps: ['guides/storage'], answer: /^Before it stands for more/, pushes: 3 },
  { wants: 'wet concrete on the skin', taps: ['guides/cutting-wet'], answer: /burns skin/, pushes: 4 },
  {
    wants: 'a cable in the wall',
    taps: ['guides/before-you-start-a-cut-off-saw'],
    answer: /Cables and pipes/,
    pushes: 0,
  },
  { wants: 'no arranca', from: 'es.html', taps: ['es/trouble/will-not-start'], answer: 'Mire esto', pushes: 0 },
  { wants: 'qué mascarilla', from: 'es.html', taps: ['es/guides/keeping-dust-down'], answer: /media cara/, pushes: 2 },
];

let browser: Browser;
let page: Page;
beforeAll(async () => {
  browser = await launch();
  ({ page } = await watchedPage(browser, { viewport: screen, hasTouch: true, serviceWorkers: 'block' }));
});
afterAll(async () => {
  await browser.close();
});

const at = (file: string) => pathToFileURL(join(dist, file)).href;

/** How often the thumb pushes, from where the page stands, until the middle of the thing is on the screen. */
async function pushesTo(thing: Locator): Promise<number> {
  const middle = await thing.evaluate((e) => {
    const { top, height } = e.getBoundingClientRect();
    return top + Math.min(height, 44) / 2;
  });
  return Math.max(0, Math.ceil((middle - screen.height) / push));
}

test.each(jobs.map((job) => [job.wants, job] as const))('%s', async (_, { from, taps, answer, pushes }) => {
  await page.goto(at(from ?? 'index.html'));
  let pushed = 0;
  for (const tap of taps) {
    const address = tap.includes('#') ? tap.replace('#', '.html#') : `${tap}.html`;
    const link = page.locator(`main a[href="${address}"]:visible, footer a[href="${address}"]:visible`).first();
    pushed += await pushesTo(link);
    await link.tap();
    await page.waitForURL((url) => url.href.endsWith(`/${address}`));
  }
  const found = page.locator('main').getByText(answer).filter({ visible: true }).first();
  await found.waitFor();
  expect(pushed + (await pushesTo(found))).toBeLessThanOrEqual(pushes);
});
