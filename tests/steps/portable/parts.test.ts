/** The portable step piece by piece, on text small enough to read. */
import { mkdtemp, mkdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { runInNewContext } from 'node:vm';
import { expect, test } from 'vitest';
import { relativeCss } from '../../../src/steps/portable/css.ts';
import { applyEdits } from '../../../src/steps/portable/edits.ts';
import { readRuntime } from '../../../src/steps/portable/island-runtime.ts';
import { ClassicScripts } from '../../../src/steps/portable/classic-scripts.ts';
import { HashedFiles } from '../../../src/steps/portable/hashed-files.ts';
import { Islands } from '../../../src/steps/portable/islands.ts';
import { needsOf } from '../../../src/steps/portable/chunk-needs.ts';
import { lostAnchors, relink, type SiteFiles } from '../../../src/steps/portable/links.ts';
import { makePortable } from '../../../src/steps/portable/make-portable.ts';
import { parsePage } from '../../../src/steps/portable/parse-page.ts';
import { fileFor, relativePath, rootOf } from '../../../src/steps/portable/site-paths.ts';

const files = new Set([
  'index.html',
  'jobs.html',
  'jobs/belt.html',
  'es/guides/agua.html',
  'mark.svg',
  '_astro/a.woff2',
  '404.html',
]);
const site: SiteFiles = { files, base: '/shop/', leftOut: new Set(['jobs/cord.html', 'es/guides/polvo.html']) };
const ids = new Map([
  ['jobs/belt.html', new Set(['step-2'])],
  ['index.html', new Set<string>()],
]);

function linked(file: string, html: string): { html: string; problems: readonly string[] } {
  const page = parsePage(file, html);
  const { edits, problems, anchors } = relink(page, site, () => false);
  return {
    html: applyEdits(html, edits),
    problems: [...problems, ...lostAnchors(anchors, ids)].map((p) => `${p.file} ${p.link}: ${p.why}`),
  };
}

test('edits change what they name and nothing else, and two may not overlap', () => {
  expect(
    applyEdits('abcdef', [
      { start: 4, end: 5, text: 'X' },
      { start: 1, end: 2, text: '' },
    ]),
  ).toBe('acdXf');
  expect(() =>
    applyEdits('abcdef', [
      { start: 0, end: 3, text: '' },
      { start: 2, end: 4, text: '' },
    ]),
  ).toThrow('overlap');
});

test('an address means a file with or without slash and ending', () => {
  expect(fileFor('/', files)).toBe('index.html');
  for (const address of ['/jobs/belt/', '/jobs/belt', '/jobs/belt.html'])
    expect(fileFor(address, files)).toBe('jobs/belt.html');
  expect(fileFor('/jobs/', files)).toBe('jobs.html');
  expect(fileFor('/jobs/chain/', files)).toBeUndefined();
});

test('the way from page to file and to the top is relative', () => {
  expect(relativePath('es/guides/agua.html', 'jobs/belt.html')).toBe('../../jobs/belt.html');
  expect(relativePath('index.html', 'a b#c.html')).toBe('a%20b%23c.html');
  expect([rootOf('index.html'), rootOf('jobs/belt.html'), rootOf('es/guides/agua.html')]).toEqual([
    './',
    '../',
    '../../',
  ]);
});

test('links keep their query and anchor; outside addresses stay as they are', () => {
  const { html, problems } = linked(
    'es/guides/agua.html',
    '<a href="/jobs/belt/?x=1&amp;y=2#step-2">a</a><a href="https://example.org/">b</a><a href="mailto:a@b.c">c</a><img src="/mark.svg" srcset="/mark.svg 1x, /mark.svg 2x">',
  );
  expect(problems).toEqual([]);
  expect(html).toBe(
    '<a href="../../jobs/belt.html?x=1&amp;y=2#step-2">a</a><a href="https://example.org/">b</a><a href="mailto:a@b.c">c</a><img src="../../mark.svg" srcset="../../mark.svg 1x, ../../mark.svg 2x">',
  );
});

test('a link to no page, to no anchor, or without a leading slash is a problem with its page named', () => {
  const { problems } = linked(
    'index.html',
    '<a href="/jobs/chain/">a</a><a href="/jobs/belt/#step-3">b</a><a href="#nowhere">c</a><a href="belt/">d</a><a href="/%zz/">e</a>',
  );
  expect(problems).toEqual([
    'index.html /jobs/chain/: no such page or file',
    'index.html belt/: start links with a slash: /jobs/drive-belt-change/',
    'index.html /%zz/: no such page or file',
    'index.html /jobs/belt/#step-3: the page has nothing with the id "step-3"',
    'index.html #nowhere: the page has nothing with the id "nowhere"',
  ]);
});

test('a link to a page left out becomes its words, and goes with a row that holds nothing else', () => {
  const cases = [
    [
      '<p>See <a class="x" href="/jobs/cord/#step-2">the <b>cord</b></a>.</p>',
      '<p>See <span>the <b>cord</b></span>.</p>',
    ],
    ['<ul><li><a href="/jobs/cord/">Cord</a></li><li>Belt</li></ul>', '<ul><li>Belt</li></ul>'],
    ['<ul><li><a href="/jobs/cord/">Cord</a>, later</li></ul>', '<ul><li><span>Cord</span>, later</li></ul>'],
    ['<ol><li><a href="/jobs/cord/">Cord</a></li></ol>', '<ol><li><span>Cord</span></li></ol>'],
    [
      '<ul><li><ol><li><a href="/jobs/cord/">Cord</a></li></ol></li></ul>',
      '<ul><li><ol><li><span>Cord</span></li></ol></li></ul>',
    ],
    ['<svg><a href="/es/guides/polvo/"><path d="M0 0"></path></a></svg>', '<svg><g><path d="M0 0"></path></g></svg>'],
    ['<a href="/jobs/belt/">Belt</a>', '<a href="jobs/belt.html">Belt</a>'],
  ];
  for (const [html = '', wanted] of cases) expect(linked('index.html', html)).toEqual({ html: wanted, problems: [] });
});

test('the page a host shows anywhere has addresses from the top of the site', () => {
  expect(linked('404.html', '<a href="/jobs/">a</a>').html).toBe('<a href="/shop/jobs.html">a</a>');
});

test('a stylesheet names its fonts from where it stands', () => {
  expect(relativeCss('_astro/x.css', 'a{src:url(/_astro/a.woff2)}b{c:url("data:x")}', files)).toBe(
    'a{src:url(a.woff2)}b{c:url("data:x")}',
  );
  expect(() => relativeCss('_astro/x.css', 'a{b:url(/gone.png)}', files)).toThrow('_astro/x.css uses /gone.png');
});

test('what a later chunk needs is read from its imports', async () => {
  const code = 'import{a as e,b}from"./kit.x.js";import"./side.y.js";var q="import{z}from nothing";';
  expect(await needsOf('sum.js', code)).toEqual([
    { chunk: 'kit.x.js', names: ['a', 'b'] },
    { chunk: 'side.y.js', names: [] },
  ]);
});

test('an import of another form in a later chunk stops the build: it would be bundled a second time', async () => {
  for (const other of ['import*as k from"./kit.x.js";', 'import k from"./kit.x.js";', 'export{c}from"./kit.x.js";'])
    await expect(needsOf('sum.js', `import{a}from"./kit.x.js";${other}a();`), other).rejects.toThrow(
      /sum\.js has 2 imports and 1 of them are understood.*chunk-needs\.ts/,
    );
});

test('an import() that was not turned into a script tag stops the build: it would not work from disk', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'almanac-later-'));
  await writeFile(join(folder, 'part.js'), 'export const a = 1;');
  // A name the bundler cannot read is left as it stands.
  const scripts = new ClassicScripts(folder);
  await expect(scripts.bundle('const name = "./" + document.title; import(name);', [])).rejects.toThrow(
    /still loads a part with import\(.*classic-scripts\.ts/,
  );
  const { code, before } = await scripts.bundle("import('./part.js').then(console.log);", []);
  expect(code).toContain('part.js');
  expect(before).toEqual([]);
  await rm(folder, { recursive: true });
});

