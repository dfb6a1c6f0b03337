/** Working down a complaint on the built page: near, in any order, by ticket, from a server and from disk. */
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { open, planned, sheetsIn, takeTicket } from './support/bench.ts';
import { watchedPage } from './support/browser.ts';
import { dist, pages } from './support/site.ts';
import { openedSite } from './support/opened-site.ts';

const site = openedSite();

const faults = pages.filter((p) => p.startsWith('faults/'));
const shown = (page: Page) => page.locator('.fault-what').innerText();
const panel = (page: Page) => page.locator('.fault-now');
const line = (page: Page, n: number) => page.locator('.fault-path > li').nth(n);
const press = async (page: Page, name: string) => {
  await panel(page).getByRole('button', { name, exact: true }).click();
  await planned(page);
};
const undo = async (page: Page) => {
  await page.locator('.fault-acts').getByRole('button', { name: 'Undo' }).click();
  await planned(page);
};

describe.each([
  // How far down the page the next check and its answers may lie [px].
  { width: 1366, height: 768, check: 240, answers: 480 },
  { width: 390, height: 844, check: 300, answers: 700 },
])('at $width px', ({ width, height, check, answers }) => {
  test('the next check and its answers are on the first screen of every complaint', async () => {
    const { page, context, troubles } = await watchedPage(site.browser, { viewport: { width, height } });
    const far: string[] = [];
    for (const file of faults) {
      await open(page, site.serving.address + file);
      const name = await page.locator('.fault-what').boundingBox();
      const buttons = await panel(page).locator('.fault-answers').boundingBox();
      if (!name || !buttons) throw new Error(`${file} shows no check`);
      if (name.y > check) far.push(`${file}: next check at ${name.y}`);
      if (buttons.y + buttons.height > answers) far.push(`${file}: answers end at ${buttons.y + buttons.height}`);
    }
    expect(far).toEqual([]);
    expect(troubles).toEqual([]);
    await context.close();
  });
});

test('no answer leans forward: the four are drawn alike', async () => {
  const { page, context } = await watchedPage(site.browser);
  await open(page, site.serving.address + (faults[0] ?? ''));
  const looks = await panel(page)
    .locator('.fault-answer')
    .evaluateAll((all) =>
      all.map((b) => {
        const { color, backgroundColor, borderTopColor, borderTopWidth, fontWeight, fontSize } = getComputedStyle(b);
        return [color, backgroundColor, borderTopColor, borderTopWidth, fontWeight, fontSize].join();
      }),
    );
  expect(looks).toHaveLength(4);
  expect(new Set(looks).size).toBe(1);
  await context.close();
});

describe.each([
  { way: 'from a server', address: (file: string) => site.serving.address + file },
  { way: 'from disk', address: (file: string) => new URL(file, pathToFileURL(join(dist, '/'))).href },
])('$way', ({ address }) => {
  test('a search is there again under its ticket, untouched by another ticket in another window', async () => {
    const { page, context, troubles } = await watchedPage(site.browser);
    const file = 'faults/vibration.html';
    await open(page, address(file));
    await takeTicket(page, '1182');
    const first = await shown(page);
    await press(page, 'Looks sound');
    const second = await shown(page);
    expect(second).not.toBe(first);

    const other = await context.newPage();
    await open(other, address(file));
    expect(await shown(other)).toBe(second);
    await takeTicket(other, '1183');
    expect(await shown(other)).toBe(first);
    await press(other, 'Shows the fault');
    // The first window still stands at its own ticket.
    expect(await page.inputValue('.strip input')).toBe('1182');
    expect(await shown(page)).toBe(second);
    await page.reload();
    await planned(page);
    expect(await shown(page)).toBe(second);
    expect(await line(page, 0).innerText()).not.toContain('looks sound');
    expect(await page.locator('.fault-path').innerText()).toContain('looks sound');
    expect(troubles).toEqual([]);
    await context.close();
  });
});

test('a check seen already is answered out of order, changed, taken back, and undone', async () => {
  const { page, context, troubles } = await watchedPage(site.browser);
  await open(page, `${site.serving.address}faults/vibration.html`);
  const before = await page.locator('.fault-path').innerText();
  const third = line(page, 2);
  const name = await third.locator('.fault-check').innerText();
  await third.locator('summary').first().click();
  await third.getByRole('button', { name: 'Looks sound' }).click();
  await planned(page);
  const answered = page.locator('.fault-path > li', { hasText: name.split('\n')[0] ?? '' });
  expect(await answered.locator('.fault-seen').innerText()).toBe('looks sound');
  await answered.locator('summary').first().click();
  await answered.getByRole('button', { name: 'Not sure' }).click();
  await planned(page);
  expect(await answered.locator('.fault-seen').innerText()).toBe('not sure');
  await undo(page);
  expect(await answered.locator('.fault-seen').innerText()).toBe('looks sound');
  await undo(page);
  expect(await page.locator('.fault-path').innerText()).toBe(before);
  expect(troubles).toEqual([]);
  await context.close();
});

