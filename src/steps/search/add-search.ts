/** Gives a built site its search: indexes the pages, packs the result into dist/pagefind. */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { listFiles } from '../support/files.ts';
import { indexPages } from './index-pages.ts';
import { otherWords } from './other-words.ts';
import { packIndex } from './pack-index.ts';

/** `content` is the folder whose glossary lends the engine its other words. */
export async function addSearch(dist: string, content: string): Promise<void> {
  const pages = (await listFiles(dist)).filter((f) => f.endsWith('.html'));
  const plain = await mkdtemp(join(tmpdir(), 'almanac-search-'));
  try {
    await indexPages(dist, pages, plain);
    await packIndex(plain, join(dist, 'pagefind'), await otherWords(join(content, 'glossary')));
  } finally {
    await rm(plain, { recursive: true, force: true });
  }
}