test('a chunk stands after what it needs, once, and takes it from there', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'almanac-chunks-'));
  const chunks = {
    'base.js': 'var n=1;export{n as a};',
    'kit.js': 'import{a as n}from"./base.js";var k=n+1;export{k as default};',
    'topic.js': 'import{default as k}from"./kit.js";import{a as n}from"./base.js";var t=[n,k];export{t};',
    'ring.js': 'import{a}from"./gnir.js";export{a};',
    'gnir.js': 'import{a}from"./ring.js";export{a};',
  };
  for (const [name, code] of Object.entries(chunks)) await writeFile(join(folder, name), code);
  const scripts = new ClassicScripts(folder);
  expect(await scripts.order('topic.js')).toEqual(['base.js', 'kit.js', 'topic.js']);
  expect([...(await scripts.writeChunks())].sort()).toEqual(['base.js', 'kit.js', 'topic.js']);
  const given: { almanacChunks?: Record<string, unknown> } = {};
  for (const name of ['base.js', 'kit.js', 'topic.js'])
    runInNewContext(await readFile(join(folder, name), 'utf8'), { globalThis: given });
  expect(given.almanacChunks?.['topic.js']).toMatchObject({ t: [1, 2] });
  await expect(scripts.order('ring.js')).rejects.toThrow('ring.js -> gnir.js -> ring.js need one another');
  await rm(folder, { recursive: true });
});

