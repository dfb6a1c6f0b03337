/** What a shop says of itself beyond its name: its mark, its color, the pages it leaves out. */
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { expect, test } from 'vitest';
import { apart, contrast, tonesOf } from '../../../src/steps/look/color.ts';
import { markFiles } from '../../../src/steps/look/mark.ts';
import { problemsOf } from './good-content.ts';
import { fileURLToPath } from 'node:url';

/** The good shop with more lines at the end of its shop.yaml, and other files. */
const withLines = (lines: string, files: Readonly<Record<string, string | Uint8Array>> = {}) =>
  problemsOf(async (folder) => {
    const shop = join(folder, 'content/shop/shop.yaml');
    await writeFile(shop, `${await readFile(shop, 'utf8')}\n${lines}\n`);
    for (const [name, text] of Object.entries(files)) {
      await mkdir(dirname(join(folder, name)), { recursive: true });
      await writeFile(join(folder, name), text);
    }
  });
const svg = (inside: string) => `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9">${inside}</svg>`;
const one = async (lines: string, files?: Readonly<Record<string, string | Uint8Array>>) => {
  const found = await withLines(lines, files);
  expect(found).toHaveLength(1);
  return found[0];
};

test('a page left out may be named everywhere, and is no page any more', async () => {
  expect(await withLines('leaveOut: [jobs/wash-down]')).toEqual([]);
  expect(await withLines('leaveOut: [guides/cutting-wet]')).toEqual([]);
  // What is wrong in it no longer matters.
  const spoiled = { 'content/knowledge/jobs/wash-down.mdx': 'no front matter' };
  expect(await withLines('leaveOut: [jobs/wash-down]', spoiled)).toEqual([]);
  expect(await withLines('', spoiled)).not.toEqual([]);
});

test('what is left out must be a page of the knowledge', async () => {
  expect(await one('leaveOut: [jobs/wash-dwn]')).toMatch(
    /^shop\/shop\.yaml:\d+ leaveOut\.0: "jobs\/wash-dwn" \| a page of content\/knowledge\. Did you mean jobs\/wash-down\?/,
  );
  const own = await readFile(
    fileURLToPath(new URL('fixtures/good/content/knowledge/jobs/wash-down.mdx', import.meta.url)),
  );
  expect(await one('leaveOut: [jobs/wash-down]', { 'content/shop/jobs/wash-down.mdx': own })).toContain(
    'jobs/wash-down, which is a page of your own',
  );
});

test('a color is held against every ground, by light and in the dark, and against the cautions', async () => {
  expect(await withLines('color: "#5b2a86"')).toEqual([]);
  expect(await one('color: "#b8860b"')).toMatch(/shop\.yaml:\d+ color: "#b8860b", contrast 2\.\d\d to 1 by light/);
  expect(await one('color: "#8b1a2b"')).toMatch(/color: "#8b1a2b", which by light looks like the color of danger/);
  // By light a brown; lightened for the dark it is the orange of a warning.
  expect(await one('color: "#7a3b00"')).toMatch(/which in the dark looks like the color of warning/);
  expect(await one('color: purple')).toContain('six hexadecimal digits after a #');
});

test('contrast and distance are those of the published rules', () => {
  // WCAG 2.2: 21 to 1 for black on white, 1 to 1 for a color on itself.
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 10);
  expect(contrast('#5b2a86', '#5b2a86')).toBe(1);
  // #767676 on white is the lightest gray that passes 4.5 to 1; #777777 does not (known from the rule's own arithmetic).
  expect(contrast('#767676', '#ffffff')).toBeGreaterThan(4.5);
  expect(contrast('#777777', '#ffffff')).toBeLessThan(4.5);
  // Oklab: white and black are one apart in lightness and nothing else.
  expect(apart('#000000', '#ffffff')).toBeCloseTo(1, 5);
  for (const color of ['#000000', '#0000ff', '#5b2a86', '#0b6b3a'])
    expect(contrast(tonesOf(color, { light: '#f2f3f1', dark: '#15191b' }).dark.action, '#15191b')).toBeGreaterThan(4.5);
});

test('a mark is a drawing that holds all it shows, or a picture large enough', async () => {
  const mark = (text: string | Uint8Array, name = 'sign.svg') =>
    one(`mark: ${name}`, { [`content/shop/${name}`]: text });
  expect(await withLines('mark: sign.svg', { 'content/shop/sign.svg': svg('<path d="M0 0h9v9z"/>') })).toEqual([]);
  expect(await one('mark: sign.svg')).toContain('content/shop/sign.svg does not');
  expect(await mark('not a drawing')).toContain('which is no SVG drawing');
  expect(await mark('<svg><path d="M0 0"/></svg>')).toContain('without a viewBox');
  expect(await mark(svg('<script>x</script>'))).toContain('a script');
  expect(await mark(svg('<path onload="x()"/>'))).toContain('a script');
  expect(await mark(svg('<image href="https://example.org/x.png"/>'))).toContain('loads something from elsewhere');
  expect(await mark(svg('<text>R</text>'))).toContain('letters as text');
  expect(await mark(svg(`<path d="${'M0 0'.repeat(60_000)}"/>`))).toContain('at most 200 kB');
  expect(await mark('no picture', 'sign.png')).toContain('no PNG picture');
  const small = (await markFiles('.', undefined, '#ffffff')).get('apple-touch-icon.png');
  expect(await mark(small ?? '', 'sign.png')).toContain('180 x 180 pixels');
});

test('pictures of the mark have the sizes devices ask for', async () => {
  const files = await markFiles('.', undefined, '#f2f3f1');
  for (const [name, size] of [
    ['mark-192.png', 192],
    ['mark-512.png', 512],
    ['apple-touch-icon.png', 180],
  ] as const) {
    // PNG, 11.2.1: width and height stand in the first chunk.
    const bytes = files.get(name) ?? Buffer.alloc(24);
    expect([bytes.readUInt32BE(16), bytes.readUInt32BE(20)], name).toEqual([size, size]);
  }
});

test('own pages stand in pages/, a Spanish one beside an English one', async () => {
  const page = (lang: string) =>
    `---\ntitle: Legal notice ${lang}\nsummary: Who is behind this site and how to reach them.\nlang: ${lang}\nreviewed: 2026-01-31\n---\n\nName.\n`;
  expect(await withLines('', { 'content/shop/pages/legal.mdx': page('en') })).toEqual([]);
  expect(
    await withLines('', { 'content/shop/pages/legal.mdx': page('en'), 'content/shop/pages/es/legal.mdx': page('es') }),
  ).toEqual([]);
  expect(await one('', { 'content/shop/pages/es/legal.mdx': page('es') })).toContain(
    'a Spanish page without an English one',
  );
});
