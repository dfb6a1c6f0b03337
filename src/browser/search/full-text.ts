/** Pagefind's answers, row by row: one question, and more only where that one finds too little. */
import { createInstance, type Fragment, type Instance } from 'almanac:pagefind';
import type { Lang } from '../../words/lang.ts';
import { plainly } from '../language/sayings.ts';
import { carrying } from '../language/stop-words.ts';
import { normalized, wordsOf } from '../language/words-of.ts';
import { readBundle, readText } from './index-files.ts';
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

/** One part of the index: a large site has several (src/steps/search/index-pages.ts). */
interface OpenPart {
  readonly number: string;
  readonly instance: Instance;
}

let parts: Promise<readonly OpenPart[]> | undefined;

export function openFullText(lang: Lang): Promise<readonly OpenPart[]> {
  parts ??= openAll(lang).catch((reason: unknown) => {
    parts = undefined;
    throw reason;
  });
  return parts;
}

/** What Pagefind starts from comes in one script; it would ask for three files of a part, one after the others. */
async function openAll(lang: Lang): Promise<readonly OpenPart[]> {
  await readBundle(`start.${lang}`);
  const [first = '', ...rest] = (await readText(`parts.${lang}`)).split(' ');
  // The first starts Pagefind's program, which they share; two at once would start it twice, each losing the other's.
  const opened = await open(first);
  return [opened, ...(await Promise.all(rest.map(open)))];
}

async function open(number: string): Promise<OpenPart> {
  const basePath = `/pagefind/${number}/`;
  const instance = createInstance({ basePath, baseUrl: '/', noWorker: true, excerptLength: 24 });
  // Asked for nothing, it answers when it has started.
  await instance.search('');
  return { number, instance };
}

/** What a question's words stand in is fetched while the list is still on its way, which alone knows what is meant. */
export function readAhead(question: string, lang: Lang): void {
  Promise.all([openFullText(lang), speechIn(lang)])
    .then(([fullText, speech]) => {
      const words = carrying(wordsOf(plainly(normalized(question, speech), speech), speech), speech);
      return Promise.all(fullText.map(({ instance }) => instance.preload(words.join(' '))));
    })
    .catch(() => undefined);
}

export async function searchText(words: readonly string[], list: List): Promise<Map<number, TextHit>> {
  const fullText = await openFullText(list.lang);
  const found = new Map<number, TextHit>();
  const ask = async (some: readonly string[], counts: number) => {
    if (some.length === 0) return;
    const asked = fullText.map(async ({ number, instance }) => {
      const { results } = await instance.search(some.join(' '));
      for (const { id, score, data } of results) {
        const row = list.rowOf(number, id);
        if (row !== undefined && score * counts > (found.get(row)?.score ?? 0))
          found.set(row, { score: score * counts, read: data });
      }
    });
    await Promise.all(asked);
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
