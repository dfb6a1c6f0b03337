/** At the bench: what the page says about a reader's saw rests on the reader's figures, and none of them is lost. */
import type { Page } from 'playwright-core';
import { beforeEach, describe, expect, test } from 'vitest';
import { wakeCalculator, watchedPage, type WatchedPage } from './support/browser.ts';
import { openedSite } from './support/opened-site.ts';

const site = openedSite();
let watched: WatchedPage;
let page: Page;
beforeEach(async () => {
  await watched?.context.close();
  watched = await watchedPage(site.browser, { viewport: { width: 1366, height: 768 } });
  page = watched.page;
});

async function open(name: string, on: Page = page, query = ''): Promise<void> {
  await on.goto(`${site.serving.address}calculators/${name}.html${query}`);
  await wakeCalculator(on);
}
const box = (name: string, key: string, on: Page = page) => on.locator(`#${name}-${key}`);
const verdicts = (name: string) => page.locator(`#${name}-calculator .calc-verdict[data-level]`);
const still = (name: string) => page.locator(`#${name}-answer .calc-still`);

describe('a verdict needs the figures it hangs on', () => {
  test('blade speed: 16 in alone says nothing about the mark', async () => {
    await open('blade-speed');
    await box('blade-speed', 'diameter').fill('16 in');
    await still('blade-speed').getByText('Highest speed marked on the blade').waitFor();
    expect(await verdicts('blade-speed').count()).toBe(0);
  });

  test('bolt torque: an M8 typed alone is no left-hand thread', async () => {
    await open('bolt-torque');
    await box('bolt-torque', 'size').selectOption('M10');
    expect(await page.locator('#bolt-torque-answer').innerText()).not.toMatch(/left-hand|counter-clockwise/i);
  });

  test('compression: neither pull nor oil is judged when neither was tried', async () => {
    await open('compression-check');
    await box('compression-check', 'reading').fill('8.9 bar');
    await box('compression-check', 'height').fill('1600 m');
    expect(await box('compression-check', 'first').inputValue()).toBe('');
    expect(await page.locator('#compression-check-calculator').innerText()).not.toMatch(/climbing slowly|With oil/);
  });

  test('blade run-down: no dial gauge, no word on how true it runs', async () => {
    await open('blade-rundown');
    await box('blade-rundown', 'diameter').fill('400 mm');
    await box('blade-rundown', 'time').fill('11 s');
    expect(await page.locator('#blade-rundown-calculator').innerText()).not.toMatch(/Runs true/);
  });

  test('belt tension: nothing plucked, nothing slack', async () => {
    await open('belt-tension');
    await box('belt-tension', 'centre').fill('410 mm');
    expect(await box('belt-tension', 'reading').inputValue()).toBe('none');
    expect(await verdicts('belt-tension').allInnerTexts()).not.toEqual(
      expect.arrayContaining([expect.stringMatching(/Slack|Too tight|Right:/)]),
    );
  });

  test('split pulley: the belt of the example is not this belt', async () => {
    await open('split-pulley');
    await box('split-pulley', 'closedDiameter').fill('110 mm');
    expect(await page.locator('#split-pulley-answer').innerText()).not.toMatch(/another belt|left over/);
  });
});

