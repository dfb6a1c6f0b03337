/** The store in Chromium: full, shut off, spoilt, older, newer, and two windows at once. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, afterEach, expect, test } from 'vitest';
import type * as DeviceModule from '../../../src/browser/device/index.ts';
import { serveFolder, type Serving } from '../../../src/commands/support/serve.ts';
import { launch } from '../../e2e/support/browser.ts';

interface Note {
  readonly a: string;
  readonly b: string;
}
type Device = typeof DeviceModule & { readonly noteKind: DeviceModule.Kind<Note> };
declare const window: Window & { device: Device };

/** A kind of record as a page would make one; version 1 called the first part `first`. */
const entry = `
export * from ${JSON.stringify(fileURLToPath(new URL('../../../src/browser/device/index.ts', import.meta.url)))};
export const noteKind = {
  name: 'note', version: 2, precious: true,
  read: (d, v) => d && typeof d.b === 'string' ? { a: String(v === 1 ? d.first : d.a), b: d.b } : undefined,
};`;

let folder: string;
let serving: Serving;
let browser: Browser;
let context: BrowserContext;
let page: Page;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'almanac-device-'));
  const { outputFiles } = await build({
    stdin: { contents: entry, resolveDir: folder, loader: 'ts' },
    bundle: true,
    format: 'iife',
    globalName: 'device',
    write: false,
  });
  // A script's top-level var is a property of the window.
  writeFileSync(join(folder, 'device.js'), outputFiles[0]?.text ?? '');
  writeFileSync(join(folder, 'index.html'), '<!doctype html><title>Device</title><script src="device.js"></script>');
  serving = await serveFolder(folder);
  browser = await launch();
});
afterAll(async () => {
  await browser.close();
  await serving.close();
  rmSync(folder, { recursive: true });
});
beforeEach(async () => {
  context = await browser.newContext();
  page = await opened();
});
afterEach(() => context.close());

async function opened(before = ''): Promise<Page> {
  const next = await context.newPage();
  if (before) await next.addInitScript(before);
  await next.goto(serving.address);
  return next;
}

const stored = (at: Page = page): Promise<Record<string, string>> =>
  at.evaluate(() => Object.fromEntries(Object.keys(localStorage).map((k) => [k, localStorage.getItem(k) ?? ''])));
/** What one window stored reaches another, which may live in another process, a moment later. */
const reached = (at: Page, text: string) =>
  at.waitForFunction((text) => Object.values(localStorage).some((stored) => String(stored).includes(text)), text);
const saveNote = (at: Page, a: string, b: string) =>
  at.evaluate(([a, b]) => window.device.save(window.device.ofTicket(window.device.noteKind, '1432'), { a, b }), [
    a,
    b,
  ] as const);
const loadNote = (at: Page) =>
  at.evaluate(() => window.device.load(window.device.ofTicket(window.device.noteKind, '1432')) ?? null);
const state = (at: Page) =>
  at.evaluate(() => {
    const { health, troubles } = window.device.deviceState();
    return { health, troubles: troubles.map((t) => t.what) };
  });
const key = 'almanac/ticket/1432/note/';

test('a record is there again in another page, by ticket', async () => {
  await saveNote(page, 'x', 'y');
  const other = await opened();
  expect(await loadNote(other)).toEqual({ a: 'x', b: 'y' });
  expect(Object.keys(await stored())).toEqual([key]);
  expect(
    await other.evaluate(() => window.device.load(window.device.ofTicket(window.device.noteKind, '7')) ?? null),
  ).toBe(null);
});

test('names with any letters in them make keys of their own', async () => {
  const keys = await page.evaluate(() =>
    ['a/b', 'a', 'ñ 1', '%2F'].map((t) => window.device.ofTicket(window.device.noteKind, t, 'b/c').key),
  );
  expect(new Set(keys).size).toBe(4);
});

