/** Gives a built site its search: indexes the pages, packs the result into dist/pagefind. */
import { existsSync, readFileSync } from 'node:fs';
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { build } from 'esbuild';
import { places } from '../../schemas/places.ts';
import { listFiles } from '../support/files.ts';
import { languages, type Lang } from '../../words/lang.ts';
import { browserSources } from '../support/browser-sources.ts';
import { classicOptions } from '../support/classic.ts';
import { engineScript } from './engine-script.ts';
import { misspelledWords } from './misspelled.ts';
import { packList } from './pack-list.ts';
import type { PackedPart } from './pack-part.ts';
import { SearchParts } from './search-parts.ts';
import { hasBox, wakeEarly } from './wake-early.ts';

/**
 * The project's glossary lends the search its list of misspellings.
 * @param parts of the index; a site of this size has so many
 */
export async function addSearch(dist: string, project: string, parts?: number): Promise<void> {
  const pages = (await listFiles(dist)).filter((f) => f.endsWith('.html'));
  const packing = await SearchParts.start({ pages, out: searchFolder(dist), count: parts });
  const withBox: string[] = [];
  try {
    for (const page of pages) {
      const html = readFileSync(join(dist, page), 'utf8');
      if (hasBox(html)) withBox.push(page);
      await packing.add(page, () => html);
    }
    await packSearch({ parts: packing, dist, project, withBox });
  } finally {
    await packing.close();
  }
}

/** Where a site's search lies. */
export const searchFolder = (dist: string): string => join(dist, 'pagefind');

export interface Searched {
  readonly parts: SearchParts;
  readonly dist: string;
  readonly project: string;
  /** Pages with the search box. */
  readonly withBox: readonly string[];
}

/** What the site's search is made of. */
export async function packSearch({ parts: packing, dist, project, withBox }: Searched): Promise<void> {
  const out = searchFolder(dist);
  await mkdir(out, { recursive: true });
  const parts = await packing.all();
  const rows = parts.flatMap((part) => part.rows);
  const pagePlaces = parts.flatMap((part) => part.places);
  const spoken = languages.filter((l) => rows.some((row) => row.lang === l));
  const misspelled = await misspelledWords(places.map((place) => join(project, place, 'glossary')));
  for (const lang of spoken) {
    const beside = spoken.filter((l) => l !== lang);
    const said = parts.flatMap((part) => part.said[lang] ?? []);
    const list = JSON.stringify(packList(lang, rows, pagePlaces, said, misspelled, beside));
    await writeFile(join(out, `start.${lang}.js`), startScript(lang, parts));
    await writeFile(join(out, `list.${lang}.js`), `almanacSearch.put("list.${lang}",${JSON.stringify(list)})\n`);
    await writeFile(join(out, `speech.${lang}.js`), await speech(lang));
  }
  await writeFile(join(out, 'engine.js'), await engineScript(parts[0]?.pagefind ?? ''));
  wakeEarly(dist, withBox, spoken);
}

/** All that the search starts from in a language, in one script: it would ask for a file after the other. */
function startScript(lang: Lang, parts: readonly PackedPart[]): string {
  const starts = parts.map((part) => part.start[lang]);
  const numbers = starts.flatMap((start, number) => (start === undefined ? [] : number));
  const program = parts.find((part) => part.program[lang] !== undefined)?.program[lang] ?? '';
  return `almanacSearch.put("parts.${lang}","${numbers.join(' ')}")\n${program}${starts.join('')}`;
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
