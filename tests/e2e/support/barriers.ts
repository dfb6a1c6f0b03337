/** axe on every page, at one width and in one set of colors, nothing wider than the screen, nothing in the console. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import type { Page } from 'playwright-core';
import { serveFolder } from '../../../src/commands/support/serve.ts';
import { launch, watchedPage } from './browser.ts';
import { dist, pages } from './site.ts';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
export const everything = {
  runOnly: { type: 'tag', values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] },
};

declare const window: { axe: { run: (where: Document, options: unknown) => Promise<AxeResults> } };

/** What other colors and another width can break; the rest hangs on the markup, which is the same. */
export const looks = { runOnly: { type: 'rule', values: ['color-contrast', 'link-in-text-block', 'target-size'] } };

export interface Barrier {
  readonly what: string;
  readonly count: number;
  /** One mark in a shared part fails on every page: three places are enough to find it. */
  readonly first: readonly string[];
}

export async function findBarriers(
  viewport: { width: number; height: number },
  colorScheme: 'light' | 'dark',
  rules: object,
): Promise<{ barriers: Barrier[]; looked: number; troubles: readonly string[] }> {
  const browser = await launch();
  const serving = await serveFolder(dist);
  // The rules are put into the page from outside, which the site's own policy would refuse.
  const { page, troubles } = await watchedPage(browser, {
    viewport,
    colorScheme,
    bypassCSP: true,
    reducedMotion: 'reduce',
  });
  const found = new Map<string, string[]>();
  const note = (what: string, where: string) => found.set(what, [...(found.get(what) ?? []), where]);
  for (const file of pages) {
    await page.goto(serving.address + file, { waitUntil: 'load' });
    await wakeAll(page);
    await page.evaluate(axe);
    await judge(page, rules, (what, where) => note(what, `${file} at ${where}`));
    const tooWide = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    if (tooWide > 0) note('wider than the screen', `${file} by ${tooWide} px`);
  }
  await browser.close();
  await serving.close();
  return {
    barriers: [...found].map(([what, places]) => ({ what, count: places.length, first: places.slice(0, 3) })),
    looked: pages.length,
    troubles,
  };
}

/** Calculators start when they are reached; the page is judged alive. */
async function wakeAll(page: Page): Promise<void> {
  for (const form of await page.locator('section.calc').all()) await form.dispatchEvent('pointerover');
  await page.waitForFunction(() => !document.querySelector('astro-island[ssr]'));
}

async function judge(page: Page, rules: object, note: (what: string, where: string) => void): Promise<void> {
  const { violations } = await page.evaluate((asked) => window.axe.run(document, asked), {
    ...rules,
    resultTypes: ['violations'],
  });
  for (const v of violations)
    for (const node of v.nodes)
      note(
        `${v.id}: ${v.help}`,
        `${node.target.join(' ')}: ${node.failureSummary?.split('\n').slice(1, 3).join(' ').trim()}`,
      );
}