test('a record of an older schema is read, and one of a newer is said and not written over', async () => {
  await page.evaluate((key) => localStorage.setItem(key, '{"v":1,"at":5,"data":{"first":"x","b":"y"}}'), key);
  expect(await loadNote(page)).toEqual({ a: 'x', b: 'y' });
  const newer = '{"v":9,"at":5,"data":{"other":"shape"}}';
  await page.evaluate(([key, text]) => localStorage.setItem(key, text), [key, newer] as const);
  expect(await loadNote(page)).toBe(null);
  expect(await state(page)).toEqual({ health: 'kept', troubles: ['newer'] });
  expect((await stored())[key]).toBe(newer);
  // Whoever goes on working gets room, and the newer record keeps a place of its own.
  await saveNote(page, 'mine', 'y');
  const all = await stored();
  expect(all[key]).toContain('mine');
  expect(Object.entries(all).filter(([k, text]) => k.startsWith('almanac-aside/') && text === newer)).toHaveLength(1);
});

test.each(['{', '{"v":2,"at":1,"data":{"b":7}}', 'hello', '{"v":2,"at":1,"data":null}'])(
  'a spoilt record (%s) is set aside, said, and the page goes on',
  async (text) => {
    await page.evaluate(([key, text]) => localStorage.setItem(key, text), [key, text] as const);
    expect(await loadNote(page)).toBe(null);
    expect((await state(page)).troubles).toEqual(['corrupt']);
    await saveNote(page, 'new', 'y');
    const asides = await page.evaluate(() => window.device.setAsides());
    expect(asides.map((a) => a.key)).toEqual([key]);
    expect((await stored())[asides[0]?.aside ?? '']).toBe(text);
    expect(await loadNote(page)).toEqual({ a: 'new', b: 'y' });
  },
);

/** Fills the storage to the last few letters. */
const fillUp = () => {
  let size = 1 << 20;
  let n = 0;
  while (size >= 1) {
    try {
      localStorage.setItem(`filler-${n}`, 'x'.repeat(size));
      n += 1;
    } catch {
      size = size >> 1;
    }
  }
};

test('on a full device the page keeps the record, says so, and stores it once there is room', async () => {
  await page.evaluate(fillUp);
  await saveNote(page, 'kept in the page', 'y');
  expect((await state(page)).health).toBe('full');
  expect(await loadNote(page)).toEqual({ a: 'kept in the page', b: 'y' });
  expect((await stored())[key]).toBe(undefined);
  await page.evaluate(() => {
    for (const k of Object.keys(localStorage)) if (k.startsWith('filler')) localStorage.removeItem(k);
    window.device.save(window.device.ofTicket(window.device.noteKind, '8'), { a: 'next', b: '' });
  });
  expect((await state(page)).health).toBe('kept');
  expect((await stored())[key]).toContain('kept in the page');
});

test('on a full device a spoilt record stays where it is, and what is typed stays in the page', async () => {
  const spoilt = `{${'spoilt '.repeat(50)}`;
  await page.evaluate(([key, text]) => localStorage.setItem(key, text), [key, spoilt] as const);
  await page.evaluate(fillUp);
  expect(await loadNote(page)).toBe(null);
  await saveNote(page, 'typed', 'y');
  expect((await stored())[key]).toBe(spoilt);
  expect(await loadNote(page)).toEqual({ a: 'typed', b: 'y' });
  expect((await state(page)).troubles).toEqual(['corrupt']);
});

test.each([
  [
    'shut off',
    `Object.defineProperty(window, 'localStorage', { get() { throw new DOMException('no', 'SecurityError') } });`,
  ],
  ['absent', `Object.defineProperty(window, 'localStorage', { value: null });`],
  [
    'a private window’s, which takes nothing',
    `Storage.prototype.setItem = () => { throw new DOMException('no', 'QuotaExceededError') };`,
  ],
])('with a storage that is %s everything goes on in the page, and leaving it is asked about', async (_, before) => {
  const errors: string[] = [];
  const closed = await opened(before);
  closed.on('pageerror', (e) => errors.push(e.message));
  await saveNote(closed, 'x', 'y');
  expect(await loadNote(closed)).toEqual({ a: 'x', b: 'y' });
  expect((await state(closed)).health).toBe('denied');
  await closed.evaluate(() => void window.device.chooseTicket('1432'));
  expect(await closed.evaluate(() => window.device.bench())).toEqual({ ticket: '1432', machine: '' });
  expect(
    await closed.evaluate(() => {
      const leaving = new Event('beforeunload', { cancelable: true });
      window.dispatchEvent(leaving);
      return leaving.defaultPrevented;
    }),
  ).toBe(true);
  expect(errors).toEqual([]);
});

