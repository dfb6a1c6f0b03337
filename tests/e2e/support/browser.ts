/** A Chromium for a test file, shared with the others where one runs for all; and pages that remember everything that went wrong on them. */
import {
  chromium,
  type Browser,
  type BrowserContext,
  type BrowserContextOptions,
  type Download,
  type Locator,
  type Page,
} from 'playwright-core';
import { inject } from 'vitest';
import { asRoot } from './browser-options.ts';
import type {} from './one-browser.ts';
import { chromiumHelp, findChromium } from '../../../src/commands/support/chromium.ts';

export async function launch(more: readonly string[] = []): Promise<Browser> {
  // Closing a shared browser leaves the others' pages open.
  const shared = more.length === 0 ? inject('browserAddress') : undefined;
  if (shared !== undefined) return chromium.connect(shared);
  const executablePath = findChromium();
  if (!executablePath) throw new Error(chromiumHelp());
  return chromium.launch({ executablePath, args: [...asRoot(), ...more] });
}

export interface WatchedPage {
  readonly page: Page;
  readonly context: BrowserContext;
  /** Console errors and warnings, uncaught errors, failed and refused requests, third-party requests. */
  readonly troubles: string[];
}

/** For one press or one wait [ms]: generous, for slow machines, and less than a test has. */
const patience = 60_000;

/** A context of its own. It saves no copy of the whole site, which every context would do again, unless `saves` is said. */
export async function watchedPage(
  browser: Browser,
  { saves = false, ...options }: BrowserContextOptions & { readonly saves?: boolean } = {},
): Promise<WatchedPage> {
  const context = await browser.newContext({ serviceWorkers: saves ? 'allow' : 'block', ...options });
  context.setDefaultTimeout(patience);
  const page = await context.newPage();
  const troubles: string[] = [];
  page.on('console', (message) => {
    // The browser's word about the worker it was told to block is no trouble of the page.
    if (message.text().includes('Service Worker registration blocked')) return;
    if (['error', 'warning'].includes(message.type())) troubles.push(`console ${message.type()}: ${message.text()}`);
  });
  page.on('pageerror', (error) => troubles.push(`uncaught: ${error.message}`));
  page.on('requestfailed', (request) => {
    const why = request.failure()?.errorText ?? '';
    // Where scripts are off the browser refuses those a page asks for ahead, as it was told to.
    if (options.javaScriptEnabled === false && request.resourceType() === 'script' && why === 'csp') return;
    // Leaving a page drops what it was still loading; a refused or missing file has another name.
    if (why !== 'net::ERR_ABORTED') troubles.push(`failed: ${request.url()} ${why}`);
  });
  page.on('response', (response) => {
    if (response.status() >= 400) troubles.push(`${response.status()}: ${response.url()}`);
  });
  page.on('request', (request) => {
    const { protocol, hostname } = new URL(request.url());
    if (protocol.startsWith('http') && hostname !== 'localhost') troubles.push(`third party: ${request.url()}`);
  });
  return { page, context, troubles };
}

/** Reaches for the first calculator of a page, as a pointer does, and waits until it answers. */
export async function wakeCalculator(page: Page): Promise<Locator> {
  const calculator = page.locator('section.calc').first();
  await calculator.scrollIntoViewIfNeeded();
  await calculator.dispatchEvent('pointerover');
  await page.locator('section.calc[data-live=yes]').first().waitFor();
  return calculator;
}

/** What was saved. A browser shared by all test files hands it over as a stream, never as a path. */
export async function savedText(download: Download): Promise<string> {
  const parts: Uint8Array[] = [];
  for await (const part of await download.createReadStream()) parts.push(part as Uint8Array);
  return Buffer.concat(parts).toString('utf8');
}
