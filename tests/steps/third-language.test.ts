/**
 * A third language is a folder of words, a line, and content in it: a site is built with one and read through. Nothing
 * in it may speak another language than its own, and every way between the three must be there.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { projectFolder } from '../../src/commands/support/command.ts';
import { languages, wordsIn } from '../../src/words/index.ts';
import { addLanguage, copyEngine, inTrial, setShop, trial, writeContent } from './trial-language.ts';

const engine = mkdtempSync(join(tmpdir(), 'almanac-tongue-'));
const dist = join(engine, 'dist');
let built: { status: number | null; text: string };
const run = (script: string, ...words: string[]) => {
  const env = { ...process.env, ASTRO_TELEMETRY_DISABLED: '1', NODE_ENV: 'production' };
  const ran = spawnSync(process.execPath, [script, ...words], { cwd: engine, env, encoding: 'utf8' });
  return { status: ran.status, text: ran.stdout + ran.stderr };
};

beforeAll(() => {
  copyEngine(projectFolder, engine);
  addLanguage(engine, ['reading']);
  writeContent(engine);
  // The bench's pages are in English whatever the customers speak; without them the build is short.
  const bench = ['jobs', 'tables', 'explainers', 'calculators', 'faults'].flatMap((folder) =>
    readdirSync(join(engine, 'content/knowledge', folder)).map((name) => `${folder}/${name.replace(/\.\w+$/, '')}`),
  );
  setShop(engine, bench);
  built = run('src/commands/build.ts');
}, 600_000);
afterAll(() => rmSync(engine, { recursive: true, force: true }));

const page = (name: string) => readFileSync(join(dist, `${name}.html`), 'utf8');
const customers = () =>
  readdirSync(join(dist, trial), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.html'))
    .map((name) => `${trial}/${name.slice(0, -'.html'.length).replaceAll('\\', '/')}`)
    .concat(trial);

/** Every word of the frame that the trial language says otherwise. */
function frameWords(value: unknown): string[] {
  if (typeof value === 'string') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(frameWords) : [];
}

/** What a reader meets: texts between tags, and what is read out or stands in an empty box. */
function textsOf(html: string): string[] {
  const body = html.replace(/<(script|style)\b[\s\S]*?<\/\1>/g, '').replace(/ props="[^"]*"/g, '');
  // What says that it is in another language may be: the way there, the bench's pages.
  const own = body.replace(
    new RegExp(`<(\\w+)\\b[^>]*\\slang="(?!${trial})\\w+"[^>]*>[\\s\\S]*?</\\1>`, 'g'),
    (whole) => (whole.startsWith('<html') ? whole : ''),
  );
  const inside = [...own.matchAll(/>([^<]+)</g)].map(([, text = '']) => text);
  const named = [...own.matchAll(/\s(?:aria-label|placeholder|alt|title)="([^"]*)"/g)].map(([, text = '']) => text);
  return [...inside, ...named].map((text) =>
    text
      .replace(/&#39;|&apos;/g, "'")
      .replace(/&quot;/g, '"')
      .trim(),
  );
}

describe('a shop that speaks three languages', () => {
  it('is built, with no broken link between them', () => {
    expect(built.text).not.toMatch(/broken link|not right/);
    expect(built.status, built.text).toBe(0);
  });

  it('has every page of its customers in each', () => {
    const inEnglish = customers().map((name) => name.replace(/^pt\/?/, ''));
    expect(inEnglish).toEqual(
      expect.arrayContaining(['', 'search', 'a-z', 'about', 'glossary', 'hazards', 'shop', 'guides/cutting-wet']),
    );
    expect(inEnglish).toEqual(
      expect.arrayContaining(['trouble', 'trouble/no-water', 'check', 'check/hand-held', 'point/floor-saw']),
    );
    for (const name of inEnglish)
      for (const folder of ['', 'es'])
        expect(existsSync(join(dist, `${[folder, name].filter(Boolean).join('/') || 'index'}.html`)), name).toBe(true);
  });

  it('says which language a page is in, and where the same page is in the others', () => {
    const at = (lang: string) => `https://example.org/${lang === 'en' ? '' : `${lang}/`}guides/cutting-wet.html`;
    for (const lang of [...languages, trial]) {
      const html = page(lang === 'en' ? 'guides/cutting-wet' : `${lang}/guides/cutting-wet`);
      expect(html).toContain(`<html lang="${lang}"`);
      const alternates = [...html.matchAll(/<link rel="alternate" hreflang="(\w+)" href="([^"]*)">/g)];
      expect(alternates.map(([, code = '', href = '']) => `${code} ${href}`).sort()).toEqual(
        [...languages, trial].map((code) => `${code} ${at(code)}`).sort(),
      );
      const others = [...languages, trial].filter((code) => code !== lang);
      for (const code of others)
        expect(html, `${lang} leads to ${code}`).toMatch(
          new RegExp(`<a href="[^"]*" hreflang="${code}" lang="${code}">`),
        );
    }
    expect(page('index')).toContain(inTrial(wordsIn('en').start.guidesInThis));
    expect(page('404')).toContain(inTrial(wordsIn('en').pages.notFound.title));
    expect(page('404')).toContain(wordsIn('es').pages.notFound.title);
  });

  it('lets no word of the frame through from another', () => {
    const foreign = new Set(
      languages
        .flatMap((lang) => frameWords(wordsIn(lang)))
        .filter((word) => inTrial(word) !== word && word.length > 2),
    );
    const leaks = customers().flatMap((name) =>
      textsOf(page(name)).flatMap((text) => (foreign.has(text) ? [`${name}: ${text}`] : [])),
    );
    expect(leaks).toEqual([]);
  });

  it('finds words in it, and hands a page the words of its own language alone', () => {
    const list = readFileSync(join(dist, `pagefind/list.${trial}.js`), 'utf8');
    expect(list).toContain(inTrial(wordsIn('en').frame.glossary));
    for (const lang of languages)
      expect(readFileSync(join(dist, `pagefind/list.${lang}.js`), 'utf8')).toMatch(/\\"beside\\":\[[^\]]*\\"pt\\"/);
    const { none, waking } = wordsIn('en').search;
    const props = page(`${trial}/search`);
    expect(props).toContain(inTrial(waking));
    expect(props).not.toContain(waking);
    expect(props).not.toContain(wordsIn('es').search.waking);
    // The scripts themselves hold none of it.
    const scripts = readdirSync(join(dist, '_astro')).filter((name) => name.endsWith('.js'));
    const holding = (words: string) =>
      scripts.filter((name) => readFileSync(join(dist, '_astro', name), 'utf8').includes(words));
    expect(holding(none)).toEqual([]);
    // The customer's paper in another language is a file of its own, fetched when it is asked for.
    expect(holding(wordsIn('es').customerPaper.orders[0] ?? '')).toHaveLength(1);
    expect(holding(inTrial(wordsIn('en').notice.newer))).toHaveLength(1);
  });
});

it('what a language leaves out is said: its reading level is not measured', () => {
  const checked = run('src/commands/content.ts');
  expect(checked.status).toBe(0);
  expect(checked.text).toContain('Not measured: how easy Portuguese is to read; src/words/pt has no reading.ts.');
});