test('two windows that changed different parts of a record are brought together', async () => {
  await saveNote(page, 'a', 'b');
  const other = await opened();
  await loadNote(other);
  await loadNote(page);
  await saveNote(page, 'A', 'b');
  await reached(other, '"A"');
  await saveNote(other, 'a', 'B');
  await reached(page, '"B"');
  expect(await loadNote(page)).toEqual({ a: 'A', b: 'B' });
  expect((await state(other)).troubles).toEqual([]);
});

test.each(['mine', 'theirs'] as const)(
  'two windows that changed the same part are asked, and both stay on the device (%s)',
  async (keep) => {
    await saveNote(page, 'a', 'b');
    const other = await opened();
    await loadNote(other);
    await saveNote(page, 'first', 'b');
    await reached(other, 'first');
    await saveNote(other, 'second', 'b');
    // Typing goes on while the question stands, also after the page was told to read again.
    expect(await loadNote(other)).toEqual({ a: 'second', b: 'b' });
    await saveNote(other, 'second, longer', 'b');
    expect((await state(other)).troubles).toEqual(['conflict']);
    expect((await stored(other))[key]).toContain('first');
    expect(Object.values(await stored(other)).join()).toContain('second, longer');
    await other.evaluate((keep) => {
      const [asked] = window.device.deviceState().troubles;
      if (asked?.what === 'conflict') asked.settle(keep);
    }, keep);
    expect((await state(other)).troubles).toEqual([]);
    const [kept, asideText] = keep === 'mine' ? ['second, longer', 'first'] : ['first', 'second, longer'];
    const all = await stored(other);
    expect(all[key]).toContain(kept);
    const aside = Object.keys(all).filter((k) => k.startsWith('almanac-aside/'));
    expect(aside.map((k) => all[k])).toEqual([expect.stringContaining(asideText)]);
    // Pages read again what they are told has changed.
    await loadNote(other);
    await saveNote(other, 'third', 'b');
    expect((await stored(other))[key]).toContain('third');
  },
);

test('a change in one window is told in the other', async () => {
  const other = await opened();
  const heard = other.evaluate(
    (key) =>
      new Promise<[string, boolean]>((done) => {
        window.device.watch(key, (k, elsewhere) => done([k, elsewhere]));
      }),
    'almanac/ticket/1432/',
  );
  await saveNote(page, 'a', 'b');
  expect(await heard).toEqual([key, true]);
});

test('each window keeps its own bench; a new one starts with the last choice', async () => {
  const other = await opened();
  await page.evaluate(() => {
    window.device.chooseTicket('1');
    window.device.chooseMachine('mp-350');
  });
  await other.evaluate(() => void window.device.chooseTicket('2'));
  for (const [at, ticket] of [
    [page, '1'],
    [other, '2'],
  ] as const) {
    await at.reload();
    expect((await at.evaluate(() => window.device.bench())).ticket).toBe(ticket);
  }
  expect(await (await opened()).evaluate(() => window.device.bench().ticket)).toBe('2');
});

test('a page taken back out of the browser’s memory is at the ticket the window has gone on to', async () => {
  const said = await page.evaluate(() => {
    const { device } = window;
    device.chooseTicket('1431');
    const here = sessionStorage.getItem('almanac-bench') ?? '';
    const heard: string[] = [];
    device.watchBench(({ ticket }) => heard.push(ticket));
    sessionStorage.setItem('almanac-bench', here.replace('1431', '1432'));
    dispatchEvent(new PageTransitionEvent('pageshow', { persisted: true }));
    return [...heard, device.bench().ticket];
  });
  expect(said).toEqual(['1432', '1432']);
});

