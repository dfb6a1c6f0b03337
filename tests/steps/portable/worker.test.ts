import { appendFile, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
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
const line = (state: string) => page.locator(`#edition-line[data-state=${state}]`).waitFor();
const notice = (state: string) => page.locator(`#edition-notice[data-state=${state}]:not([hidden])`).waitFor();
const at = (path: string) => serving.address + path;
/** What is typed before would go unheard: these islands are plain ones. */
const awake = () => page.waitForFunction(() => document.querySelector('astro-island:not([ssr])'));

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
  watched = await watchedPage(browser, { saves: true });
  page = watched.page;
  await page.goto(at('index.html'));
  await line('kept');
});
afterEach(async () => {
  await watched.context.close();
  await serving.close();
});

test('after one visit and with the server gone, pages never visited open and work', async () => {
  await serving.close();
  await page.goto(at('deep/er/page.html'));
  await awake();
  await page.fill('[name=number]', '20+1');
  await page.waitForFunction(() => document.querySelector('[name=sum]')?.textContent === '21');
  await page.goto(at('search.html?q=x'));
  await awake();
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
  // Nothing shows while a box has the focus, and what shows moves nothing.
  await page.waitForFunction(async () => (await navigator.serviceWorker.getRegistration())?.waiting);
  expect(await page.locator('#edition-notice').isHidden()).toBe(true);
  const place = () => page.locator('main').evaluate((main) => main.getBoundingClientRect().top);
  const top = await place();
  await page.locator('[name=number]').blur();
  await notice('newer');
  expect(await place()).toBe(top);
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

test('a device without room for a newer edition is told so, and keeps the earlier one', async () => {
  const file = join(dist, 'plain.html');
  const before = await readFile(file, 'utf8');
  await writeFile(file, before.replace('Nothing to press.', `Second edition. ${'More than fits. '.repeat(100_000)}`));
  await addWorker(dist);
  const device = await watched.context.newCDPSession(page);
  const quota = (quotaSize?: number) =>
    device.send('Storage.overrideQuotaForOrigin', {
      origin: new URL(serving.address).origin,
      ...(quotaSize === undefined ? {} : { quotaSize }),
    });
  await quota(500_000);
  await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update().catch(() => undefined));
  await line('no-room');
  expect(await page.locator('#edition-line').textContent()).toMatch(/no room for it/);
  expect(await page.evaluate(async () => (await fetch('plain.html')).text())).toContain('Nothing to press.');
  // With room again, it comes on the next visit.
  await quota();
  await page.goto(at('index.html'));
  await notice('newer');
  await writeFile(file, before);
});

test('a first save that was cut short is taken up where it stopped', async () => {
  const missing = join(dist, 'plain.html');
  await rename(missing, `${missing}.away`);
  const fresh = await watchedPage(browser, { saves: true });
  await fresh.page.goto(at('index.html'));
  await fresh.page.locator('#edition-line[data-state=cut-short]').waitFor();
  await rename(`${missing}.away`, missing);
  const fetched: string[] = [];
  fresh.context.on('request', (request) => void (request.serviceWorker() && fetched.push(request.url())));
  await fresh.page.goto(at('index.html'));
  await fresh.page.locator('#edition-line[data-state=kept]').waitFor();
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

test('parts the device lost are fetched again on the next visit, and the foot says how many pages are kept', async () => {
  await page.evaluate(async () => {
    const cache = await caches.open((await caches.keys())[0] ?? '');
    for (const lost of ['plain.html', 'deep/er/page.html']) await cache.delete(new URL(lost, location.href));
  });
  await page.goto(at('search.html'));
  await line('kept');
  expect(await page.locator('#edition-line').textContent()).toMatch(/^\d+ pages kept on this device/);
  await serving.close();
  await page.goto(at('plain.html'));
  await page.getByRole('heading', { name: 'Plain page' }).waitFor();
  expect(watched.troubles).toEqual([]);
});

/** A host between the site and the reader. */
async function hostThat(change: (type: string, body: Buffer) => { type: string; body: Buffer }): Promise<Serving> {
  const server = createServer((request, response) => {
    void (async () => {
      const from = await fetch(at(request.url?.replace(base, '') ?? ''));
      const sent = change(from.headers.get('content-type') ?? '', Buffer.from(await from.arrayBuffer()));
      response.writeHead(from.status, { 'content-type': sent.type }).end(sent.body);
    })();
  });
  await new Promise<void>((done) => server.listen(0, 'localhost', done));
  return {
    address: `http://localhost:${(server.address() as AddressInfo).port}${base}`,
    close: () =>
      new Promise((done) => {
        server.close(() => done());
        server.closeAllConnections();
      }),
  };
}

test('a host that alters pages is asked for one file on each visit, and the reader is told once', async () => {
  const host = await hostThat((type, body) => ({
    type,
    body: type.startsWith('text/html') ? Buffer.concat([body, Buffer.from('<!-- hosted -->')]) : body,
  }));
  const visitor = await watchedPage(browser, { saves: true });
  const fetched: string[] = [];
  visitor.context.on('request', (r) => void (r.serviceWorker() && !r.url().endsWith('sw.js') && fetched.push(r.url())));
  const visit = async (state: string) => {
    fetched.length = 0;
    await visitor.page.goto(`${host.address}index.html`);
    await visitor.page.locator(`#edition-line[data-state=${state}]`).waitFor();
    return fetched.length;
  };
  expect(await visit('cut-short')).toBeGreaterThan(5);
  expect(await visit('altered')).toBe(1);
  fetched.length = 0;
  await visitor.page.goto(`${host.address}index.html`);
  // Asked for first: before the page registers its worker there is no registration either.
  await expect.poll(() => fetched, { timeout: 30_000 }).toHaveLength(1);
  await visitor.page.waitForFunction(async () => !(await navigator.serviceWorker.getRegistration()));
  expect(fetched).toHaveLength(1);
  expect(await visitor.page.locator('#edition-line').textContent()).toBe('');
  await visitor.context.close();
  await host.close();
});

test('a file sent under the wrong kind is kept under the right one', async () => {
  const host = await hostThat((type, body) => ({ type: type.startsWith('image/') ? 'text/plain' : type, body }));
  const visitor = await watchedPage(browser, { saves: true });
  await visitor.page.goto(`${host.address}index.html`);
  await visitor.page.locator('#edition-line[data-state=kept]').waitFor();
  const type = () => visitor.page.evaluate(async () => (await fetch('pictures/dot.svg')).headers.get('content-type'));
  expect(await type()).toContain('image/svg+xml');
  await visitor.context.close();
  await host.close();
});

test('a malformed address is answered with a page, not with an error of the browser', async () => {
  const answer = await page.goto(at('%zz'));
  expect(answer?.status()).toBe(404);
  await page.getByRole('heading', { name: 'Not here' }).waitFor();
});
