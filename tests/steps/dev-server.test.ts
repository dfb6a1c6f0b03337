/** What somebody who writes sees under `npm run dev`: islands live, and search that says why it has nothing. */
import { spawn, type ChildProcess } from 'node:child_process';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { launch, watchedPage } from '../e2e/support/browser.ts';

const astro = fileURLToPath(new URL('../../node_modules/astro/bin/astro.mjs', import.meta.url));
const root = fileURLToPath(new URL('fixtures/dev-site/', import.meta.url));
let cache: string;
let server: ChildProcess;
let browser: Browser;
let address: string;

beforeAll(async () => {
  cache = await mkdtemp(join(tmpdir(), 'almanac-dev-'));
  browser = await launch();
  server = spawn(process.execPath, [astro, 'dev', '--root', root, '--port', '0'], {
    // Not the test run's own surroundings, which tell Vite that it stands in a test.
    env: {
      PATH: process.env['PATH'],
      HOME: process.env['HOME'],
      ASTRO_TELEMETRY_DISABLED: '1',
      NO_COLOR: '1',
      FIXTURE_CACHE: cache,
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
  await rm(cache, { recursive: true, force: true });
});

test('islands come alive, and search says that it comes with a build', async () => {
  const { page, context, troubles } = await watchedPage(browser);
  await page.goto(address);
  await page.locator('input[type=search]:enabled').fill('belt');
  await page.getByText('Search comes with the built site').waitFor();
  expect(troubles).toEqual([]);
  await context.close();
});
