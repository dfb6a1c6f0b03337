/** Gives a built site its search: indexes the pages, packs the result into dist/pagefind. */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { places } from '../../schemas/places.ts';
import { listFiles } from '../support/files.ts';
import { indexPages } from './index-pages.ts';
import { otherWords } from './other-words.ts';
import { packIndex } from './pack-index.ts';

/** The project's glossary lends the engine its other words. */
export async function addSearch(dist: string, project: string): Promise<void> {
  const pages = (await listFiles(dist)).filter((f) => f.endsWith('.html'));
  const plain = await mkdtemp(join(tmpdir(), 'almanac-search-'));
  try {
    await indexPages(dist, pages, plain);
    await packIndex(
      plain,
      join(dist, 'pagefind'),
      await otherWords(places.map((place) => join(project, place, 'glossary'))),
    );
  } finally {
    await rm(plain, { recursive: true, force: true });
  }
}
