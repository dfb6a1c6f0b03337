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
import { engineScript } from './engine-script.ts';
import { PageIndex } from './index-pages.ts';
import type { KeptParts } from './kept-parts.ts';
import { misspelledWords } from './misspelled.ts';
import { packList } from './pack-list.ts';
import { packPart, type PackedPart } from './pack-part.ts';
import { hasBox, wakeEarly } from './wake-early.ts';

/**
 * The project's glossary lends the search its list of misspellings.
 * @param parts of the index; a site of this size has so many
 */
export async function addSearch(dist: string, project: string, parts?: number): Promise<void> {
  const pages = (await listFiles(dist)).filter((f) => f.endsWith('.html'));
  const index = await PageIndex.start(pages.length, new Set(), parts);
  const withBox: string[] = [];
  try {
    for (const page of pages) {
      const html = readFileSync(join(dist, page), 'utf8');
      if (hasBox(html)) withBox.push(page);
      await index.add(page, html);
    }
    await packSearch({ index, dist, project, withBox });
  } finally {
    await index.close();
  }
}

export interface Searched {
  /** It holds every page, but those of parts that are kept. */
  readonly index: PageIndex;
  readonly dist: string;
  readonly project: string;
  /** Pages with the search box. */
  readonly withBox: readonly string[];
  readonly kept?: KeptParts;
}

/** What the site's search is made of. */
export async function packSearch({ index, dist, project, withBox, kept }: Searched): Promise<void> {
  const out = join(dist, 'pagefind');
  await mkdir(out, { recursive: true });
  const parts = await packParts(index, out, kept);
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

async function packParts(index: PageIndex, out: string, kept: KeptParts | undefined): Promise<readonly PackedPart[]> {
  const plain = await mkdtemp(join(tmpdir(), 'almanac-search-'));
  const pack = async (number: number): Promise<PackedPart> => {
    const part = index.parts[number];
    const files = join(out, String(number));
    if (!part) {
      if (!kept) throw new Error(`Part ${number} of the search index was not made, and none is kept.`);
      return kept.bring(number, files);
    }
    const folder = join(plain, String(number));
    await part.finish(folder);
    const packed = await packPart(folder, number, files, part.rows);
    await kept?.put(number, part.mark(), packed, files);
    return packed;
  };
  try {
    return await Promise.all(index.parts.map((_, number) => pack(number)));
  } finally {
    await rm(plain, { recursive: true, force: true });
  }
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
