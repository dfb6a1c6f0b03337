/** A plucked belt, played to the browser's microphone, ends up as a figure in the box; and what is said where there is no microphone. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { serveFolder, type Serving } from '../../src/commands/support/serve.ts';
import { launch, wakeCalculator, watchedPage } from './support/browser.ts';
import { dist } from './support/site.ts';
import { hearing, waveFile } from './support/wave-file.ts';

const note = 87;
const rate = 48000;

/** Plucks, one every 1.5 s: fundamental and two overtones, dying away. */
function plucks(): number[] {
  return Array.from({ length: rate * 6 }, (_, i) => {
    const t = (i % (rate * 1.5)) / rate;
    const wave =
      Math.sin(2 * Math.PI * note * t) +
      0.5 * Math.sin(4 * Math.PI * note * t) +
      0.2 * Math.sin(6 * Math.PI * note * t);
    return 0.37 * wave * Math.exp(-t / 0.35);
  });
}

const folder = mkdtempSync(join(tmpdir(), 'almanac-pluck-'));
let [browser, serving]: [Browser | undefined, Serving | undefined] = [undefined, undefined];
beforeAll(async () => {
  const file = join(folder, 'pluck.wav');
  writeFileSync(file, waveFile(plucks(), rate));
  browser = await launch(hearing(file));
  serving = await serveFolder(dist);
});
afterAll(async () => {
  await browser?.close();
  await serving?.close();
  rmSync(folder, { recursive: true, force: true });
});

async function open(prepare?: (page: Page) => Promise<unknown>) {
  if (!browser || !serving) throw new Error('The browser did not start.');
  const watched = await watchedPage(browser);
  await prepare?.(watched.page);
  await watched.page.goto(`${serving.address}calculators/belt-tension.html`);
  await wakeCalculator(watched.page);
  const reading = watched.page.locator('#belt-tension-reading');
  const fold = watched.page.locator('details:has(#belt-tension-reading):not([open]) > summary');
  if ((await fold.count()) > 0) await fold.click();
  await reading.selectOption({ label: 'Note of the plucked span' });
  return { ...watched, listen: watched.page.getByRole('button', { name: 'Listen to the belt' }) };
}

test('the note is heard, offered and put in the box, and the microphone is shut afterwards', async () => {
  const { page, context, troubles, listen } = await open(async (p) => {
    await p.addInitScript(() => {
      const real = navigator.mediaDevices.getUserMedia.bind(navigator.mediaDevices);
      navigator.mediaDevices.getUserMedia = async (wanted) =>
        Object.assign(window, { opened: await real(wanted) }).opened;
    });
  });
  await listen.click();
  const use = page.getByRole('button', { name: /^Use [\d.]+ Hz$/ });
  await use.waitFor();
  expect(Math.abs(Number(/[\d.]+/.exec(await use.innerText())?.[0]) - note)).toBeLessThan(0.6);
  await use.click();
  expect(Math.abs(Number(await page.locator('#belt-tension-frequency').inputValue()) - note)).toBeLessThan(0.6);
  await expect.poll(() => page.locator('[data-value=measured]').innerText()).toMatch(/\d/);
  await page.getByRole('button', { name: 'Stop listening' }).click();
  expect(
    await page.evaluate(() =>
      (window as unknown as { opened: MediaStream }).opened.getTracks().map((t) => t.readyState),
    ),
  ).toEqual(['ended']);
  expect(troubles).toEqual([]);
  await context.close();
});

test('nothing is asked of the microphone before the button is pressed', async () => {
  const { page, context } = await open(async (p) => {
    await p.addInitScript(() => {
      Object.assign(window, { asked: 0 });
      navigator.mediaDevices.getUserMedia = () => {
        (window as unknown as { asked: number }).asked += 1;
        return Promise.reject(new DOMException('no', 'NotAllowedError'));
      };
    });
  });
  expect(await page.evaluate(() => (window as unknown as { asked: number }).asked)).toBe(0);
  await page.getByRole('button', { name: 'Listen to the belt' }).click();
  await page.getByText('The microphone was not allowed.').waitFor();
  // The typed way still works.
  await page.locator('#belt-tension-frequency').fill('95');
  await expect.poll(() => page.locator('[data-value=measured]').innerText()).toMatch(/\d/);
  await context.close();
});

test('where a page may not have a microphone it says so plainly', async () => {
  const { page, context, listen } = await open((p) =>
    p.addInitScript(() => Object.defineProperty(navigator, 'mediaDevices', { value: undefined })),
  );
  await listen.click();
  await page.getByText('gives no microphone to this page').waitFor();
  await context.close();
});
