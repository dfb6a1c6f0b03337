/**
 * npm run bench:newcomer: the way of a shop owner from an empty folder to a first article published, step by step as
 * README.md tells it, each step with its seconds. The words of the article are at hand: typing is not counted.
 *
 * Chromium sees what `npm run dev` shows. What was kept of earlier builds is thrown away before, and dist/ holds the
 * made-up shop's site afterwards. No host on the net is used: its line and distance would be measured, not the almanac.
 * What the pack holds is served by Python's own plain file server on this machine, from a folder of its own.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import { pathToFileURL } from 'node:url';
import { chromium, type Page } from 'playwright-core';
import { placeholders } from '../../../src/commands/new/skeleton.ts';
import { chromiumHelp, findChromium } from '../../../src/commands/support/chromium.ts';
import { projectFolder } from '../../../src/commands/support/command.ts';
import { runningServer } from '../../../src/steps/support/running-server.ts';
import { asRoot } from '../../e2e/support/browser-options.ts';
import { command, row, started, three, timed } from './steps.ts';

const executablePath = findChromium();
if (executablePath === undefined) throw new Error(chromiumHelp());
process.chdir(projectFolder);
const place = mkdtempSync(join(tmpdir(), 'almanac-newcomer-'));
const shop = join(place, 'my-shop');
const title = 'Clean the water valve';
const job = join(shop, 'jobs/clean-the-water-valve.mdx');
const path = 'jobs/clean-the-water-valve';
for (const kept of ['dist', '.astro', 'node_modules/.cache', 'node_modules/.astro', 'node_modules/.vite/deps'])
  rmSync(kept, { recursive: true, force: true });

const browser = await chromium.launch({ executablePath, args: asRoot() });
const painted = (page: Page) => page.waitForFunction(() => performance.getEntriesByName('first-contentful-paint')[0]);
const found = (page: Page) => page.locator('main .find-results a', { hasText: title }).first().waitFor();
const find = async (page: Page) => {
  await page.locator('main input[type=search]:enabled').fill('water valve');
  await found(page);
};
/** Saves the article with some text in another's place, or as it was. */
const good = () => readFileSync(job, 'utf8');
const save = (text: string) => writeFileSync(job, text);

async function write(): Promise<void> {
  const start = performance.now();
  const [, address] = await started('npm', ['run', 'dev'], /are at (http:\S+)/);
  const since = () => (performance.now() - start) / 1000;
  row('`dev`: from the command to the address', [since()]);
  const page = await browser.newPage({ viewport: { width: 1366, height: 768 } });
  page.setDefaultTimeout(120_000);
  await page.goto(`${address}${path}/`, { waitUntil: 'commit' });
  await painted(page);
  row('`dev`: from the command to the new article, painted', [since()]);
  const text = good();
  const panel = page.locator('almanac-findings');
  let saved = 0;
  await three({
    'an edit saved, until it is seen': async () => {
      save(`${text}\nEdit number ${(saved += 1)}.\n`);
      await page.getByText(`Edit number ${saved}.`).waitFor();
    },
  });
  for (const [mistake, wrong, words] of [
    ['a wrong word in the front matter', text.replace('reader: mechanic', 'reader: owner'), 'customer, mechanic'],
    ['a component that does not exist', `${text}\n<Hazzard id="kickback" />\n`, 'Did you mean Hazard?'],
    ['a broken link', `${text}\n[The belt](/jobs/drive-belt-chnge/)\n`, 'a page that exists'],
    ['a curly bracket left open', `${text}\nOpen { it\n`, 'no bare curly bracket'],
  ] as const)
    await three({
      [`${mistake} saved, until the page says so`]: async () => {
        save(wrong);
        await panel.getByText(words).waitFor();
      },
      [`${mistake} mended, until the page is right`]: async () => {
        save(text);
        await panel.waitFor({ state: 'detached' });
        await page.getByRole('heading', { level: 1, name: title }).waitFor();
      },
    });
  await page.goto(`${address}search/`);
  await timed('`dev`: first search, until the new article is found', () => find(page));
  await page.goto(`${address}calculators/belt-tension/`);
  const form = page.locator('section.calc').first();
  await timed('`dev`: a calculator reached for, until it is live', async () => {
    await form.dispatchEvent('pointerover');
    await page.locator('section.calc[data-live=yes]').first().waitFor();
  });
  const answer = form.locator('.calc-answer');
  const before = await answer.innerText();
  await timed('`dev`: a figure typed, until its answer', async () => {
    await form.locator('.calc-box input[inputmode=decimal]:visible').first().fill('77');
    while ((await answer.innerText()) === before) await page.waitForTimeout(10);
  });
  await page.close();
  stopWriting();
}

