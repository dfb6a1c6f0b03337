/** An engine's note, played to the browser's microphone, ends up as a speed in the box; what listens is fetched only then. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { serveFolder, type Serving } from '../../src/commands/support/serve.ts';
import { exhaustNote } from '../core/sound/exhaust.ts';
import { launch, wakeCalculator, watchedPage } from './support/browser.ts';
import { dist } from './support/site.ts';
import { hearing, waveFile } from './support/wave-file.ts';

const rate = 48000;
/** Whole turns in the file, so that its end fits its beginning when it is played again: 4 s at 45 turns a second. */
const rpm = 2700;
const folder = mkdtempSync(join(tmpdir(), 'almanac-engine-'));
let [browser, serving]: [Browser | undefined, Serving | undefined] = [undefined, undefined];
beforeAll(async () => {
  const file = join(folder, 'engine.wav');
  writeFileSync(file, waveFile(exhaustNote({ engine: { strokes: 2, cylinders: 1 }, rpm }, rate, 4), rate));
  browser = await launch(hearing(file));
  serving = await serveFolder(dist);
});
afterAll(async () => {
  await browser?.close();
  await serving?.close();
  rmSync(folder, { recursive: true, force: true });
});

test('idle is heard, offered and put in the box, with care said first and the microphone shut afterwards', async () => {
  if (!browser || !serving) throw new Error('The browser did not start.');
  const { page, context, troubles } = await watchedPage(browser);
  const scripts: string[] = [];
  page.on('request', (r) => {
    if (r.resourceType() === 'script') scripts.push(r.url());
  });
  await page.addInitScript(() => {
    const real = navigator.mediaDevices.getUserMedia.bind(navigator.mediaDevices);
    navigator.mediaDevices.getUserMedia = async (wanted) =>
      Object.assign(window, { opened: await real(wanted) }).opened;
  });
  await page.goto(`${serving.address}calculators/clutch-speed.html`);
  await wakeCalculator(page);
  const before = scripts.length;
  const ear = page.locator('#clutch-speed-idle-listen');
  await ear.getByRole('button', { name: 'Hear it with the microphone' }).click();
  await ear.getByText('Ears protected, outdoors, blade off.').waitFor();
  expect(scripts.slice(before).filter((s) => s.includes('HearEngine'))).toHaveLength(1);
  // Care is read before the microphone opens.
  expect(await page.evaluate(() => 'opened' in window)).toBe(false);
  await ear.getByRole('button', { name: 'Start listening' }).click();
  const use = ear.getByRole('button', { name: /^Use \d+ rpm$/ });
  await use.waitFor();
  await use.click();
  const typed = Number(await page.locator('#clutch-speed-idle').inputValue());
  expect(Math.abs(typed / rpm - 1)).toBeLessThan(0.01);
  expect(await ear.getByRole('status').innerText()).toMatch(/give or take \d+/);
  await ear.getByRole('button', { name: 'Stop listening' }).click();
  expect(
    await page.evaluate(() =>
      (window as unknown as { opened: MediaStream }).opened.getTracks().map((t) => t.readyState),
    ),
  ).toEqual(['ended']);
  expect(troubles).toEqual([]);
  await context.close();
});
