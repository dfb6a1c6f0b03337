/** Which pages of the build before stand: those that rest on nothing that has changed, themselves or through what they use. */
import { expect, it } from 'vitest';
import { leadsTheSame, whatHolds } from '../../../src/steps/pages/kept-pages.ts';
import { ReadLog } from '../../../src/steps/pages/read-log.ts';
import { changed, notedSite, saidBy } from '../../../src/steps/pages/said.ts';
import { partOf, partsThatHold } from '../../../src/steps/search/index-pages.ts';
import type { SiteData } from '../../../src/steps/program/site-data.ts';

const rests = (reads: readonly string[], uses: readonly string[] = []) => ({ reads, uses });

it('falls with what it reads, and with what something it uses reads, however far off', () => {
  const made = {
    list: rests(['jobs/a title', 'jobs/b title']),
    menu: rests([], ['list']),
    // Two that use each other.
    left: rests([], ['right']),
    right: rests([], ['left', 'menu']),
    words: rests(['glossary/x term']),
  };
  const holds = whatHolds(made, new Set(['jobs/b title']));
  expect(holds(rests(['jobs/a body']))).toBe(true);
  expect(holds(rests(['jobs/b title']))).toBe(false);
  expect(holds(rests([], ['words']))).toBe(true);
  for (const name of ['list', 'menu', 'left', 'right']) expect(holds(rests([], [name])), name).toBe(false);
  // What nobody has made cannot be vouched for.
  expect(holds(rests([], ['unheard of']))).toBe(false);
  expect(whatHolds(made, new Set())(rests([], ['left', 'words']))).toBe(true);
});

it('notes for each page what it reads, and for what is made meanwhile too', async () => {
  const log = new ReadLog();
  const first = await log.page(async () => {
    log.note('a');
    log.uses('list');
    await log.making('list', () => Promise.resolve(log.note('b')));
    return 'first';
  });
  const second = await log.page(() => {
    log.uses('list');
    log.note('c');
    return Promise.resolve('second');
  });
  expect(first).toEqual({ html: 'first', rests: { reads: ['a', 'b'], uses: ['list'] } });
  expect(second.rests).toEqual({ reads: ['c'], uses: ['list'] });
  expect(log.made).toEqual({ list: { reads: ['b'], uses: [] } });
  // Between pages nobody listens.
  log.note('d');
  expect(second.rests.reads).toEqual(['c']);
});

it('tells apart what is made at the same time, and counts for all what it cannot place', async () => {
  const log = new ReadLog();
  const later: (() => void)[] = [];
  const waiting = () => new Promise<void>((go) => later.push(go));
  const page = await log.page(async () => {
    const list = log.making('list', async () => {
      await waiting();
      log.note('title');
    });
    const names = log.making('names', async () => {
      log.uses('list');
      await waiting();
      log.note('id');
    });
    await new Promise(setImmediate);
    for (const go of later) go();
    await Promise.all([list, names]);
    return 'page';
  });
  expect(log.made).toEqual({ list: { reads: ['title'], uses: [] }, names: { reads: ['id'], uses: ['list'] } });
  expect(page.rests).toEqual({ reads: ['title', 'id'], uses: ['list'] });

  let go: () => void = () => undefined;
  const outside = new Promise<void>((done) => (go = done)).then(() => log.note('heard from outside'));
  const other = await log.page(async () => {
    await log.making('late', () => (go(), outside));
    return 'other';
  });
  expect(other.rests.reads).toEqual(['heard from outside']);
  expect(log.made['late']?.reads).toEqual(['heard from outside']);
});

const site = (data: Readonly<Record<string, unknown>>, body: string, others: readonly string[] = []): SiteData => ({
  store: new Map([
    [
      'jobs',
      new Map(
        ['belt', ...others].map(
          (id) => [id, { id, data, body, filePath: `content/knowledge/jobs/${id}.mdx` }] as const,
        ),
      ),
    ],
  ]),
  edition: { day: '2026-11-25', mark: '0f3a9c1d' },
  samples: { jobs: { id: 'belt', file: 'content/knowledge/jobs/belt.mdx', text: body } },
});

it('sees each thing that can change by itself: a field, one that comes or goes, the text, which files there are', () => {
  const before = saidBy(site({ title: 'Belt', kinds: ['a'] }, 'Turn it.'));
  const differs = (now: SiteData) => [...changed(before, saidBy(now))].sort();
  expect(differs(site({ title: 'Belt', kinds: ['a'] }, 'Turn it.'))).toEqual([]);
  expect(differs(site({ title: 'Belts', kinds: ['a'] }, 'Turn it.'))).toEqual(['jobs/belt title']);
  expect(differs(site({ title: 'Belt', kinds: ['a', 'b'] }, 'Turn it.'))).toEqual(['jobs/belt kinds']);
  expect(differs(site({ title: 'Belt' }, 'Turn it.'))).toEqual(['jobs/belt *', 'jobs/belt kinds']);
  expect(differs(site({ title: 'Belt', kinds: ['a'] }, 'Turn it twice.'))).toEqual(['jobs/belt body', 'sample jobs']);
  expect(differs(site({ title: 'Belt', kinds: ['a'] }, 'Turn it.', ['cord']))).toEqual([
    'jobs',
    'jobs/cord *',
    'jobs/cord body',
    'jobs/cord kinds',
    'jobs/cord title',
  ]);
});

it('notes a sample that a page shows, and gives a sign in place of the edition', async () => {
  const log = new ReadLog();
  const { samples, edition } = notedSite(site({ title: 'Belt' }, 'Turn it.'), log);
  const page = await log.page(() => Promise.resolve(`${samples['jobs']?.text} ${edition.standIn?.('en')}`));
  expect(page.rests.reads).toEqual(['sample jobs']);
  expect(page.html).not.toContain('0f3a9c1d');
});

it('holds while links lead where they led: with a page more, not with one less or one that is found before another', () => {
  const before = ['index.html', 'jobs/belt.html', 'old/index.html', 'talk.html'];
  expect(leadsTheSame(before, before)).toBe(true);
  expect(leadsTheSame(before, [...before, 'jobs/cord.html'])).toBe(true);
  expect(leadsTheSame(before, before.slice(1))).toBe(false);
  // "/old/" meant old/index.html, and would now mean this; "/talk" would mean the file without an ending.
  expect(leadsTheSame(before, [...before, 'old.html'])).toBe(false);
  expect(leadsTheSame(before, [...before, 'talk'])).toBe(false);
});

it('keeps a part of the index while its pages stand and the index is parted the same way', () => {
  const pages = (count: number) => Array.from({ length: count }, (_, at) => `notes/${at}.html`);
  const changed = 'notes/7.html';
  const part = partOf(changed, 2);
  const all = [0, 1];
  const holding = (count: number, before: number, stands = (page: string) => page !== changed) => [
    ...partsThatHold(pages(count), stands, before),
  ];
  expect(holding(501, 501)).toEqual(all.filter((number) => number !== part));
  expect(holding(501, 501, () => true)).toEqual(all);
  // One index for 500 pages, two parts above.
  expect(holding(500, 500)).toEqual([]);
  expect(holding(500, 500, () => true)).toEqual([0]);
  expect(holding(501, 500, () => true)).toEqual([]);
  expect(holding(500, 501, () => true)).toEqual([]);
  // More pages, more files in each part: 32 of them up to 768 pages.
  expect(holding(768, 767, () => true)).toEqual(all);
  expect(holding(769, 768, () => true)).toEqual([]);
});
