/**
 * How long a key press takes in every calculator until what it changed is painted, on a processor slowed four times;
 * beside it the floor, the same key in a page that holds one box and nothing else.
 *
 * Two kinds of press apart: one after which the form still has an answer, and one that is refused. Two figures of
 * each: from the key to the paint, as the browser reports it (in steps of 8 ms, and of the whole machine: other work
 * on it counts), and the time the page's thread worked for that press, with what follows a moment later.
 */
import { existsSync } from 'node:fs';
import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { chromium, type CDPSession, type Page } from 'playwright-core';
import { chromiumHelp, findChromium } from '../../src/commands/support/chromium.ts';
import { serveFolder } from '../../src/commands/support/serve.ts';
import { asRoot } from '../e2e/support/browser-options.ts';

const slowed = 4;
/** Presses of each kind. */
const presses = 12;
/** Between two keys [ms]: all that follows a press is over by then. */
const gap = 700;
const boxAlone = '<!doctype html><title>floor</title><input type="text" value="350">';

interface Press {
  /** From the key to the paint [ms]. */
  readonly paint: number;
  /** Work of the page's thread [ms]. */
  readonly work: number;
}

/** Medians, and the ninth of ten to the paint. */
interface Figures {
  readonly paint: number;
  readonly late: number;
  readonly work: number;
}

export async function benchKeys(dist: string, only: readonly string[]): Promise<void> {
  if (!existsSync(join(dist, 'sw.js')))
    return console.log('Key presses: there is no dist yet; run npm run build first.');
  const executablePath = findChromium();
  if (!executablePath) return console.log(`Key presses: ${chromiumHelp()}`);
  const browser = await chromium.launch({ executablePath, args: asRoot() });
  const serving = await serveFolder(dist);
  const files = (await readdir(join(dist, 'calculators'))).filter((f) => f.endsWith('.html')).sort();
  const asked = files.filter((f) => only.length === 0 || only.some((name) => f.includes(name)));
  console.log(`Key to paint, processor slowed ${slowed} times [ms]: median (9th of 10), work of the page's thread`);
  console.log(`${''.padEnd(22)}${'answer stays'.padEnd(24)}refused`);
  const middles: { readonly lawful: number; readonly refused: number }[] = [];
  for (const file of ['floor', ...asked]) {
    const context = await browser.newContext({ viewport: { width: 1366, height: 768 }, serviceWorkers: 'block' });
    const page = await context.newPage();
    page.setDefaultTimeout(300_000);
    await page.addInitScript(watchEvents);
    if (file === 'floor') await page.setContent(boxAlone);
    else await page.goto(`${serving.address}calculators/${file}`);
    if (file === 'floor') await page.evaluate(watchEvents);
    const measured = await onePage(page);
    await context.close();
    if (!measured) {
      console.log(`${file.replace('.html', '').padEnd(22)}has no open box for a figure`);
      continue;
    }
    const { lawful, refused } = measured;
    console.log(`${file.replace('.html', '').padEnd(22)}${said(lawful).padEnd(24)}${said(refused)}`);
    if (file !== 'floor') middles.push({ lawful: lawful.paint, refused: refused.paint });
  }
  console.log(
    `${'middle of all'.padEnd(22)}${`${middle(middles.map((m) => m.lawful))}`.padEnd(24)}${middle(middles.map((m) => m.refused))}`,
  );
  await browser.close();
  await serving.close();
}

const said = ({ paint, late, work }: Figures) => `${paint} (${late}), ${Math.round(work)}`;

async function onePage(page: Page): Promise<{ lawful: Figures; refused: Figures } | undefined> {
  const box = await openBox(page);
  if (box === undefined) return undefined;
  const session = await page.context().newCDPSession(page);
  await session.send('Performance.enable', { timeDomain: 'threadTicks' });
  await box.focus();
  await page.keyboard.press('End');
  // A figure with a decimal takes one digit more or less and stays what it is.
  if (!(await box.inputValue()).includes('.')) await page.keyboard.press('.');
  await page.keyboard.press('1');
  await page.waitForTimeout(gap);
  await session.send('Emulation.setCPUThrottlingRate', { rate: slowed });
  const lawful: Press[] = [];
  const refused: Press[] = [];
  for (let n = 0; n < presses; n += 1) {
    const first = await press(page, session, '1');
    await press(page, session, 'Backspace');
    if (n > 0) lawful.push(first);
    const second = await press(page, session, 'x');
    await press(page, session, 'Backspace');
    if (n > 0) refused.push(second);
  }
  await session.send('Emulation.setCPUThrottlingRate', { rate: 1 });
  return { lawful: figuresOf(lawful), refused: figuresOf(refused) };
}

/** The first box for a figure that stands open, alive. */
async function openBox(page: Page) {
  const box = page.locator('input[type=text]:visible').and(page.locator(':not(.strip input)')).first();
  const form = page.locator('section.calc');
  if ((await form.count()) === 0) return box;
  const calc = form.first();
  // The page may still be building what stands above: reach for the form until it is awake.
  await calc.dispatchEvent('pointerover');
  await page.locator('section.calc[data-live=yes]').first().waitFor();
  const inForm = calc.locator('input[inputmode=decimal]:visible').first();
  if ((await inForm.count()) > 0) return inForm;
  // A form of choices keeps its figures folded: the first of them is opened, as a hand would.
  for (const folded of await calc.locator('details.calc-more').all()) {
    await folded.locator('summary').click();
    if ((await inForm.count()) > 0) return inForm;
  }
  return undefined;
}

async function press(page: Page, session: CDPSession, key: string): Promise<Press> {
  await page.evaluate(() => {
    (window as unknown as Watched).longest = 8;
  });
  const before = await workOf(session);
  await page.keyboard.press(key);
  await page.waitForTimeout(gap);
  const work = (await workOf(session)) - before;
  return { paint: await page.evaluate(() => (window as unknown as Watched).longest), work };
}

async function workOf(session: CDPSession): Promise<number> {
  const { metrics } = await session.send('Performance.getMetrics');
  return (metrics.find((m) => m.name === 'TaskDuration')?.value ?? 0) * 1000;
}

interface Watched {
  longest: number;
}

/** In the page: the longest of the events one key sets off. */
function watchEvents(): void {
  const at = window as unknown as Watched;
  at.longest = 8;
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries())
      if (/^(key|input|beforeinput)/.test(entry.name)) at.longest = Math.max(at.longest, entry.duration);
  }).observe({ type: 'event', durationThreshold: 16 } as PerformanceObserverInit);
}

function figuresOf(all: readonly Press[]): Figures {
  const paints = all.map((p) => p.paint);
  return {
    paint: middle(paints),
    late: sorted(paints)[Math.floor(paints.length * 0.9)] ?? 0,
    work: middle(all.map((p) => p.work)),
  };
}

const sorted = (all: readonly number[]) => [...all].sort((a, b) => a - b);
const middle = (all: readonly number[]) => sorted(all)[Math.floor(all.length / 2)] ?? 0;