describe('boxes still empty', () => {
  test('the speed of a blade is given before its mark is read; the verdict, the drawing and the sheet wait', async () => {
    await open('blade-speed');
    await page.getByRole('button', { name: 'Use my own figures' }).click();
    const answer = page.locator('#blade-speed-answer');
    for (const [key, text] of [
      ['diameter', '350 mm'],
      ['engine', '9500'],
      ['enginePulley', '66'],
      ['bladePulley', '125'],
    ] as const)
      await box('blade-speed', key).fill(text);
    // Pi times 0.35 m times 9500 turns a minute times 66/125, in m/s.
    await answer.locator('[data-value=speed]').getByText('91.9').waitFor();
    await still('blade-speed').getByText('Highest speed marked on the blade').waitFor();
    expect(await verdicts('blade-speed').count()).toBe(0);
    expect(await page.locator('#blade-speed-calculator .calc-picture').count()).toBe(0);
    const calculator = page.locator('#blade-speed-calculator');
    expect(await calculator.getByRole('button', { name: 'Put on job sheet' }).isDisabled()).toBe(true);
    await box('blade-speed', 'markedRotation').fill('5500');
    await answer.locator('.calc-verdict[data-level]').first().waitFor();
    await box('blade-speed', 'flange').fill('102');
    await page.locator('#blade-speed-calculator .calc-picture').waitFor();
    // A box emptied to be typed anew takes nothing away.
    await box('blade-speed', 'markedRotation').fill('');
    expect(await answer.locator('[data-value=share]').count()).toBe(1);
  });
});

describe('a machine on the bench', () => {
  test('fills the boxes from its plate, marked as such, and leaves an own figure alone', async () => {
    await open('blade-speed', page, '?machine=mp-350');
    await page.waitForFunction(
      () => document.querySelector<HTMLInputElement>('#blade-speed-enginePulley')?.value === '66',
    );
    for (const key of ['diameter', 'engine', 'enginePulley', 'bladePulley', 'guardSize', 'machineRotation', 'flange'])
      expect(await page.locator(`.calc-ink-plate #blade-speed-${key}`).count(), key).toBe(1);
    expect(await page.locator('#blade-speed-diameter-whose').textContent()).toBe('MP-350 cut-off saw plate');
    // What is marked on the blade itself no plate can say.
    expect(await page.locator('.calc-ink-pencil #blade-speed-markedRotation').count()).toBe(1);
    await box('blade-speed', 'diameter').fill('300 mm');
    expect(await page.locator('#blade-speed-diameter-plate').innerText()).toBe('plate says 350 mm');
    await page.waitForTimeout(400);
    await page.reload();
    await wakeCalculator(page);
    expect(await box('blade-speed', 'diameter').inputValue()).toBe('300 mm');
    await page.getByLabel('Saw on the bench').selectOption('mp-500');
    await page.waitForFunction(
      () => document.querySelector<HTMLInputElement>('#blade-speed-enginePulley')?.value === '100',
    );
    expect(await box('blade-speed', 'diameter').inputValue()).toBe('300 mm');
    expect(await page.locator('#blade-speed-diameter-plate').innerText()).toBe('plate says 500 mm');
  });
});

