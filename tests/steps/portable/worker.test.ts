import { appendFile, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, afterEach, expect, test } from 'vitest';
import { serveFolder, type Serving } from '../../../src/commands/support/serve.ts';
import { addWorker } from '../../../src/steps/worker/add-worker.ts';
import { launch, watchedPage, type WatchedPage } from '../../e2e/support/browser.ts';
import { buildFixtureSite } from '../fixture-site.ts';

let dist: string;
let browser: Browser;
let serving: Serving;
let watched: WatchedPage;
let page: Page;

const base = '/kb/';
const notice = (state: string) => page.locator(`#edition-notice[data-state=${state}]:not([hidden])`).waitFor();
const at = (path: string) => serving.address + path;

beforeAll(async () => {
  browser = await launch();
  dist = await buildFixtureSite();
});
afterAll(async () => {
  await browser.close();
  await rm(join(dist, '..'), { recursive: true });
});
beforeEach(async () => {
  await addWorker(dist);
  serving = await serveFolder(dist, { base });
  watched = await watchedPage(browser);
  page = watched.page;
  await page.goto(at('index.html'));
  await notice('saved');
});
afterEach(async () => {
  await watched.context.close();
  await serving.close();
});

test('after one visit and with the server gone, pages never visited open and work', async () => {
  await serving.close();
  await page.goto(at('deep/er/page.html'));
  await page.fill('[name=number]', '20+1');
  await page.waitForFunction(() => document.querySelector('[name=sum]')?.textContent === '21');
  await page.goto(at('search.html?q=x'));
  await page.fill('[name=find]', 'flumdiddle');
  await page.getByRole('link', { name: 'Deep page' }).waitFor();
  expect(watched.troubles).toEqual([]);
});

test('addresses with a slash, without ending and with a query find the saved page', async () => {
  await serving.close();
  for (const path of ['plain', 'plain/', 'plain?x=1', 'plain/?x=1', 'plain.html?x=1#y']) {
    await page.goto(at(path));
    await page.getByRole('heading', { name: 'Plain page' }).waitFor();
    await page.getByRole('link', { name: 'Deep', exact: true }).first().click();
    await page.getByRole('heading', { name: 'Deep page' }).waitFor();
  }
  await page.goto(serving.address);
  await page.getByRole('heading', { name: 'Start' }).waitFor();
});

test('an unknown address says so, styled and with working links, instead of a browser error', async () => {
  await serving.close();
  await page.goto(at('some/where/else'));
  await page.getByRole('heading', { name: 'Not here' }).waitFor();
  await page.getByRole('link', { name: 'Start' }).click();
  await page.getByRole('heading', { name: 'Start' }).waitFor();
});

test('a newer edition waits until the reader asks, and typed input stays till then', async () => {
  await page.goto(at('index.html'));
  await page.fill('[name=number]', '77');
  const other = await watched.context.newPage();
  await other.goto(at('plain.html'));
  await other.evaluate(() => Object.assign(window, { typed: 'still here' }));

  const file = join(dist, 'plain.html');
  const before = await readFile(file, 'utf8');
  await writeFile(file, before.replace('Nothing to press.', 'Second edition.'));
  await addWorker(dist);
  await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update());
  await notice('newer');
  expect(await page.inputValue('[name=number]')).toBe('77');
  expect(await page.evaluate(async () => (await fetch('plain.html')).text())).toContain('Nothing to press.');

  await page.getByRole('button', { name: 'Show it now' }).click();
  await other.locator('#edition-notice[data-state=elsewhere]:not([hidden])').waitFor();
  expect(await other.evaluate(() => (window as { typed?: string }).typed)).toBe('still here');
  await page.goto(at('plain.html'));
  await page.getByText('Second edition.').waitFor();
  await writeFile(file, before);
});

test('an edition that is half published is refused, and the old one stays whole', async () => {
  const file = join(dist, 'deep/er/page.html');
  const before = await readFile(file, 'utf8');
  await writeFile(file, before.replace('flumdiddle', 'other words'));
  await addWorker(dist);
  await appendFile(file, '<!-- not what the list says -->');
  const outcome = await page.evaluate(async () => {
    const registration = await navigator.serviceWorker.getRegistration();
    await registration?.update().catch(() => undefined);
    const coming = registration?.installing;
    if (!coming) return registration?.waiting ? 'waiting' : 'redundant';
    return new Promise((done) => coming.addEventListener('statechange', () => done(coming.state)));
  });
  expect(outcome).toBe('redundant');
  await serving.close();
  await page.goto(at('deep/er/page.html'));
  await page.getByText('flumdiddle').waitFor();
  await writeFile(file, before);
});

test('a first save that was cut short is taken up where it stopped', async () => {
  const missing = join(dist, 'plain.html');
  await rename(missing, `${missing}.away`);
  const fresh = await watchedPage(browser);
  await fresh.page.goto(at('index.html'));
  await fresh.page.locator('#edition-notice[data-state=cut-short]').waitFor();
  await rename(`${missing}.away`, missing);
  const fetched: string[] = [];
  fresh.context.on('request', (request) => void (request.serviceWorker() && fetched.push(request.url())));
  await fresh.page.goto(at('index.html'));
  await fresh.page.locator('#edition-notice[data-state=saved]').waitFor();
  expect(fetched.filter((url) => !url.endsWith('sw.js'))).toEqual([at('plain.html')]);
  await fresh.context.close();
});

test('the worker never swaps editions by itself', async () => {
  expect(await readFile(join(dist, 'sw.js'), 'utf8')).toMatch(/take-over/);
  await page.evaluate(() => Object.assign(window, { stays: true }));
  const file = join(dist, 'es.html');
  const before = await readFile(file, 'utf8');
  await appendFile(file, '<!-- third edition -->');
  await addWorker(dist);
  await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update());
  await notice('newer');
  expect(await page.evaluate(() => (window as { stays?: boolean }).stays)).toBe(true);
  await writeFile(file, before);
});
