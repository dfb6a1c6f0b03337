/** What somebody who writes sees under `npm run dev`: islands live, search over the pages as they stand, and the check's findings. */
import { spawn, type ChildProcess } from 'node:child_process';
import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Browser, Route } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launch, watchedPage } from '../e2e/support/browser.ts';

const astro = fileURLToPath(new URL('../../node_modules/astro/bin/astro.mjs', import.meta.url));
const root = fileURLToPath(new URL('fixtures/dev-site/', import.meta.url));
const good = fileURLToPath(new URL('content-check/fixtures/good/', import.meta.url));
let cache: string;
/** Content in which all is right, to be spoiled while the server runs. */
let project: string;
let server: ChildProcess;
let browser: Browser;
let address: string;

beforeAll(async () => {
  cache = await mkdtemp(join(tmpdir(), 'almanac-dev-'));
  project = await mkdtemp(join(tmpdir(), 'almanac-writing-'));
  await cp(good, project, { recursive: true });
  browser = await launch();
  server = spawn(process.execPath, [astro, 'dev', '--root', root, '--port', '0', '--force'], {
    // Not the test run's own surroundings, which tell Vite that it stands in a test.
    env: {
      PATH: process.env['PATH'],
      HOME: process.env['HOME'],
      ASTRO_TELEMETRY_DISABLED: '1',
      NO_COLOR: '1',
      FIXTURE_CACHE: cache,
      FIXTURE_PROJECT: project,
    },
  });
  address = await new Promise((done, failed) => {
    let text = '';
    server.stdout?.on('data', (piece) => {
      text += String(piece);
      const found = /http:\/\/localhost:\d+\//.exec(text)?.[0];
      if (found) done(found);
    });
    server.on('close', () => failed(new Error(`The server ended: ${text}`)));
  });
});
afterAll(async () => {
  server.kill();
  await browser.close();
  for (const folder of [cache, project]) await rm(folder, { recursive: true, force: true });
});

const job = () => join(project, 'content/knowledge/jobs/wash-down.mdx');
const change = async (from: string | RegExp, to: string) =>
  writeFile(job(), (await readFile(job(), 'utf8')).replace(from, to));

test('islands come alive, and search finds what stands on the pages, also what was saved a moment ago', async () => {
  const { page, context, troubles } = await watchedPage(browser);
  await page.goto(address);
  await page.locator('input[type=search]:enabled').fill('wash');
  await page.getByRole('link', { name: 'Wash it down' }).and(page.locator('[href*=".html"]')).waitFor();
  await change(/$/, '\nRinse the sprocket.\n');
  await page.reload();
  await page.locator('input[type=search]:enabled').fill('sprocket');
  const hit = page.getByRole('link', { name: 'Wash it down' }).and(page.locator('[href*=".html"]'));
  await hit.click();
  await page.getByText('Rinse the sprocket').waitFor();
  expect(new URL(page.url()).pathname).toBe('/jobs/wash-down/');
  // A site in one language has one list of pages; the search asks for the other and does without.
  const others = troubles.filter((trouble) => !/list\.es\.js|status of 404/.test(trouble));
  expect(others).toEqual([]);
  await context.close();
});

test('a draft says on its page that it is one, until its line is taken away', async () => {
  const { page, context } = await watchedPage(browser);
  await page.goto(`${address}jobs/wash-down/`);
  await change(/^reader: /m, 'draft: true\nreader: ');
  await page.locator('almanac-draft').getByText('content/knowledge/jobs/wash-down.mdx').waitFor();
  await change(/^draft: true\n/m, '');
  await page.locator('almanac-draft').waitFor({ state: 'detached' });
  await context.close();
});

test('what the check finds stands on the page, with file and line, until the file is mended', async () => {
  const { page, context } = await watchedPage(browser);
  const panel = page.locator('almanac-findings');
  await page.goto(`${address}jobs/wash-down/`);
  expect(await panel.count()).toBe(0);
  await change(/^reader: .*$/m, 'reader: owner');
  const line = (await readFile(job(), 'utf8')).split('\n').indexOf('reader: owner') + 1;
  await panel.getByText(`content/knowledge/jobs/wash-down.mdx:${line}`).waitFor();
  await panel.getByText('one of customer, mechanic.').waitFor();
  // The server's own words about a page that broke half-way do not cover it.
  await page.evaluate(() => document.body.append(document.createElement('vite-error-overlay')));
  await page.locator('vite-error-overlay').waitFor({ state: 'detached' });
  await change(/^reader: .*$/m, 'reader: mechanic');
  await panel.waitFor({ state: 'detached' });

  // A page that cannot be made says why in the check's words, and comes by itself once the file is mended.
  await change(/$/, '\nAt <5 mm stop.\n');
  await panel.getByText('no bare "<" before a figure or word').waitFor();
  await page.reload();
  await page.getByRole('heading', { name: 'This page cannot be made yet' }).waitFor();
  await panel.getByText('no bare "<" before a figure or word').waitFor();
  await change('<5', 'under 5');
  await page.getByRole('heading', { name: 'Wash it down' }).waitFor();
  expect(await panel.count()).toBe(0);

  // Also when it was mended before the page that stands in could ask what keeps it.
  await change(/$/, '\nAt <5 mm stop.\n');
  await panel.getByText('no bare "<" before a figure or word').waitFor();
  const other = await context.newPage();
  await other.goto(address);
  await other.locator('almanac-findings').waitFor();
  const late = async (route: Route) => {
    await change('<5', 'under 5');
    await other.locator('almanac-findings').waitFor({ state: 'detached' });
    await route.continue();
  };
  await page.route('**/@almanac/findings', late, { times: 1 });
  await page.reload();
  await page.getByRole('heading', { name: 'Wash it down' }).waitFor();
  await context.close();
});