/** As Ctrl+C in its window would. */
function stopWriting(): void {
  const server = runningServer(projectFolder);
  if (server?.shop === shop) process.kill(server.pid, 'SIGINT');
}

/** The article as somebody has written it: nothing of its beginning is left. */
function writtenOut(text: string): string {
  const own = [...placeholders].reduce(
    (all, one) => all.replaceAll(one, `${/^(?:\d\.|\||-)/.exec(one)?.[0] ?? ''} Ours.`),
    text,
  );
  return own.replace(/^summary: .*$/m, 'summary: What to do when water no longer reaches the blade of a saw.');
}

async function read(): Promise<void> {
  const folder = join(place, 'stick');
  const packed = /^Made (\S+\.zip)$/m.exec(command('`pack`', ['pack', '--', place]))?.[1] ?? '';
  const opened = spawnSync('python3', ['-m', 'zipfile', '-e', packed, folder]);
  if (opened.status !== 0) throw new Error(`The pack could not be opened: ${String(opened.stderr)}`);
  const site = join(folder, 'almanac');
  const words = ['-u', '-m', 'http.server', '0', '--bind', 'localhost', '--directory', site];
  const [server, port] = await started('python3', words, /port (\d+)/);
  for (const [name, address, width] of [
    ['served, 390 px', `http://localhost:${port}/`, 390],
    ['served, 1366 px', `http://localhost:${port}/`, 1366],
    ['from the folder, 390 px', pathToFileURL(join(site, '/')).href, 390],
  ] as const) {
    const context = await browser.newContext({ viewport: { width, height: 800 } });
    const page = await context.newPage();
    await timed(`the article ${name}, painted`, async () => {
      await page.goto(`${address}${path}.html`, { waitUntil: 'commit' });
      await painted(page);
    });
    await page.getByRole('heading', { level: 1, name: title }).waitFor();
    await page.goto(`${address}search.html`);
    await timed(`search ${name}, until it is found`, () => find(page));
    if (name === 'served, 1366 px') {
      const kept = page.locator('#edition-line[data-state=kept]');
      await timed('the whole site kept on the device after that visit', () => kept.waitFor({ timeout: 120_000 }));
      server.kill();
      await context.setOffline(true);
      await timed('the article without server and line, painted', async () => {
        await page.goto(`${address}${path}.html`, { waitUntil: 'commit' });
        await painted(page);
      });
      await page.goto(`${address}search.html`);
      await timed('search without server and line, until it is found', () => find(page));
    }
    await context.close();
  }
}

try {
  console.log(`Load before: ${loadavg()[0]?.toFixed(2)}\n| step | time | what it said |\n|---|---|---|`);
  const answers = {
    name: 'Brisa Saws',
    address: 'Rua 9; Vila Nova',
    phone: '555 010 0199',
    hours: 'Mo-Fr 8-17',
    currency: 'EUR',
    rate: '38.50',
    tax: '23',
    languages: 'en',
  };
  command('`shop:new`', [
    'shop:new',
    '--',
    shop,
    ...Object.entries(answers).flatMap(([flag, text]) => [`--${flag}`, text]),
  ]);
  process.env['SHOP'] = shop;
  command('`new`, a job', ['new', '--', 'job', title, '--for', 'cut-off-saw']);
  await write();
  command('`build`, the first', ['build']);
  command('`publish:check`, still a draft', ['publish:check'], 1);
  save(writtenOut(good()).replace(/^draft: true\n/m, ''));
  command('`content`, written and no longer a draft', ['content']);
  command('`build`, the second', ['build']);
  command('`publish:check`', ['publish:check']);
  await read();
} finally {
  stopWriting();
  await browser.close();
  rmSync(place, { recursive: true, force: true });
}