describe('nothing typed is lost', () => {
  test('over a reload and the way back', async () => {
    await open('bearing-life');
    const first = page.locator('#bearing-life-calculator input[type=text]').first();
    await first.fill('1234');
    await page.waitForTimeout(400);
    await page.reload();
    await wakeCalculator(page);
    expect(await first.inputValue()).toBe('1234');
    await page.goto(`${site.serving.address}index.html`);
    await page.goBack();
    await wakeCalculator(page);
    expect(await first.inputValue()).toBe('1234');
  });

  test('by emptying: undo brings it back', async () => {
    await open('blade-speed');
    await box('blade-speed', 'diameter').fill('412');
    await page.getByRole('button', { name: 'Empty the boxes' }).click();
    expect(await box('blade-speed', 'diameter').inputValue()).toBe('');
    await page.locator('#blade-speed-calculator').getByRole('button', { name: 'Undo' }).click();
    expect(await box('blade-speed', 'diameter').inputValue()).toBe('412');
  });

  test('between two windows of one ticket', async () => {
    await open('blade-speed');
    const second = await watched.context.newPage();
    await open('blade-speed', second);
    await box('blade-speed', 'diameter').fill('412');
    await second.waitForFunction(
      () => document.querySelector<HTMLInputElement>('#blade-speed-diameter')?.value === '412',
    );
    await box('blade-speed', 'engine', second).fill('9100');
    await page.waitForFunction(() => document.querySelector<HTMLInputElement>('#blade-speed-engine')?.value === '9100');
    expect(await box('blade-speed', 'diameter').inputValue()).toBe('412');
  });

  test('a figure half typed stays while the other window keeps another', async () => {
    await open('blade-speed');
    const other = await watched.context.newPage();
    await open('blade-speed', other);
    await box('blade-speed', 'diameter', other).fill('351');
    await expect.poll(() => box('blade-speed', 'diameter').inputValue()).toBe('351');
    // Heard in the very moment between a key and the pause that keeps it.
    await box('blade-speed', 'engine').evaluate((b: HTMLInputElement) => {
      b.value = '87';
      b.dispatchEvent(new Event('input', { bubbles: true }));
      const key = 'almanac/ticket//figures/blade-speed';
      const record = (localStorage.getItem(key) ?? '').replace('"351"', '"352"');
      setTimeout(() => {
        localStorage.setItem(key, record);
        dispatchEvent(new StorageEvent('storage', { key }));
      });
    });
    await expect.poll(() => box('blade-speed', 'diameter').inputValue()).toBe('352');
    expect(await box('blade-speed', 'engine').inputValue()).toBe('87');
  });

  test('typed before its script has come, over a reload', async () => {
    await page.goto(`${site.serving.address}calculators/blade-speed.html`);
    const files = await page.locator('astro-island:has(#blade-speed-calculator)').getAttribute('component-url');
    const held = `**/${files?.split(' ').at(-1)}`;
    await page.route(held, () => undefined);
    await page.locator('section.calc[data-live=rest]').waitFor();
    await box('blade-speed', 'diameter').fill('351');
    await page.unroute(held);
    await page.reload();
    await page.locator('section.calc[data-live=yes]').first().waitFor();
    await expect.poll(() => box('blade-speed', 'diameter').inputValue()).toBe('351');
    await page.reload();
    await wakeCalculator(page);
    await expect.poll(() => box('blade-speed', 'diameter').inputValue()).toBe('351');
  });

  test('and a link says whose its figures are', async () => {
    await open('blade-speed', page, '?calc=blade-speed&f.diameter=400+mm&f.engine=9000+rpm&own=diameter');
    expect(await page.locator('.calc-ink-own #blade-speed-diameter').inputValue()).toBe('400 mm');
    expect(await page.locator('.calc-ink-pencil #blade-speed-engine').count()).toBe(1);
    expect(await verdicts('blade-speed').count()).toBe(0);
  });
});

describe('how figures are written', () => {
  test('a box written over takes the unit of the switch, one that is mended keeps its own', async () => {
    await open('blade-speed');
    const diameter = box('blade-speed', 'diameter');
    await diameter.fill('350');
    await page.locator('#blade-speed-units-inch').check();
    await diameter.click();
    await page.keyboard.press('ControlOrMeta+a');
    await page.keyboard.type('3');
    expect(await page.locator('#blade-speed-diameter + .calc-unit').innerText()).toBe('in');
  });

  test('9,500 is read, and said back', async () => {
    await open('blade-speed');
    await box('blade-speed', 'engine').fill('9,500');
    await page.locator('#blade-speed-engine-said', { hasText: '9500 rpm' }).waitFor();
  });

  test('the part for sums that does not load is said at the box, and asked for again at the next key', async () => {
    await open('blade-speed');
    let refuse = true;
    await watched.context.route(/sum\.[^/]*\.js/, (route) => (refuse ? route.abort() : route.continue()));
    await box('blade-speed', 'diameter').fill('300 mm + 50 mm');
    await box('blade-speed', 'engine').click();
    await page.locator('#blade-speed-diameter-problem', { hasText: 'did not load' }).waitFor();
    refuse = false;
    await box('blade-speed', 'diameter').fill('300 mm + 60 mm');
    await page.locator('#blade-speed-diameter-said', { hasText: '360 mm' }).waitFor();
  });
});
