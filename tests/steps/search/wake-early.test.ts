/** A page with a search box asks for the engine while it is read; other pages do not. */
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { wakeEarly } from '../../../src/steps/search/wake-early.ts';

const page = (lang: string, root: string, body: string) =>
  `<!DOCTYPE html><html lang="${lang}" data-root="${root}"><head><meta charset="utf-8"><script defer src="islands.js">` +
  `</script></head><body>${body}</body></html>`;
const box = '<form class="find" role="search"><input type="search"></form>';
const pages = {
  'search.html': page('en', './', box),
  'es/search.html': page('es', '../', box),
  'fr/search.html': page('fr', '../', box),
  'index.html': page('en', './', '<h1>Start</h1>'),
};
let dist: string;
const read = (file: string) => readFileSync(join(dist, file), 'utf8');

beforeAll(() => {
  dist = mkdtempSync(join(tmpdir(), 'almanac-wake-'));
  for (const lang of ['es', 'fr']) mkdirSync(join(dist, lang));
  for (const [file, html] of Object.entries(pages)) writeFileSync(join(dist, file), html);
  wakeEarly(dist, Object.keys(pages), ['en', 'es']);
});
afterAll(() => rmSync(dist, { recursive: true }));

it.each([
  ['search.html', './', 'en'],
  ['es/search.html', '../', 'es'],
])('asks in the head of %s, the engine before every other script', (file, root, lang) => {
  const head = read(file).split('</head>')[0] ?? '';
  expect([...head.matchAll(/(?:href|src)="([^"]+)"/g)].map(([, address]) => address)).toEqual([
    `${root}pagefind/start.${lang}.js`,
    `${root}pagefind/speech.${lang}.js`,
    `${root}pagefind/list.${lang}.js`,
    `${root}pagefind/engine.js`,
    'islands.js',
  ]);
});

it.each(['index.html', 'fr/search.html'] as const)('leaves %s as it was', (file) => {
  expect(read(file)).toBe(pages[file]);
});
