/** Gives a built site its search: indexes the pages, packs the result into dist/pagefind. */
import { readFileSync } from 'node:fs';
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Tongue } from '../../browser/language/forms.ts';
import { places } from '../../schemas/places.ts';
import { listFiles } from '../support/files.ts';
import { PageIndex } from './index-pages.ts';
import { misspelledWords } from './misspelled.ts';
import { packIndex } from './pack-index.ts';
import { packList } from './pack-list.ts';
import { readFragments } from './read-fragments.ts';
import { hasBox, wakeEarly } from './wake-early.ts';

const tongues: readonly Tongue[] = ['en', 'es'];

/** The project's glossary lends the search its list of misspellings. */
export async function addSearch(dist: string, project: string): Promise<void> {
  const pages = (await listFiles(dist)).filter((f) => f.endsWith('.html'));
  const index = await PageIndex.start(pages.length);
  const withBox: string[] = [];
  try {
    for (const page of pages) {
      const html = readFileSync(join(dist, page), 'utf8');
      if (hasBox(html)) withBox.push(page);
      await index.add(page, html);
    }
    await packSearch(index, dist, project, withBox);
  } finally {
    await index.close();
  }
}

/**
 * Of an index that holds every page: what the site's search is made of.
 * @param withBox pages with the search box
 */
export async function packSearch(
  index: PageIndex,
  dist: string,
  project: string,
  withBox: readonly string[],
): Promise<void> {
  const plain = await mkdtemp(join(tmpdir(), 'almanac-search-'));
  const out = join(dist, 'pagefind');
  try {
    const rows = await index.finish(plain);
    const spoken = tongues.filter((l) => rows.some((row) => row.lang === l));
    await packIndex(plain, out, spoken);
    const texts = await readFragments(plain);
    const misspelled = await misspelledWords(places.map((place) => join(project, place, 'glossary')));
    await mkdir(out, { recursive: true });
    for (const lang of spoken) {
      const beside = spoken.filter((l) => l !== lang);
      const list = JSON.stringify(packList(lang, rows, texts, misspelled, beside));
      await writeFile(join(out, `list.${lang}.js`), `almanacSearch.put("list.${lang}",${JSON.stringify(list)})\n`);
    }
    wakeEarly(dist, withBox, spoken);
  } finally {
    await rm(plain, { recursive: true, force: true });
  }
}
