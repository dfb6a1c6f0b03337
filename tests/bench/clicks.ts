/**
 * How long an answer to a check waits in every search for a fault until it is painted as given, and until the plan made
 * with it stands, on a processor slowed four times. It is the first answer of a search, which leaves the most to plan;
 * each is given to a search begun anew.
 */
import { existsSync } from 'node:fs';
import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { chromium, type Page } from 'playwright-core';
import { chromiumHelp, findChromium } from '../../src/commands/support/chromium.ts';
import { serveFolder } from '../../src/commands/support/serve.ts';
import { asRoot } from '../e2e/support/browser-options.ts';

const slowed = 4;
/** Clicks, after one that warms up. */
const clicks = 11;
/** After a plan stands, all that follows it is over by then [ms]. */
const rest = 500;

interface Clicked {
  /** From the click to the paint, as the browser reports it in steps of 8 ms. */
  paint: number;
  /** From the click until the plan stands in the page [ms]. */
  plan: number;
}

export async function benchClicks(dist: string, only: readonly string[]): Promise<void> {
  if (!existsSync(join(dist, 'sw.js'))) return console.log('Clicks: there is no dist yet; run npm run build first.');
  const executablePath = findChromium();
  if (!executablePath) return console.log(`Clicks: ${chromiumHelp()}`);
  const browser = await chromium.launch({ executablePath, args: asRoot() });
  const serving = await serveFolder(dist);
  const files = (await readdir(join(dist, 'faults'))).filter((f) => f.endsWith('.html') && f !== 'index.html').sort();
  const asked = files.filter((f) => only.length === 0 || only.some((name) => f.includes(name)));
  console.log(`Click to paint, processor slowed ${slowed} times [ms]: median (longest); until the plan stands`);
  for (const file of asked) {
    const context = await browser.newContext({ viewport: { width: 1366, height: 768 }, serviceWorkers: 'block' });
    const page = await context.newPage();
    page.setDefaultTimeout(20_000);
    await page.goto(`${serving.address}faults/${file}`);
    await page.locator('.fault[data-live=yes]').waitFor();
    const all = await onePage(page);
    await context.close();
    const of = (key: keyof Clicked) => all.map((c) => c[key]).sort((a, b) => a - b);
    const said = (list: readonly number[]) => `${middle(list)} (${Math.round(list.at(-1) ?? 0)})`;
    console.log(`${file.replace('.html', '').padEnd(28)}${said(of('paint')).padEnd(14)}${said(of('plan'))}`);
  }
  await browser.close();
  await serving.close();
}

const middle = (sorted: readonly number[]) => Math.round(sorted[Math.floor(sorted.length / 2)] ?? 0);

async function onePage(page: Page): Promise<readonly Clicked[]> {
  const session = await page.context().newCDPSession(page);
  const all: Clicked[] = [];
  for (let n = 0; n <= clicks; n += 1) {
    if (n > 0) await page.locator('.fault-acts button').nth(1).click();
    await page.locator('.fault:not([data-stale=yes])').waitFor();
    // "Shows the fault" and "Looks sound" by turns.
    const button = page.locator('.fault-now > .fault-answers > button').nth(n % 2);
    await page.evaluate(watchClick);
    await session.send('Emulation.setCPUThrottlingRate', { rate: slowed });
    await button.click();
    await page.waitForFunction(() => (window as unknown as Watched).clicked.plan > 0);
    await page.waitForTimeout(rest);
    await session.send('Emulation.setCPUThrottlingRate', { rate: 1 });
    if (n > 0) all.push(await page.evaluate(() => (window as unknown as Watched).clicked));
  }
  return all;
}

interface Watched {
  clicked: Clicked;
}

/** In the page: the longest of the events a click sets off, and when the plan of its answer stands. */
function watchClick(): void {
  const clicked: Clicked = { paint: 8, plan: 0 };
  (window as unknown as Watched).clicked = clicked;
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries())
      if (/^(pointer|mouse|click)/.test(entry.name)) clicked.paint = Math.max(clicked.paint, entry.duration);
  }).observe({ type: 'event', durationThreshold: 16 } as PerformanceObserverInit);
  addEventListener(
    'click',
    ({ timeStamp }) => {
      const search = document.querySelector<HTMLElement>('.fault');
      if (!search) return;
      const stands = () => {
        if (search.dataset['stale'] !== 'yes' && clicked.plan === 0) clicked.plan = performance.now() - timeStamp;
      };
      // After the page's own part of the click, and then with every change of it.
      setTimeout(stands);
      new MutationObserver(stands).observe(search, { attributes: true });
    },
    { capture: true, once: true },
  );
}
