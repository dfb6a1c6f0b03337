import { readdir, readFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { listFiles } from '../../../src/steps/support/files.ts';
import { serveFolder, type Serving } from '../../../src/commands/support/serve.ts';
import { launch, watchedPage } from '../../e2e/support/browser.ts';
import { buildFixtureSite } from '../fixture-site.ts';

let dist: string;
let browser: Browser;
let serving: Serving;

beforeAll(async () => {
  dist = await buildFixtureSite();
  browser = await launch();
  serving = await serveFolder(dist, { base: '/kb/' });
});
afterAll(async () => {
  await browser.close();
  await serving.close();
  await rm(join(dist, '..'), { recursive: true });
});

const read = (file: string) => readFile(join(dist, file), 'utf8');
const pages = async () => (await listFiles(dist)).filter((f) => f.endsWith('.html'));

/** All scripts a page loads by itself and those its islands wake with. */
async function codeOf(page: string): Promise<string> {
  const html = await read(page);
  const tags = [...html.matchAll(/<script[^>]*src="[^"]*_astro\/([^"]+)"/g)].map((m) => m[1] ?? '');
  const woken = [...html.matchAll(/(?:component|renderer)-url="([^"]+)"/g)].flatMap((m) => m[1]?.split(' ') ?? []);
  const there = new Set(await readdir(join(dist, '_astro')));
  const files = [...new Set([...tags, ...woken])].filter((file) => there.has(file));
  return (await Promise.all(files.map((file) => read(`_astro/${file}`)))).join('\n');
}

describe('the folder', () => {
  test('has no inline script, inline style, module script or address from the top on any page', async () => {
    for (const page of (await pages()).filter((p) => p !== '404.html')) {
      const html = await read(page);
      expect(html, page).not.toMatch(/<script(?![^>]*\bsrc=)/);
      expect(html, page).not.toMatch(/<style|\sstyle=|type="?module|modulepreload/);
      expect(html, page).not.toMatch(/\s(?:href|src|srcset)="\//);
    }
  });

  test('starts every head with the policy', async () => {
    for (const page of await pages())
      expect(await read(page), page).toMatch(
        /<head><meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self';/,
      );
  });

  test('carries on each page only the islands that page has', async () => {
    expect(await codeOf('index.html')).toContain('Pressed');
    expect(await codeOf('deep/er/page.html')).not.toContain('Pressed');
    expect(await codeOf('plain.html')).not.toContain('createElementNS');
  });

  test('has on no page a part of the islands twice', async () => {
    for (const page of await pages())
      expect((await codeOf(page)).split('createElementNS').length - 1, page).toBeLessThanOrEqual(1);
    expect(await codeOf('index.html')).toContain('createElementNS');
  });

  test('keeps what is loaded later out of the islands, as a classic script of its own', async () => {
    const later = (await readdir(join(dist, '_astro'))).filter((f) => f.startsWith('sum.'));
    expect(later).toHaveLength(1);
    expect(await read(`_astro/${later[0]}`)).not.toMatch(/\bexport\b|\bimport\b/);
  });

  test('keeps figures as they were typed, and loses no line', async () => {
    const text = (await read('text.html'))
      .replace(/<[^>]+>/g, '')
      .replaceAll('&quot;', '"')
      .replaceAll('&#39;', "'");
    for (const typed of ['50:1', '1/2"', '-0.0005 in', "0-60'", '3 -- 4 dots...', ':::danger', 'Keep this line.'])
      expect(text.split(typed), typed).toHaveLength(3);
  });

  test('turns style attributes into classes that still count', async () => {
    const html = await read('text.html');
    expect(html).toMatch(/<t[hd] class="s[0-9a-f]{6}">right|<t[hd] class="s[0-9a-f]{6}">two/);
    const sheet = /_astro\/own\.\w+\.css/.exec(html)?.[0] ?? '';
    expect(await read(sheet)).toMatch(/text-align:\s*right/);
  });

  test('carries the license of every library whose code is in its scripts, and of no other', async () => {
    const text = await read('licenses.txt');
    const heads = [...text.matchAll(/^(@?[\w./-]+) \d+\.\d+\.\d+\S* \((.+)\)$/gm)].map((m) => `${m[1]}: ${m[2]}`);
    expect(heads).toEqual(
      [
        '@fontsource-variable/bitter: OFL-1.1',
        '@fontsource/b612-mono: OFL-1.1',
        '@astrojs/preact: MIT',
        'astro: MIT',
        'pagefind: MIT',
        'preact: MIT',
      ].sort(),
    );
    for (const words of ['authors of Bench Almanac', 'SIL OPEN FONT LICENSE', 'Jason Miller'])
      expect(text).toContain(words);
  });

  test('gives 404.html addresses from the path of the site, for it is shown at any depth', async () => {
    expect(await read('404.html')).toContain('href="/kb/search.html"');
    expect(await read('offline.html')).toContain('href="search.html"');
  });
});

describe.each(['from disk', 'from a server, in a subfolder'])('%s', (way) => {
  const address = (file: string) =>
    way === 'from disk' ? pathToFileURL(join(dist, file)).href : serving.address + file;

  test('islands answer, what they load later arrives, and nothing is refused', async () => {
    const { page, context, troubles } = await watchedPage(browser);
    await page.goto(address('index.html'));
    await page.fill('[name=number]', '21');
    await page.waitForFunction(() => document.querySelector('[name=doubled]')?.textContent === '42');
    await page.fill('[name=number]', '20+1');
    await page.waitForFunction(() => document.querySelector('[name=sum]')?.textContent === '21');
    await page.getByRole('button', { name: /Pressed/ }).click();
    await page.getByRole('button', { name: 'Pressed 1' }).waitFor();
    expect(await page.evaluate(() => document.documentElement.dataset['inline'])).toBe('ran');
    expect(await page.evaluate(() => getComputedStyle(document.querySelector('#styled') as Element).color)).toBe(
      'rgb(10, 20, 30)',
    );
    await page.getByRole('link', { name: 'Deep' }).click();
    await page.waitForURL(/page\.html#third$/);
    await page.waitForFunction(() => document.querySelector('astro-island:not([ssr])'));
    expect(troubles).toEqual([]);
    await context.close();
  });

  test('search finds a rare word, and a word that is indexed but not shown', async () => {
    const { page, context, troubles } = await watchedPage(browser);
    await page.goto(address('search.html'));
    for (const word of ['flumdiddle', 'grobbleknot']) {
      await page.fill('[name=find]', word);
      await page.getByRole('listitem').filter({ hasText: 'A page two folders down.' }).waitFor();
      await page.fill('[name=find]', '');
    }
    await page.fill('[name=find]', 'flumdiddle');
    await page.getByRole('link', { name: 'Deep page' }).click();
    await page.waitForURL(/deep\/er\/page\.html$/);
    expect(troubles).toEqual([]);
    await context.close();
  });
});

test('two builds of the same source are the same, byte for byte', async () => {
  const again = await buildFixtureSite();
  const files = await listFiles(dist);
  expect(await listFiles(again)).toEqual(files);
  for (const file of files)
    expect((await readFile(join(again, file))).equals(await readFile(join(dist, file))), file).toBe(true);
  await rm(join(again, '..'), { recursive: true });
});
