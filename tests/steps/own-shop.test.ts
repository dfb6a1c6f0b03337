/** A fresh shop, built from a folder of its own: whole, and with nothing of the demo shop in it. The shop is made up. */
import { spawnSync } from 'node:child_process';
import {
  appendFileSync,
  copyFileSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, extname, join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { parse } from 'yaml';
import { fieldRows } from '../../src/lib/fields.ts';
import { kinds } from '../../src/schemas/kinds.ts';
import { shop as shopSchema } from '../../src/schemas/shop.ts';
import { chooseShop } from '../../src/steps/support/choose-shop.ts';
import { localDay } from '../../src/steps/support/local-day.ts';
import { buildPlace } from './build-place.ts';

const place = mkdtempSync(join(tmpdir(), 'almanac-own-'));
const builtAt = await buildPlace('own');
const dist = join(builtAt, 'dist');
const distByAstro = join(builtAt, 'by-astro');
const flags = {
  name: 'Ribera Saws',
  address: 'Calle 4; Puebla Nueva',
  phone: '555 010 0199',
  hours: 'Monday to Friday, 8 to 17',
  currency: 'EUR',
  rate: '42.50',
  tax: '21',
  languages: 'en',
};
const unwanted = [
  'calculators/split-pulley',
  'calculators/fault-order',
  'guides/cutting-wet',
  'jobs/hand-back-test',
  'jobs/recoil-cord',
  'tables/bolt-torques',
  'explainers/warm-do-not-hammer',
  'faults/hard-to-start',
  'trouble/will-not-start',
];
const yard = `---
title: Our yard
summary: Where saws wait, and where they are washed.
reader: mechanic
reviewed: 2026-01-31
sources: [common-practice]
---

What a belt looks like that came in last week:

![A worn belt](./belt.jpg)
`;
let built: { status: number | null; text: string };
let byAstro: typeof built;
/** What each build said last: how many pages there are, and how many of them it took from the one before. */
const said: string[] = [];

beforeAll(() => {
  const given = Object.entries(flags).flatMap(([flag, text]) => [`--${flag}`, text]);
  spawnSync(process.execPath, ['src/commands/shop-new.ts', join(place, 'shop'), ...given]);
  // What the shop sets beyond the questions, and what it leaves out: a page of each kind, one of them a calculator.
  const shop = join(place, 'shop');
  appendFileSync(
    join(shop, 'shop.yaml'),
    `site: https://example.org/saws/
mark: sign.svg
color: "#5b2a86"
notice: Closed on the first of May.
front:
  question: What does the machine need?
kinds:
  other: Pressure washers
leaveOut: [${unwanted.join(', ')}]
`,
  );
  writeFileSync(
    join(shop, 'sign.svg'),
    '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 20 10"><path d="M0 0h20v10H0z" fill="#5b2a86"/></svg>',
  );
  mkdirSync(join(shop, 'pages'), { recursive: true });
  writeFileSync(
    join(shop, 'pages/legal.mdx'),
    '---\ntitle: Legal notice\nsummary: Who is behind this site and how to reach them.\nreviewed: 2026-01-31\n---\n\nRibera Saws, register 12.\n',
  );
  // This test is at work on it all along, also while Astro builds by itself: no command beside it moves the link.
  chooseShop(process.cwd(), shop);
  const env = { ...process.env, SHOP: join(place, 'shop'), ASTRO_TELEMETRY_DISABLED: '1', NODE_ENV: 'production' };
  const run = (...words: string[]) => {
    const ran = spawnSync(process.execPath, words, { env, encoding: 'utf8' });
    return { status: ran.status, text: ran.stdout + ran.stderr };
  };
  mkdirSync(join(shop, 'explainers'), { recursive: true });
  for (const name of ['Our yard', 'Old yard'])
    writeFileSync(join(shop, `explainers/${name.toLowerCase().replace(' ', '-')}.mdx`), yard.replace('Our yard', name));
  copyFileSync('tests/steps/fixtures/picture-site/content/shop/jobs/worn-belt.jpg', join(shop, 'explainers/belt.jpg'));
  // Each build after the first takes the program it has kept, and of its pages those that still say the same.
  const edits = [
    () => undefined,
    () => rmSync(join(shop, 'explainers/old-yard.mdx')),
    () => {
      mkdirSync(join(shop, 'hazards'), { recursive: true });
      replaceIn(
        'content/knowledge/hazards/kickback.yaml',
        join(shop, 'hazards/kickback.yaml'),
        /title: .*/,
        'title: Saw jumps',
      );
      replaceIn(
        'content/knowledge/jobs/air-filter-and-intake.mdx',
        join(shop, 'jobs/air-filter-and-intake.mdx'),
        /^title: .*/m,
        'title: The filter',
      );
      writeFileSync(join(shop, 'explainers/new-yard.mdx'), yard.replace('Our yard', 'New yard'));
    },
    () => {
      appendFileSync(join(shop, 'pages/legal.mdx'), '\nHeld by the county.\n');
      const page = join(shop, 'explainers/our-yard.mdx');
      replaceIn(page, page, /^reviewed: .*/m, `reviewed: ${localDay()}`);
    },
  ];
  for (const edit of edits) {
    edit();
    built = run('src/commands/build.ts', '--outDir', dist);
    said.push(built.text.trim().split('\n').at(-1) ?? '');
    if (built.status !== 0) break;
  }
  byAstro = run('node_modules/astro/bin/astro.mjs', 'build', '--outDir', distByAstro);
}, 600_000);
afterAll(() => {
  rmSync(place, { recursive: true, force: true });
  rmSync(builtAt, { recursive: true, force: true });
  rmSync('content/chosen-shop', { force: true });
});

/** Copies a file with one thing in it changed. */
function replaceIn(from: string, to: string, what: RegExp, by: string): void {
  const before = readFileSync(from, 'utf8');
  const after = before.replace(what, by);
  if (after === before) throw new Error(`${from} holds nothing like ${what.source}.`);
  mkdirSync(dirname(to), { recursive: true });
  writeFileSync(to, after);
}

const pages = () => readdirSync(dist, { recursive: true, encoding: 'utf8' });

it('builds whole, without a machine and in English alone', () => {
  expect(built.status, built.text.slice(-2000)).toBe(0);
  expect(pages()).toEqual(expect.arrayContaining(['index.html', 'sw.js', 'calculators/belt-tension.html']));
  expect(pages().filter((f) => /^es(?:\.html|[\\/])/.test(f))).toEqual([]);
  expect(readFileSync(join(dist, 'shop.html'), 'utf8')).toContain('Ribera Saws');
  // Its search has one list, which names no other to ask for.
  expect(pages().filter((f) => /^pagefind[\\/]list\./.test(f))).toEqual([join('pagefind', 'list.en.js')]);
  expect(readFileSync(join(dist, 'pagefind/list.en.js'), 'utf8')).toContain(String.raw`\"beside\":[]`);
});

it('takes pages from the build before, and makes those that say something else', () => {
  const counts = said.map((line) => {
    const [, all = '', kept = '0'] =
      /^(\d+) pages built in [\d.]+ s\.(?: (\d+) of them stand as they were\.)?$/.exec(line) ?? [];
    return { made: Number(all) - Number(kept), kept: Number(kept) };
  });
  expect(counts, said.join('\n')).toHaveLength(4);
  // An article that goes is missed on every page that could lead to it.
  expect(counts[1]?.kept).toBe(0);
  // A new title stands in lists, and the edition of the day on every page: neither makes those that do not say it.
  expect(counts[2]?.kept).toBeGreaterThan(10);
  // The two that were edited, and the page about writing, which shows the shortest own page as a sample.
  expect(counts[3]?.made).toBe(3);
});

it('is to the byte what Astro makes by itself, whatever was taken from the builds before', () => {
  expect(text('pages/legal.html')).toContain('Held by the county.');
  expect(text('hazards.html')).toContain('Saw jumps');
  expect(text('explainers.html')).toContain('New yard');
  expect(text('explainers/our-yard.html')).toMatch(/_astro\/belt\.[\w-]+\.webp/);
  expect(pages()).not.toContain(join('explainers', 'old-yard.html'));
  expect(byAstro.status, byAstro.text.slice(-2000)).toBe(0);
  const all = (folder: string) =>
    readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter((e) => e.isFile())
      .map((e) => join(e.parentPath, e.name).slice(folder.length))
      .sort();
  expect(all(dist)).toEqual(all(distByAstro));
  const other = all(dist).filter((f) => !readFileSync(join(dist, f)).equals(readFileSync(join(distByAstro, f))));
  expect(other).toEqual([]);
});

it('holds no name of the demo shop, its place or its machines', () => {
  const demo = parse(readFileSync('content/shop/shop.yaml', 'utf8')) as {
    name: string;
    address: string[];
    phone: string;
  };
  const machines = readdirSync('content/shop/machines').map(
    (file) => (parse(readFileSync(join('content/shop/machines', file), 'utf8')) as { name: string }).name,
  );
  const names = [demo.name, ...demo.address, demo.phone, ...machines, ...machines.map((m) => m.split(' ')[0] ?? '')];
  const texts = pages().filter((f) => ['.html', '.js', '.css', '.txt', '.webmanifest', '.svg'].includes(extname(f)));
  const found = texts.flatMap((file) => {
    const text = readFileSync(join(dist, file), 'utf8');
    return names
      .filter((name) => text.includes(name.replaceAll('&', '&amp;')) || text.includes(name))
      .map((n) => `${file}: ${n}`);
  });
  expect(names.length).toBeGreaterThan(8);
  expect(found).toEqual([]);
});

const text = (file: string) => readFileSync(join(dist, file), 'utf8');

it('publishes nothing of what it leaves out: no page, no link, no hit of the search', () => {
  for (const page of unwanted) {
    expect(pages(), page).not.toContain(`${page}.html`);
    const found = pages()
      .filter((f) => extname(f) === '.html' && f !== '404.html')
      .filter((f) => new RegExp(`href="[^"]*${page}\\.html`).test(text(f)));
    expect(found, page).toEqual([]);
    expect(text('pagefind/list.en.js'), page).not.toContain(`${page}.html`);
  }
  // Pages that link there stand, with the words of the link.
  expect(text('faults/heavy-to-pull.html')).toContain('<h1');
});

it('carries its mark, its color, its notice, its words and its own page', () => {
  const start = text('index.html');
  expect(start).toContain('What does the machine need?');
  expect(start).toContain('Closed on the first of May.');
  expect(start).toMatch(/<img class="shop-mark" src="mark\.svg"/);
  expect(start).toContain('href="pages/legal.html"');
  expect(text('mark.svg')).toContain('#5b2a86');
  expect(pages()).toEqual(expect.arrayContaining(['mark-192.png', 'mark-512.png', 'apple-touch-icon.png']));
  const sheets = pages().filter((f) => extname(f) === '.css');
  expect(sheets.some((f) => text(f).includes('#5b2a86'))).toBe(true);
  expect(sheets.every((f) => !text(f).includes('#0a5866'))).toBe(true);
});

it('gives each page its card, and search engines the steps of a job with its cautions', () => {
  const job = text('jobs/recoil-spring-and-pawls.html');
  expect(job).toContain(
    '<meta property="og:image" content="https://example.org/saws/cards/jobs/recoil-spring-and-pawls.png"',
  );
  expect(pages()).toContain(join('cards', 'jobs', 'recoil-spring-and-pawls.png'));
  expect(text('sw.js')).not.toContain('cards/jobs');
  const [, json = ''] = /<script type="application\/ld\+json">(.*?)<\/script>/.exec(job) ?? [];
  const howTo = JSON.parse(json) as { '@type': string; step: { itemListElement: object[] }[] };
  expect(howTo['@type']).toBe('HowTo');
  expect(howTo.step.flatMap((section) => section.itemListElement).length).toBeGreaterThan(2);
  expect(json).toMatch(/"HowToTip","text":"(?:Danger|Warning|Caution)/);
  // A page that only explains has no steps to tell.
  expect(text('explainers/how-a-belt-carries-power.html')).not.toContain('application/ld+json');
});

it('tells whoever writes of every component and every field', () => {
  const writing = text('writing.html');
  const components = readdirSync('src/components/writing/examples').filter((f) => f.endsWith('.mdx'));
  for (const file of components) expect(writing).toContain(`id="component-${file.slice(0, -4)}"`);
  for (const { schema } of [...Object.values(kinds), { schema: shopSchema }])
    for (const { name } of fieldRows(schema)) expect(writing).toContain(`<code>${name}</code>`);
  const ids = [...writing.matchAll(/\sid="([^"]+)"/g)].map((m) => m[1]);
  expect(ids.filter((id, i) => ids.indexOf(id) < i)).toEqual([]);
});
