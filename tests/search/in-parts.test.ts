/** A large site has its search index in parts. Here the demo's is made so too: its questions find their pages there as well. */
import { cp, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { projectFolder } from '../../src/commands/support/command.ts';
import { addSearch } from '../../src/steps/search/add-search.ts';
import { partOf } from '../../src/steps/search/index-pages.ts';
import { watchedPage } from '../e2e/support/browser.ts';
import { openedSite } from '../e2e/support/opened-site.ts';
import { dist } from '../e2e/support/site.ts';
import { placeOf, queries } from './score.ts';

const parts = 4;
const site = openedSite();
let place: string;
beforeAll(async () => {
  place = await mkdtemp(join(tmpdir(), 'almanac-parts-'));
  await cp(dist, place, { recursive: true, filter: (from) => !from.startsWith(join(dist, 'pagefind')) });
  await addSearch(place, projectFolder, parts);
});
afterAll(() => rm(place, { recursive: true, force: true }));

it.each([
  ['en', 'search.html'],
  ['es', 'es/search.html'],
])('in %s finds what is asked for, in whichever part it is', async (lang, file) => {
  const root = pathToFileURL(join(place, '/')).href;
  const { page } = await watchedPage(site.browser);
  await page.goto(root + file);
  await page.waitForFunction(() => globalThis.almanacSearch !== undefined);
  // Every third: all of them are asked of the site as it is.
  const asked = queries.filter((q) => q.lang === lang && q.pages !== undefined).filter((_, at) => at % 3 === 0);
  const found = await page.evaluate(
    async (list) => {
      const hits: string[][] = [];
      for (const question of list)
        hits.push(((await globalThis.almanacSearch?.find(question, { limit: 8 }))?.hits ?? []).map((h) => h.address));
      return hits;
    },
    asked.map((q) => q.query),
  );
  const addresses = found.map((hits) => hits.map((address) => address.slice(root.length)));
  const amongThree = asked.filter((q, at) => {
    const nth = placeOf(q, addresses[at] ?? []);
    return nth > 0 && nth <= 3;
  });
  expect(amongThree.length / asked.length).toBeGreaterThan(0.9);
  const seen = new Set(addresses.flat().map((address) => partOf(address.replace(/#.*/, ''), parts)));
  expect([...seen].sort()).toEqual([0, 1, 2, 3]);
  // An excerpt comes from the part's own file of the page.
  await page.getByRole('searchbox').fill(lang === 'en' ? 'belt slips' : 'correa patina');
  await page.locator('.find-results mark').first().waitFor();
  await page.context().close();
});