test('a ticket brings its machine back; a new one has none, and the change can be taken back', async () => {
  const now = () => page.evaluate(() => window.device.bench());
  await page.evaluate(() => {
    window.device.chooseTicket('1');
    window.device.chooseMachine('mp-350');
    Object.assign(window, { back: window.device.chooseTicket('2') });
  });
  expect(await now()).toEqual({ ticket: '2', machine: '' });
  await page.evaluate(() => (window as unknown as { back: () => void }).back());
  expect(await now()).toEqual({ ticket: '1', machine: 'mp-350' });
  await page.evaluate(() => {
    window.device.chooseTicket('2');
    window.device.chooseMachine('mp-tw');
    window.device.chooseTicket('1');
  });
  expect(await now()).toEqual({ ticket: '1', machine: 'mp-350' });
});

test('what is put on the sheet counts once however often it is pressed, from any window', async () => {
  const put = (at: Page, sentence: string) =>
    at.evaluate(
      (sentence) =>
        void window.device.putOnSheet({ kind: 'result', title: 'Belt tension', sentence, link: '/x/' }, '1432'),
      sentence,
    );
  const other = await opened();
  await put(page, 'Push 4.2 mm');
  await put(page, 'Push 4.2 mm');
  await put(other, 'Push 5 mm');
  expect(await page.evaluate(() => window.device.countOnSheet('1432'))).toBe(2);
  expect((await page.evaluate(() => window.device.entriesOf('1432'))).map((e) => e.sentence)).toEqual([
    'Push 4.2 mm',
    'Push 5 mm',
  ]);
});

test('work without a number gets one, and can be given back', async () => {
  await page.evaluate(() => {
    const { device } = window;
    device.save(device.ofTicket(device.noteKind, '', 'one'), { a: '1', b: '' });
    device.save(device.ofTicket(device.noteKind, '', 'two'), { a: '2', b: '' });
    device.save(device.ofTicket(device.noteKind, '1432', 'two'), { a: 'already there', b: '' });
  });
  const keys = async () =>
    Object.entries(await stored()).map(([k, v]) => `${k} ${(JSON.parse(v) as { data: Note }).data.a}`);
  const before = (await keys()).sort();
  await page.evaluate(() => Object.assign(window, { back: window.device.moveTicket('', '1432') }));
  expect((await keys()).sort()).toEqual([
    'almanac/ticket//note/two 2',
    'almanac/ticket/1432/note/one 1',
    'almanac/ticket/1432/note/two already there',
  ]);
  await page.evaluate(() => (window as unknown as { back: () => void }).back());
  expect((await keys()).sort()).toEqual(before);
});

test('a ticket given back brings along what was written under it since', async () => {
  await page.evaluate(() => {
    const { device } = window;
    const note = (ticket: string, name: string, a: string) =>
      device.save(device.ofTicket(device.noteKind, ticket, name), { a, b: '' });
    note('', 'head', 'begun');
    const back = device.chooseTicket('1432');
    device.load(device.ofTicket(device.noteKind, '1432', 'head'));
    note('1432', 'head', 'begun and finished');
    note('1432', 'more', 'added');
    back();
  });
  const all = Object.entries(await stored()).filter(([k]) => k.includes('/note/'));
  expect(all.map(([k, v]) => `${k} ${(JSON.parse(v) as { data: Note }).data.a}`).sort()).toEqual([
    'almanac/ticket//note/head begun and finished',
    'almanac/ticket//note/more added',
  ]);
});

test('what was written in the place of a record taken out is set aside when that comes back', async () => {
  await saveNote(page, 'before', '');
  await page.evaluate((key) => Object.assign(window, { back: window.device.takeOut([key]) }), key);
  await saveNote(page, 'since', '');
  await page.evaluate(() => (window as unknown as { back: () => void }).back());
  expect(await loadNote(page)).toEqual({ a: 'before', b: '' });
  const aside = Object.entries(await stored()).filter(([k]) => k.startsWith('almanac-aside/'));
  expect(aside.map(([, text]) => text)).toEqual([expect.stringContaining('since')]);
});

test('records that are taken out can be put back', async () => {
  await saveNote(page, 'x', 'y');
  const before = await stored();
  await page.evaluate((key) => Object.assign(window, { back: window.device.takeOut([key]) }), key);
  expect(await loadNote(page)).toBe(null);
  await page.evaluate(() => (window as unknown as { back: () => void }).back());
  expect(await stored()).toEqual(before);
});
