/** Gives a built site its search: indexes the pages, packs the result into dist/pagefind. */
import { existsSync, readFileSync } from 'node:fs';
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'esbuild';
import { places } from '../../schemas/places.ts';
import { listFiles } from '../support/files.ts';
import { languages, type Lang } from '../../words/lang.ts';
import { browserSources } from '../support/browser-sources.ts';
import { classicOptions } from '../support/classic.ts';
import { PageIndex } from './index-pages.ts';
import { misspelledWords } from './misspelled.ts';
import { packIndex } from './pack-index.ts';
import { packList } from './pack-list.ts';
import { readFragments } from './read-fragments.ts';
import { hasBox, wakeEarly } from './wake-early.ts';

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
    const spoken = languages.filter((l) => rows.some((row) => row.lang === l));
    await packIndex(plain, out, spoken);
    const texts = await readFragments(plain);
    const misspelled = await misspelledWords(places.map((place) => join(project, place, 'glossary')));
    await mkdir(out, { recursive: true });
    for (const lang of spoken) {
      const beside = spoken.filter((l) => l !== lang);
      const list = JSON.stringify(packList(lang, rows, texts, misspelled, beside));
      await writeFile(join(out, `list.${lang}.js`), `almanacSearch.put("list.${lang}",${JSON.stringify(list)})\n`);
      await writeFile(join(out, `speech.${lang}.js`), await speech(lang));
    }
    wakeEarly(dist, withBox, spoken);
  } finally {
    await rm(plain, { recursive: true, force: true });
  }
}

/** What the search box must know of a language's words, each in a script of its own; empty where nothing is known. */
async function speech(lang: Lang): Promise<string> {
  const file = join(browserSources.words, lang, 'speech.ts');
  if (!existsSync(file)) return '';
  const hand = `import { speech } from ${JSON.stringify(file)}; almanacSearch.learn(${JSON.stringify(lang)}, speech);`;
  const made = await build({
    stdin: { contents: hand, resolveDir: browserSources.words, loader: 'js' },
    ...classicOptions,
  });
  return made.outputFiles[0]?.text ?? '';
}
