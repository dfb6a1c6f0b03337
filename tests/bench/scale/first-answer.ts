/** How long the search of a built site takes to its first answer, nothing of it loaded before. */
import { chromium } from 'playwright-core';
import { findChromium } from '../../../src/commands/support/chromium.ts';
import { serveFolder } from '../../../src/commands/support/serve.ts';
import { asRoot } from '../../e2e/support/browser-options.ts';

/** Seconds from the word in the box to the first hit on the screen; undefined without a Chromium. */
export async function firstAnswer(dist: string, word: string): Promise<number | undefined> {
  const executablePath = findChromium();
  if (executablePath === undefined) return undefined;
  const serving = await serveFolder(dist);
  const browser = await chromium.launch({ executablePath, args: asRoot() });
  try {
    const context = await browser.newContext({ serviceWorkers: 'block' });
    const page = await context.newPage();
    await page.goto(`${serving.address}search.html`);
    const box = page.locator('main input[type=search]:enabled');
    await box.waitFor();
    const start = performance.now();
    await box.fill(word);
    await page.locator('.find-results a').first().waitFor({ timeout: 120_000 });
    return (performance.now() - start) / 1000;
  } finally {
    await browser.close();
    await serving.close();
  }
}
