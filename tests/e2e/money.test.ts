/** Quotes, cards and files made on the page: they come out from a server and from disk, and hold what the page shows. */
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { wakeCalculator, watchedPage, savedText } from './support/browser.ts';
import { dist } from './support/site.ts';
import { openedSite } from './support/opened-site.ts';

const site = openedSite();

const ways = [
  { way: 'from a server', address: (file: string) => site.serving.address + file },
  { way: 'from disk', address: (file: string) => new URL(file, pathToFileURL(join(dist, '/'))).href },
];

/** Parts and labor: 64 at a 40 % margin is 106.67, and no price, sum or year comes to 64. */
const quote = new URLSearchParams({
  calc: 'repair-worth',
  'f.quoteAs': 'lines',
  'f.labourHours': '1.8',
  'f.labourRate': '95',
  'f.taxParts': '7 %',
  'f.asIs': '120',
  'f.serviceYears': '3',
  'f.hoursPerYear': '150',
  'f.newPrice': '1300',
  'f.newLife': '6',
});
for (const [key, value] of Object.entries({
  part: 'Drive belt',
  quantity: '1',
  amount: '64',
  basis: 'margin',
  share: '40 %',
}))
  quote.set(`f.lines.1.${key}`, value);

async function saved(page: Page, button: string): Promise<{ readonly name: string; readonly text: string }> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: button }).click(),
  ]);
  return { name: download.suggestedFilename(), text: await savedText(download) };
}

/** Presses a print button with the printer unplugged: the page stays as it would go to paper. */
async function pressPrint(page: Page, button: string): Promise<void> {
  await page.evaluate(() => (window.print = () => undefined));
  await page.getByRole('button', { name: button }).click();
}

const sheets = (pdf: Buffer) => pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0;

describe.each(ways)('$way', ({ address }) => {
  test('a quote is saved as a table with the customer’s prices and none of the shop’s', async () => {
    const { page, context, troubles } = await watchedPage(site.browser);
    await page.goto(`${address('calculators/repair-worth.html')}?${quote}`);
    await wakeCalculator(page);
    await page.fill('#repair-worth-quote-sheet-customer', 'Señora Ortega');
    await page.fill('#repair-worth-quote-sheet-number', '1182');
    const { name, text } = await saved(page, 'Save it as a table (CSV)');
    expect(name).toBe('quote-1182-senora-ortega.csv');
    // The mark of UTF-8 first, then lines that end in CR LF; 1.8 h at 95 and 7 % on the part: 106.67 + 171 + 7.47 = 285.14.
    expect(text.charCodeAt(0)).toBe(0xfeff);
    const lines = text.slice(1).split('\r\n');
    expect(lines).toEqual(
      expect.arrayContaining([
        'For,Señora Ortega,,',
        'Drive belt,1,106.67,106.67',
        'Labor,1.8,,171',
        'Tax,,,7.47',
        'Total,,,285.14',
      ]),
    );
    expect(lines.at(-1)).toBe('');
    expect(lines.some((line) => line.split(',').includes('64'))).toBe(false);
    expect(troubles).toEqual([]);
    await context.close();
  });

  test('words for the quote stay while a row is added, over a reload, and with their ticket', async () => {
    const { page, context, troubles } = await watchedPage(site.browser);
    const customer = '#repair-worth-quote-sheet-customer';
    const language = '#repair-worth-quote-sheet-language';
    await page.goto(`${address('calculators/repair-worth.html')}?${quote}`);
    await wakeCalculator(page);
    await page.fill(customer, 'Señora Ortega');
    await page.selectOption(language, 'es');
    await page.locator('#repair-worth-lines > button').dispatchEvent('click');
    await page.getByRole('button', { name: 'Print the quote', disabled: true }).waitFor();
    expect(await page.inputValue(customer)).toBe('Señora Ortega');
    await page.getByRole('button', { name: 'Undo', exact: true }).first().click();
    await page.reload();
    await wakeCalculator(page);
    await expect.poll(() => page.inputValue(customer)).toBe('Señora Ortega');
    await expect.poll(() => page.inputValue(language)).toBe('es');
    for (const [ticket, name] of [
      ['1432', 'Señora Ortega'],
      ['1433', ''],
      ['1432', 'Señora Ortega'],
    ] as const) {
      await page.getByLabel('Ticket', { exact: true }).fill(ticket);
      await page.keyboard.press('Tab');
      await expect.poll(() => page.inputValue(customer)).toBe(name);
    }
    expect(troubles).toEqual([]);
    await context.close();
  });

  test('the services are saved for a calendar and as a table, and start today', async () => {
    const { page, context, troubles } = await watchedPage(site.browser);
    await page.goto(address('calculators/service-interval.html'));
    await wakeCalculator(page);
    const today = await page.evaluate(() => new Date().toLocaleDateString('sv'));
    expect(await page.inputValue('#service-interval-start')).toBe(today);
    // Services of an example would stay in a calendar that nobody made for them.
    expect(await page.getByRole('button', { name: 'Save for a calendar (ICS)' }).isDisabled()).toBe(true);
    await page.fill('#service-interval-tasks-1-machine', 'Saw 7');
    const { name, text } = await saved(page, 'Save for a calendar (ICS)');
    expect(name).toBe(`due-next-${today}.ics`);
    const lines = text.replace(/\r\n /g, '').split('\r\n');
    expect(lines.slice(0, 2)).toEqual(['BEGIN:VCALENDAR', 'VERSION:2.0']);
    expect(lines.filter((l) => l === 'BEGIN:VEVENT')).toHaveLength(3);
    expect(lines.filter((l) => /^DTSTAMP:\d{8}T\d{6}Z$/.test(l))).toHaveLength(3);
    const names = lines.filter((l) => l.startsWith('UID:'));
    expect(new Set(names).size).toBe(3);
    expect(text.split('\r\n').filter((l) => Buffer.byteLength(l) > 75)).toEqual([]);
    const again = await saved(page, 'Save for a calendar (ICS)');
    expect(
      again.text
        .replace(/\r\n /g, '')
        .split('\r\n')
        .filter((l) => l.startsWith('UID:')),
    ).toEqual(names);
    const table = await saved(page, 'Save as a table (CSV)');
    const rows = table.text.slice(1).trim().split('\r\n');
    expect(rows[0]).toMatch(/^\d of \d figures are not from this job/);
    expect(rows[1]).toBe(
      'Due on,In days,Machine,What is done,Interval (h),Still to run (h),Goes by,At the meter (h),Hours since',
    );
    expect(rows).toHaveLength(5);
    expect(troubles).toEqual([]);
    await context.close();
  });
});

