/** axe on pages, at one width and in one set of colors, nothing wider than the screen, nothing in the console. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import type { Page } from 'playwright-core';
import { serveFolder } from '../../../src/commands/support/serve.ts';
import { launch, watchedPage } from './browser.ts';
import { everyLook } from './every-look.ts';
import { dist } from './site.ts';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];
/** What hangs on colors and sizes; by far the slowest to judge. */
const looks = ['color-contrast', 'link-in-text-block', 'target-size'];
const looksAlone = { runOnly: { type: 'rule', values: looks } };
const allElse = {
  runOnly: { type: 'tag', values: tags },
  rules: Object.fromEntries(looks.map((rule) => [rule, { enabled: false }])),
};

declare const window: { axe: { run: (where: Document, options: unknown) => Promise<AxeResults> } };

export interface Barrier {
  readonly what: string;
  readonly count: number;
  /** One mark in a shared part fails on every page: three places are enough to find it. */
  readonly first: readonly string[];
}

export async function findBarriers(
  viewport: { width: number; height: number },
  colorScheme: 'light' | 'dark',
  looked: readonly string[],
): Promise<{ barriers: Barrier[]; troubles: readonly string[] }> {
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
  for (const file of looked) {
    await page.goto(serving.address + file, { waitUntil: 'load' });
    await wakeAll(page);
    await page.evaluate(axe);
    for (const rules of everyLook.includes(file) ? [allElse, looksAlone] : [allElse])
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
