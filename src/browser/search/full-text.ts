/** Pagefind's answers, row by row: one question, and more only where that one finds too little. */
import { createInstance, type Fragment, type Instance } from 'almanac:pagefind';
import type { Lang } from '../../words/lang.ts';
import { plainly } from '../language/sayings.ts';
import { carrying } from '../language/stop-words.ts';
import { normalized, wordsOf } from '../language/words-of.ts';
import { readBundle } from './index-files.ts';
import type { List } from './list.ts';
import { speechIn } from './speech.ts';

export interface TextHit {
  readonly score: number;
  readonly read: () => Promise<Fragment>;
}

/** Fewer pages than this, and the question is asked again with each word left out. */
const tooFew = 3;
/** What a page without one of the words counts. */
const withoutOne = 0.6;
const mostWords = 8;

let instance: Promise<Instance> | undefined;

export function openFullText(lang: Lang): Promise<Instance> {
  instance ??= open(lang).catch((reason: unknown) => {
    instance = undefined;
    throw reason;
  });
  return instance;
}

/** What Pagefind starts from comes in one script; it would ask for three files, one of them after the others. */
async function open(lang: Lang): Promise<Instance> {
  await readBundle(`start.${lang}`);
  const opened = createInstance({ basePath: '/pagefind/', baseUrl: '/', noWorker: true, excerptLength: 24 });
  // Asked for nothing, it answers when it has started.
  await opened.search('');
  return opened;
}

/** What a question's words stand in is fetched while the list is still on its way, which alone knows what is meant. */
export function readAhead(question: string, lang: Lang): void {
  Promise.all([openFullText(lang), speechIn(lang)])
    .then(([fullText, speech]) => {
      const words = carrying(wordsOf(plainly(normalized(question, speech), speech), speech), speech);
      return fullText.preload(words.join(' '));
    })
    .catch(() => undefined);
}

export async function searchText(words: readonly string[], list: List): Promise<Map<number, TextHit>> {
  const fullText = await openFullText(list.lang);
  const found = new Map<number, TextHit>();
  const ask = async (some: readonly string[], counts: number) => {
    if (some.length === 0) return;
    const { results } = await fullText.search(some.join(' '));
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