test('an island that names nothing to load stops the build: it would sleep on', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'almanac-islands-'));
  const bundles = new Islands(new ClassicScripts(folder), new HashedFiles(folder));
  const page = (attributes: string) =>
    parsePage(
      'index.html',
      `<html><head></head><body><script>(self.Astro||(self.Astro={})).load=1</script>
      <script>customElements.define("astro-island",class{a(){import("x")}})</script>
      <astro-island ${attributes}></astro-island></body></html>`,
    );
  await expect(bundles.forPage(page('part-url="/_astro/a.js" renderer-url="/_astro/r.js"'))).rejects.toThrow(
    /index\.html has 1 of 1 islands without component-url or renderer-url.*islands\.ts/,
  );
  await rm(folder, { recursive: true });
});

test('islands without the known runtime stop the build with the file to look at', () => {
  const page = parsePage(
    'index.html',
    '<html><head></head><body><script>other()</script><astro-island></astro-island></body></html>',
  );
  expect(() => readRuntime(page)).toThrow(/index\.html has islands but 0 copies.*island-runtime\.ts/);
});

test('a folder with a broken link is refused with every page and link named', async () => {
  const dist = await mkdtemp(join(tmpdir(), 'almanac-links-'));
  await mkdir(join(dist, '_astro'));
  await writeFile(
    join(dist, 'index.html'),
    '<html><head></head><body><a href="/one/">1</a><a href="/two/#x">2</a></body></html>',
  );
  await expect(makePortable(dist, '/')).rejects.toThrow(
    '2 broken links:\n  index.html -> /one/  (no such page or file)\n  index.html -> /two/#x  (no such page or file)',
  );
  await rm(dist, { recursive: true });
});

test('a page gets the policy first in its head and the way to the top on <html>', async () => {
  const dist = await mkdtemp(join(tmpdir(), 'almanac-page-'));
  await mkdir(join(dist, '_astro'));
  await mkdir(join(dist, 'jobs'));
  await writeFile(
    join(dist, 'jobs/belt.html'),
    '<html lang="en"><head><title>Belt</title><style>p{color:red}</style></head><body><p style="text-align:right" class="a">x</p></body></html>',
  );
  await makePortable(dist, '/');
  const html = await readFile(join(dist, 'jobs/belt.html'), 'utf8');
  expect(html).toMatch(
    /^<html lang="en" data-root="\.\.\/"><head><meta http-equiv="Content-Security-Policy"[^>]*><title>Belt<\/title><link rel="stylesheet" href="\.\.\/_astro\/look\.\w+\.css"><link rel="stylesheet" href="\.\.\/_astro\/own\.\w+\.css"><\/head><body><p\s+class="a s\w{6}">x<\/p>/,
  );
  await rm(dist, { recursive: true });
});
