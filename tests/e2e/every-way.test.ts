/**
 * The same folder in a subfolder of a server, and opened from disk. Any console message or failed request fails.
 * Every page is opened from the top of a server by the tests of barriers, which watch for the same; here one of each
 * kind and every calculator.
 */
import { pathToFileURL } from 'node:url';
import { join } from 'node:path';
import type { Locator } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { wakeCalculator, watchedPage } from './support/browser.ts';
import { calculators, dist, oneOfEach } from './support/site.ts';
import { openedSite } from './support/opened-site.ts';

const site = openedSite({ base: '/sub/kb/' });

const ways = [
  { way: 'from a subfolder of a server', address: (file: string) => site.serving.address + file },
  { way: 'from disk', address: (file: string) => new URL(file, pathToFileURL(join(dist, '/'))).href },
];

/** The first figure made a tenth larger; a calculator that asks only for choices gets another choice. */
async function changeOneFigure(calculator: Locator): Promise<void> {
  const box = calculator.locator('.calc-box input[inputmode=decimal]:visible').first();
  if ((await box.count()) > 0) return box.fill(String(Number((await box.inputValue()).replace(',', '.')) * 1.1));
  // A form of choices alone: another one of its first list.
  const list = calculator.locator('.calc-fields select:visible').first();
  const other = await list.evaluate(
    (e: HTMLSelectElement) => [...e.options].find((o) => !o.selected && o.value !== '')?.value,
  );
  await list.selectOption(other ?? '');
}

describe.each(ways)('$way', ({ address }) => {
  test('a page of each kind opens without a message or a failed request', async () => {
    const { page, context, troubles } = await watchedPage(site.browser);
    const bad: string[] = [];
    for (const file of oneOfEach) {
      await page.goto(address(file), { waitUntil: 'load' });
      bad.push(...troubles.splice(0).map((t) => `${file}: ${t}`));
    }
    expect(bad).toEqual([]);
    await context.close();
  });

  test('every calculator comes alive and answers another figure', async () => {
    expect(calculators.length).toBeGreaterThan(0);
    const { page, context, troubles } = await watchedPage(site.browser);
    for (const file of calculators) {
      await page.goto(address(file));
      const calculator = await wakeCalculator(page);
      const answer = await calculator.locator('.calc-answer').elementHandle();
      const before = await answer?.innerText();
      await changeOneFigure(calculator);
      await page.waitForFunction(([element, text]) => (element as HTMLElement).innerText !== text, [
        answer,
        before,
      ] as const);
    }
    expect(troubles).toEqual([]);
    await context.close();
  });

  test('a sum typed into a box is worked out by the part that is loaded for it', async () => {
    const { page, context, troubles } = await watchedPage(site.browser);
    await page.goto(address('calculators/blade-speed.html'));
    await wakeCalculator(page);
    await page.fill('#blade-speed-diameter', '300 mm + 50 mm + 2 in');
    // 350 mm + 2 x 25.4 mm
    await page.getByText('Read as 400.8 mm').waitFor();
    expect(troubles).toEqual([]);
    await context.close();
  });

  test('search finds a rare word and leads to its page', async () => {
    const { page, context, troubles } = await watchedPage(site.browser);
    await page.goto(address('search.html'));
    await page.fill('input[type=search]:enabled', 'toothpick');
    await page.locator('.find-results a').filter({ hasText: 'After the cut' }).click();
    await page.getByRole('heading', { level: 1, name: 'After the cut' }).waitFor();
    expect(troubles).toEqual([]);
    await context.close();
  });

  test('a search can be kept in the address, and Spanish pages search Spanish pages', async () => {
    const { page, context, troubles } = await watchedPage(site.browser);
    await page.goto(address('es/search.html?q=polvo'));
    await page.locator('.find-results a').first().waitFor();
    const found = await page
      .locator('.find-results a')
      .evaluateAll((links) => links.map((l) => (l as HTMLAnchorElement).href));
    expect(found.filter((href) => !/\/es\/|\/es\.html/.test(href))).toEqual([]);
    expect(troubles).toEqual([]);
    await context.close();
  });
});
