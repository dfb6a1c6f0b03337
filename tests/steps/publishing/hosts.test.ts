/** Files for hosts and search engines. Forms: sitemaps.org protocol 0.9; RFC 9309 for robots.txt; RFC 9111 for caching. */
import { mkdir, mkdtemp, readFile, readdir, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { addPublishing } from '../../../src/steps/publishing/add-publishing.ts';

let dist: string;
const site = ['404.html', 'offline.html', 'index.html', 'es.html', 'jobs/a&b.html', '_astro/page.x1.css', 'sw.js'];
beforeEach(async () => {
  dist = await mkdtemp(join(tmpdir(), 'almanac-hosts-'));
  for (const file of site) {
    await mkdir(dirname(join(dist, file)), { recursive: true });
    await writeFile(join(dist, file), '');
  }
});
afterEach(() => rm(dist, { recursive: true }));
const read = (file: string) => readFile(join(dist, file), 'utf8');

describe('a shop with an address', () => {
  test('lists each page once, by the address it will have, and none that only a host shows', async () => {
    await addPublishing(dist, '/kb/', 'https://fixture.example/kb');
    const found = [...(await read('sitemap.xml')).matchAll(/<loc>(.*?)<\/loc>/g)].map((m) => m[1]);
    expect(found).toEqual([
      'https://fixture.example/kb/es.html',
      'https://fixture.example/kb/',
      'https://fixture.example/kb/jobs/a&#38;b.html',
    ]);
    expect(await read('robots.txt')).toContain('Sitemap: https://fixture.example/kb/sitemap.xml\n');
  });
});

test('without an address there is no list and no robots.txt', async () => {
  await addPublishing(dist, '/', undefined);
  expect((await readdir(dist)).filter((f) => /sitemap|robots/.test(f))).toEqual([]);
});

describe('headers', () => {
  /** Headers a host gives at an address: every block whose address fits. */
  const at = async (address: string) => {
    const blocks = (await read('_headers')).trim().split('\n\n');
    return blocks.flatMap((block) => {
      const [pattern = '', ...lines] = block.split('\n');
      const fits = pattern.endsWith('*') ? address.startsWith(pattern.slice(0, -1)) : address === pattern;
      return fits ? lines.map((line) => line.trim()) : [];
    });
  };

  test('what is named after its bytes may be kept a year; pages and the worker are asked for anew', async () => {
    await addPublishing(dist, '/kb/', undefined);
    const held = async (address: string) => (await at(address)).filter((line) => line.startsWith('Cache-Control'));
    expect(await held('/kb/_astro/page.x1.css')).toEqual(['Cache-Control: public, max-age=31536000, immutable']);
    for (const address of ['/kb/', '/kb/index.html', '/kb/es.html', '/kb/es', '/kb/sw.js', '/kb/jobs/a&b.html'])
      expect(await held(address)).toEqual(['Cache-Control: no-cache']);
  });

  test('the policy keeps other sites from framing any page, and lets no script of theirs in', async () => {
    await addPublishing(dist, '/', undefined);
    const policy = (await at('/jobs/a&b.html')).find((line) => line.startsWith('Content-Security-Policy: ')) ?? '';
    expect(policy).toContain("frame-ancestors 'none'");
    expect(policy).toContain("default-src 'none'");
    expect(policy).toContain("script-src 'self' 'wasm-unsafe-eval';");
  });
});