test.each(['A4', 'Letter'])('the quote prints on one page of %s, in either language, alone', async (format) => {
  for (const language of ['en', 'es']) {
    for (const parts of [1, 40]) {
      const { page, context } = await watchedPage(site.browser);
      const figures = new URLSearchParams(quote);
      for (let k = 1; k <= parts; k += 1)
        for (const [key, value] of Object.entries({
          part: `Part number ${k}`,
          quantity: '1',
          amount: '6.40',
          basis: 'price',
          share: '0',
        }))
          figures.set(`f.lines.${k}.${key}`, value);
      await page.goto(`${site.serving.address}calculators/repair-worth.html?${figures}`);
      await wakeCalculator(page);
      await page.selectOption('#repair-worth-quote-sheet-language', language);
      await pressPrint(page, 'Print the quote');
      await page.emulateMedia({ media: 'print' });
      expect(await page.locator('#repair-worth-quote-sheet').isVisible()).toBe(true);
      expect(
        await page.locator('.calc-form, .calc-main, .calc-working, .site-header').filter({ visible: true }).count(),
      ).toBe(0);
      expect(sheets(await page.pdf({ format, preferCSSPageSize: true })), `${language}, ${parts} parts`).toBe(1);
      await context.close();
    }
  }
});

test('nothing is printed or saved from figures that do not work out', async () => {
  const { page, context } = await watchedPage(site.browser);
  await page.goto(`${site.serving.address}calculators/repair-worth.html`);
  await wakeCalculator(page);
  await page.fill('#repair-worth-newPrice', 'much');
  // The sheets follow the figures a moment later; who reaches for one before that brings it up to date.
  for (const name of ['Print the quote', 'Save it as a table (CSV)'])
    await page.getByRole('button', { name, disabled: true }).waitFor();
  await context.close();
});

test('the wall card prints on its side, alone', async () => {
  const { page, context } = await watchedPage(site.browser);
  await page.goto(`${site.serving.address}calculators/service-interval.html`);
  await wakeCalculator(page);
  await pressPrint(page, 'Print the wall card');
  const pdf = await page.pdf({ format: 'A4', preferCSSPageSize: true });
  expect(sheets(pdf)).toBe(1);
  const [, width, height] = /\/MediaBox\s*\[\s*0\s+0\s+([\d.]+)\s+([\d.]+)/.exec(pdf.toString('latin1')) ?? [];
  expect(Number(width)).toBeGreaterThan(Number(height));
  await context.close();
});