test('a finding is made sure of, can be it, and can be not it', async () => {
  const { page, context } = await watchedPage(site.browser);
  await open(page, `${site.serving.address}faults/heavy-to-pull.html`);
  await takeTicket(page, '7');
  // One finding after another until one suspect is likely enough.
  for (let k = 0; k < 4 && (await panel(page).getByRole('button', { name: 'Not it: go on' }).count()) === 0; k += 1)
    await press(page, 'Shows the fault');
  const suspect = await shown(page);
  await press(page, 'Not it: go on');
  expect(await shown(page)).not.toBe(suspect);
  expect(await page.locator('.fault-ruled-out').innerText()).toContain(suspect);
  await undo(page);
  expect(await shown(page)).toBe(suspect);
  await press(page, 'That was it');
  expect(await panel(page).innerText()).toContain('That was it:');
  await open(page, `${site.serving.address}job-sheet.html`);
  expect(await page.locator('.job-entry').first().innerText()).toContain(`It was: ${suspect}`);
  await context.close();
});

test('a check that makes sure stands with the finding, with its own answers', async () => {
  const { page, context } = await watchedPage(site.browser);
  let made = 0;
  for (const file of faults.slice(0, 4)) {
    await page.evaluate(() => localStorage.clear()).catch(() => undefined);
    await open(page, site.serving.address + file);
    await press(page, 'Shows the fault');
    if ((await page.locator('.fault-confirm').count()) === 0) continue;
    made += 1;
    const name = await page.locator('.fault-confirm h3').innerText();
    await page.locator('.fault-confirm').getByRole('button', { name: 'Looks sound' }).click();
    const seen = page.locator('.fault-path > li', { hasText: name });
    expect(await seen.locator('.fault-seen').innerText()).toBe('looks sound');
  }
  expect(made).toBeGreaterThan(0);
  await context.close();
});

test('leaving out every check is no diagnosis', async () => {
  const { page, context } = await watchedPage(site.browser);
  for (const file of faults.slice(0, 4)) {
    await page.evaluate(() => localStorage.clear()).catch(() => undefined);
    await open(page, site.serving.address + file);
    for (let k = 0; k < 15; k += 1) {
      const later = panel(page).getByRole('button', { name: 'Can’t check now' });
      if ((await later.count()) === 0) break;
      await later.first().click();
      await planned(page);
    }
    const said = await panel(page).innerText();
    expect(said, file).toMatch(/Nothing was checked|no diagnosis|Stop looking/);
    expect(said, file).not.toMatch(/That was it/);
  }
  await context.close();
});

// Every complaint on two sizes of paper: many pages, so longer than a test is given otherwise.
test(
  'every caution a complaint names is on its paper in full, and the list of checks is on the first side',
  { timeout: 300_000 },
  async () => {
    const { page, context } = await watchedPage(site.browser);
    for (const file of faults) {
      await open(page, site.serving.address + file);
      for (const format of ['A4', 'Letter']) {
        await page.emulateMedia({ media: 'print' });
        const height = format === 'A4' ? 297 : 279;
        // The list ends within the first side: its height from the top of the paper, in mm at 96 px an inch.
        await page.setViewportSize({
          width: Math.round(((format === 'A4' ? 210 : 216) - 28) * (96 / 25.4)),
          height: 1000,
        });
        const end = await page.locator('.fault-path').evaluate((e) => e.getBoundingClientRect().bottom + scrollY);
        expect((end * 25.4) / 96, `${file}, ${format}`).toBeLessThan(height - 30);
        const full = await page
          .locator('.fault-cautions.fault-on-paper .fault-caution')
          .evaluateAll((all) => all.filter((c) => c.getBoundingClientRect().height > 40).map((c) => c.textContent));
        const named = await page.locator('.fault-now .fault-caution, .fault-more .fault-caution').allTextContents();
        expect(named.length).toBeGreaterThan(0);
        expect(
          named.filter((n) => !full.includes(n)),
          file,
        ).toEqual([]);
        await page.emulateMedia({ media: null });
        expect(sheetsIn(await page.pdf({ format, preferCSSPageSize: true })), `${file}, ${format}`).toBeLessThanOrEqual(
          2,
        );
      }
    }
    await context.close();
  },
);

test('a search kept by an earlier edition is taken over', async () => {
  const { page, context } = await watchedPage(site.browser);
  await open(page, `${site.serving.address}faults/vibration.html`);
  const first = await shown(page);
  await page.evaluate(() =>
    localStorage.setItem(
      'almanac-fault-vibration',
      JSON.stringify({ seen: [{ check: 'blade-look', shows: false }], skipped: [], machine: 'x', begun: '2026-11-01' }),
    ),
  );
  await page.reload();
  await planned(page);
  expect(await shown(page)).not.toBe(first);
  expect(await page.evaluate(() => localStorage.getItem('almanac-fault-vibration'))).toBe(null);
  await context.close();
});

