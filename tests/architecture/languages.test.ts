/** Languages are named in one list; anything that goes by one of them elsewhere would leave the next one out. */
import { expect, it } from 'vitest';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { languages, others } from '../../src/words/lang.ts';

const src = new URL('../../src/', import.meta.url).pathname;
/** The list and the languages' own folders. In the core "es" is a country, or the deviation of a shaft in ISO 286. */
const free = new RegExp(`^(?:words/languages\\.ts$|words/(?:${languages.join('|')})/|core/(?:topics|exposure)/)`);
const withoutComments = (text: string) => text.replace(/\/\*[\s\S]*?\*\/|(?<!:)\/\/.*$|<!--[\s\S]*?-->/gm, '');

/** By its code as a text, a key, a property or a folder, or by its English name. */
const namings = (lang: string, name: string) =>
  new RegExp(String.raw`(['"\`])${lang}\1|\.${lang}\b|\b${lang}\??:|['"\`/(^]/?${lang}/|\b${name}\b`, 'i');

it('names no other language than English outside their folders', () => {
  const english = new Intl.DisplayNames('en', { type: 'language' });
  const rules = others.map((lang) => namings(lang, english.of(lang) ?? lang));
  const found = readdirSync(src, { recursive: true, encoding: 'utf8' })
    .map((file) => file.replaceAll('\\', '/'))
    .filter((file) => /\.(?:ts|tsx|astro|mjs)$/.test(file) && !free.test(file))
    .flatMap((file) =>
      withoutComments(readFileSync(join(src, file), 'utf8'))
        .split('\n')
        .flatMap((line) => (rules.some((rule) => rule.test(line)) ? [`src/${file}: ${line.trim()}`] : [])),
    );
  expect(found).toEqual([]);
});

it('sees what it is for', () => {
  const rule = namings('es', 'Spanish');
  for (const line of [
    "lang === 'es'",
    'data.es.title',
    '{ en, es: words }',
    '`/es/guides/`',
    "'es/search.html'",
    'The same in Spanish',
  ])
    expect(line).toMatch(rule);
  for (const line of ["import { a } from './styles/x.css'", 'yes: true', "'names'", 'lines.map'])
    expect(line).not.toMatch(rule);
});
