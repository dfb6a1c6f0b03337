/** What every finished page must be, read from its text. */
import { expect, test } from 'vitest';
import { policy } from '../../src/steps/portable/policy.ts';
import { parseByStandard, parsePage } from '../../src/steps/portable/parse-page.ts';
import { dist, pages, readPage } from './support/site.ts';
import { listFiles } from '../../src/steps/support/files.ts';

const all = [...pages, '404.html'];
const parsed = all.map((file) => parsePage(file, readPage(file)));
/** Elements that fail the rule, as "page: <tag ...>". */
const offenders = (rule: (tag: string, attributes: Readonly<Record<string, string>>, text: string) => boolean) =>
  parsed.flatMap((page) =>
    page.elements
      .filter((e) => rule(e.tag, e.attributes, e.text))
      .map((e) => `${page.file}: ${page.html.slice(e.start, Math.min(e.startTagEnd, e.start + 160))}`),
  );

const runs = (type: string | undefined) => type === undefined || /^(?:module|text\/javascript|)$/.test(type);

test('there are pages to look at, in both languages', () => {
  expect(pages.length).toBeGreaterThan(40);
  expect(pages.filter((p) => p.startsWith('es/')).length).toBeGreaterThan(3);
});

test.each(['a-z.html', 'es/a-z.html'])('the letters of %s stand in their order', (file) => {
  const letters = [...readPage(file).matchAll(/id="letter-(.)"/g)].map(([, letter]) => letter);
  expect(letters.length).toBeGreaterThan(8);
  expect(letters).toEqual([...new Set(letters)].sort());
});

test('every page is read as the HTML standard has it', () => {
  for (const page of parsed) expect(page).toEqual(parseByStandard(page.file, page.html));
});

test('every page starts its head with the one policy', () => {
  for (const { file, html } of parsed)
    expect(html, file).toContain(`<head><meta http-equiv="Content-Security-Policy" content="${policy}">`);
});

test('no page has an inline script, an inline style or a handler in its markup', () => {
  expect(offenders((tag, a) => tag === 'script' && a['src'] === undefined && runs(a['type']))).toEqual([]);
  expect(offenders((tag, a) => tag === 'style' || a['style'] !== undefined)).toEqual([]);
  expect(offenders((_tag, a) => Object.keys(a).some((name) => /^on[a-z]/.test(name)))).toEqual([]);
});

