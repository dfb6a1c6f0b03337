/** A bench page alive: the strip, the fault search, the job sheet. */
import type { Page } from 'playwright-core';

export async function alive(page: Page): Promise<void> {
  await page.locator('.strip[data-live=yes]').waitFor();
  for (const part of ['.fault', '.job'])
    if ((await page.locator(part).count()) > 0) await page.locator(`${part}[data-live=yes]`).waitFor();
  if ((await page.locator('.fault').count()) > 0) await planned(page);
}

/** The plan of the newest answers stands. */
export async function planned(page: Page): Promise<void> {
  await page.locator('.fault[data-live=yes][data-stale=no]').waitFor();
}

export async function open(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await alive(page);
}

export async function takeTicket(page: Page, ticket: string): Promise<void> {
  await page.fill('.strip input', ticket);
  await page.press('.strip input', 'Tab');
  if ((await page.locator('.fault').count()) > 0) await planned(page);
}

/** Pages of a printed document. */
export const sheetsIn = (pdf: Buffer): number => pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0;
