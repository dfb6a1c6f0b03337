/** Pagefind's answers, row by row: one question, and more only where that one finds too little. */
import { createInstance, type Fragment, type Instance } from 'almanac:pagefind';
import type { List } from './list.ts';

export interface TextHit {
  readonly score: number;
  readonly read: () => Promise<Fragment>;
}

/** Fewer pages than this, and the question is asked again with each word left out. */
const tooFew = 3;
/** What a page without one of the words counts. */
const withoutOne = 0.6;
const mostWords = 8;

let instance: Instance | undefined;

export function openFullText(): Instance {
  instance ??= createInstance({ basePath: '/pagefind/', baseUrl: '/', noWorker: true, excerptLength: 24 });
  return instance;
}

export async function searchText(words: readonly string[], list: List): Promise<Map<number, TextHit>> {
  const found = new Map<number, TextHit>();
  const ask = async (some: readonly string[], counts: number) => {
    if (some.length === 0) return;
    const { results } = await openFullText().search(some.join(' '));
    for (const { id, score, data } of results) {
      const row = list.rowOf.get(id);
      if (row !== undefined && score * counts > (found.get(row)?.score ?? 0))
        found.set(row, { score: score * counts, read: data });
    }
  };
  await ask(words, 1);
  if (found.size < tooFew && words.length > 1)
    for (const left of words.slice(0, mostWords))
      await ask(
        words.filter((word) => word !== left),
        withoutOne,
      );
  return found;
}