test('no page loads anything from another place, and nothing browsers refuse from disk', () => {
  const loads = (tag: string, a: Readonly<Record<string, string>>) =>
    [
      a['src'],
      a['srcset'],
      a['poster'],
      a['data'],
      // A page's own address and its twin's are named there, and nothing is loaded from them.
      ['link', 'use', 'image'].includes(tag) && !['canonical', 'alternate'].includes(a['rel'] ?? '')
        ? a['href']
        : undefined,
    ].filter((v) => v !== undefined);
  expect(offenders((tag, a) => loads(tag, a).some((address) => /^(?:[a-z]+:)?\/\//i.test(address)))).toEqual([]);
  expect(
    offenders(
      (_tag, a) => 'crossorigin' in a || 'integrity' in a || a['type'] === 'module' || a['rel'] === 'modulepreload',
    ),
  ).toEqual([]);
});

test('no page but 404.html names an address from the top', () => {
  const bad = offenders((_tag, a) => ['href', 'src', 'srcset', 'data'].some((name) => a[name]?.startsWith('/')));
  expect(bad.filter((b) => !b.startsWith('404.html'))).toEqual([]);
});

test('every page has a title of its own, a description, a language and one main heading', () => {
  const titles = new Map<string, string>();
  for (const page of parsed.filter((p) => !['404.html', 'offline.html'].includes(p.file))) {
    const title = /<title>([^<]+)<\/title>/.exec(page.html)?.[1] ?? '';
    const key = `${page.file.startsWith('es') ? 'es' : 'en'} ${title}`;
    expect(titles.get(key), `${page.file} and ${titles.get(key)} share the title ${title}`).toBeUndefined();
    titles.set(key, page.file);
    expect(title, page.file).not.toBe('');
    expect(page.html, page.file).toMatch(/<meta name="description" content="[^"]{10,}/);
    expect(
      page.elements.filter((e) => e.tag === 'h1'),
      page.file,
    ).toHaveLength(1);
    expect(page.elements.find((e) => e.tag === 'html')?.attributes['lang'], page.file).toMatch(/^(?:en|es)$/);
  }
});

test('a box that forgets what is typed in it is shut until its part of the page is awake', () => {
  const open = parsed.flatMap((page) => {
    const within = (tag: string, rule: (attributes: Readonly<Record<string, string>>) => boolean) =>
      page.elements.filter((e) => e.tag === tag && rule(e.attributes));
    const awakened = within('astro-island', (a) => 'ssr' in a);
    const shut = within('fieldset', (a) => 'disabled' in a);
    return ['input', 'select', 'textarea']
      .flatMap((tag) => within(tag, (a) => !('disabled' in a) && !('hidden' in a)))
      .filter((e) => awakened.some((i) => i.start < e.start && e.end <= i.end))
      .filter((e) => !shut.some((f) => f.start < e.start && e.end <= f.end))
      .map((e) => `${page.file}: ${page.html.slice(e.start, e.startTagEnd)}`);
  });
  expect(open).toEqual([]);
});

test('no id stands twice on a page', () => {
  for (const page of parsed) {
    const ids = page.elements.map((e) => e.attributes['id']).filter((id) => id !== undefined);
    expect(
      ids.filter((id, i) => ids.indexOf(id) !== i),
      page.file,
    ).toEqual([]);
  }
});

// light-dark() is of May 2024 (MDN: "Baseline 2024"), Safari 17.5. From memory: a thickness within text-decoration Safari
// 26; grouping and promises with their resolvers 17.4; the algebra of sets 17; helpers of iterators 18.4.
test('styles and scripts ask nothing of a browser that those of early 2023 lack', async () => {
  const files = (await listFiles(dist)).filter((file) => /^(?:_astro\/.*\.(?:css|js)|sw\.js)$/.test(file));
  expect(files.length).toBeGreaterThan(20);
  const newer = {
    css: /light-dark\(|text-decoration:[^;}]*\dpx/,
    js: /\.(?:groupBy|withResolvers|union|intersection|difference|isSubsetOf|isSupersetOf|isDisjointFrom|toArray)\(/,
  };
  const asking = files.flatMap((file) => {
    const found = newer[file.endsWith('.css') ? 'css' : 'js'].exec(readPage(file))?.[0];
    return found === undefined ? [] : [`${file}: ${found}`];
  });
  expect(asking).toEqual([]);
});

test('file names carry to any disk: small letters, digits and plain signs', async () => {
  expect(
    (await listFiles(dist)).filter((f) => !/^[\w./-]+$/.test(f) || f.split('/').some((part) => part.length > 120)),
  ).toEqual([]);
});

// The sums that protect people are reached from where somebody is about to cut or hands a saw out.
test.each([
  ['check/hand-held.html', ['dust-control', 'water-supply', 'noise-dose', 'hand-arm-vibration', 'fume-room']],
  ['es/check/floor-saw.html', ['dust-control', 'water-supply', 'noise-dose', 'hand-arm-vibration', 'fume-room']],
  ['job-sheet.html', ['dust-control', 'water-supply', 'noise-dose', 'hand-arm-vibration', 'fume-room']],
  ...['', 'es/'].flatMap((lang): [string, string[]][] => [
    [`${lang}guides/keeping-dust-down.html`, ['dust-control']],
    [`${lang}guides/cutting-wet.html`, ['water-supply']],
    [`${lang}guides/ears-hands-eyes.html`, ['noise-dose', 'hand-arm-vibration']],
    [`${lang}guides/fuel-and-fumes.html`, ['fume-room']],
  ]),
])('%s leads to its sums', (file, topics) => {
  const page = parsed.find((p) => p.file === file);
  for (const topic of topics)
    expect(
      page?.elements.some((e) => e.tag === 'a' && e.attributes['href']?.endsWith(`calculators/${topic}.html`)),
      topic,
    ).toBe(true);
});