test('two windows at one ticket follow each other; the same check answered two ways is asked about', async () => {
  const { page, context } = await watchedPage(site.browser);
  const address = `${site.serving.address}faults/vibration.html`;
  await open(page, address);
  await takeTicket(page, '5');
  const other = await context.newPage();
  await open(other, address);
  await press(page, 'Looks sound');
  await expect.poll(() => other.locator('.fault-path').innerText()).toContain('looks sound');
  await planned(other);
  // A window the other one does not hear of: as after a sleep.
  await other.evaluate(() => window.addEventListener('storage', (e) => e.stopImmediatePropagation(), true));
  const check = await shown(page);
  expect(await shown(other)).toBe(check);
  await other.evaluate(() => {
    const key = Object.keys(localStorage).find((k) => k.includes('/search/')) ?? '';
    const record = JSON.parse(localStorage.getItem(key) ?? '') as { data: { given: Record<string, unknown> } };
    // As the first window would have written it in the meantime.
    record.data.given['seat-look'] = { is: 'sound', name: 'Blade off', at: 1 };
    localStorage.setItem(key, JSON.stringify(record));
  });
  const seat = other.locator('.fault-path > li', { hasText: 'flanges, bushing and bore' });
  await seat.locator('summary').first().click();
  await seat.getByRole('button', { name: 'Shows the fault' }).click();
  const asked = other.locator('.device-notes');
  expect(await asked.innerText()).toContain('Changed in two windows');
  await asked.getByRole('button', { name: 'This window’s' }).click();
  await asked.waitFor({ state: 'detached' });
  expect(await seat.locator('.fault-seen').innerText()).toBe('shows the fault');
  expect(
    await other.evaluate(() => Object.keys(localStorage).filter((k) => k.startsWith('almanac-aside/')).length),
  ).toBe(1);
  await context.close();
});

/** In the page: tasks of long work wait while `hold` is set, so that a test stands between an answer and its plan. */
function holdBack(): void {
  const at = window as unknown as { hold: boolean; shown: string[] };
  at.hold = false;
  at.shown = [];
  const post = Object.getOwnPropertyDescriptor(MessagePort.prototype, 'postMessage')?.value as (m: unknown) => void;
  MessagePort.prototype.postMessage = function (message: unknown): void {
    const send = (): void => void (at.hold ? requestAnimationFrame(send) : post.call(this, message));
    send();
  };
  new MutationObserver(() => {
    const what = document.querySelector('.fault-what')?.textContent ?? '';
    if (at.shown.at(-1) !== what) at.shown.push(what);
  }).observe(document, { subtree: true, childList: true, characterData: true });
}

test('an answer is marked at once; until the plan made with it stands, the one there is said to be of earlier answers', async () => {
  const { page, context, troubles } = await watchedPage(site.browser);
  await page.addInitScript(holdBack);
  const hold = (on: boolean) => page.evaluate((is) => void ((window as unknown as { hold: boolean }).hold = is), on);
  const answer = (name: string) => panel(page).getByRole('button', { name, exact: true });
  const earlier = page.locator('.fault-lead .fault-earlier');
  await open(page, `${site.serving.address}faults/hard-to-start.html`);
  const first = await shown(page);
  expect(await earlier.isVisible()).toBe(false);
  await hold(true);

  await answer('Looks sound').click();
  expect(await answer('Looks sound').getAttribute('aria-pressed')).toBe('true');
  expect(await page.locator('.fault').getAttribute('data-stale')).toBe('yes');
  expect(await earlier.innerText()).toBe('For the earlier answers');
  expect(await line(page, 0).innerText()).toContain('looks sound');
  expect(await shown(page)).toBe(first);

  // The answer is changed before its plan stands: only what is planned with the newest is ever shown.
  await answer('Shows the fault').click();
  expect(await answer('Looks sound').getAttribute('aria-pressed')).toBe('false');
  expect(await answer('Shows the fault').getAttribute('aria-pressed')).toBe('true');
  await hold(false);
  await planned(page);
  const [next, order] = [await shown(page), await page.locator('.fault-path').innerText()];
  expect(await page.evaluate(() => (window as unknown as { shown: string[] }).shown.filter(Boolean))).toEqual([
    first,
    next,
  ]);
  expect(await earlier.isVisible()).toBe(false);
  expect(await page.evaluate(() => document.activeElement?.className)).toBe('fault-what');
  expect(await panel(page).locator('output').textContent()).toBe('');
  await page.reload();
  await planned(page);
  expect([await shown(page), await page.locator('.fault-path').innerText()]).toEqual([next, order]);

  // Who has gone on with the keyboard meanwhile stays there, and is told what is next.
  await page.getByRole('button', { name: 'Start this complaint again' }).click();
  await planned(page);
  await hold(true);
  await answer('Looks sound').click();
  const print = page.locator('.fault-acts').getByRole('button', { name: 'Print' });
  await print.focus();
  await hold(false);
  await planned(page);
  const said = panel(page).locator('output');
  await expect.poll(() => said.textContent()).toBe(await shown(page));
  expect(await print.evaluate((e) => e === document.activeElement)).toBe(true);

  // Paper waits for no task.
  await hold(true);
  await answer('Looks sound').click();
  await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
  await planned(page);
  expect(troubles).toEqual([]);
  await context.close();
});
