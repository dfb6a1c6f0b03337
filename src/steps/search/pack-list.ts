/** Packs what the search box knows beside the full text: for each page its title, other words and headings. */
import {
  kindsInANumber,
  phraseKinds,
  resultKinds,
  type PackedList,
  type PhraseKind,
} from '../../browser/language/packed-list.ts';
import { formsOf } from '../../browser/language/forms.ts';
import { isStopWord } from '../../browser/language/stop-words.ts';
import { wordsOf } from '../../browser/language/words-of.ts';
import type { Speech } from '../../words/say/speech.ts';
import { first, speechOf, type Lang } from '../../words/lang.ts';
import type { Row } from './page-parts.ts';
import type { PagePlace } from './read-fragments.ts';

/** Above so many pages the headings are left out: they cost a third of the list and answer one question in 250. */
const headingsUpTo = 1000;

/** @param said words of the pages' text, as `wordsSaid` gives them */
export function packList(
  lang: Lang,
  rows: readonly Row[],
  places: readonly PagePlace[],
  said: Iterable<string>,
  misspelled: Readonly<Record<string, string>>,
  beside: readonly Lang[],
): PackedList {
  const speech = speechOf(lang);
  const mine = rows.filter((row) => row.lang === lang);
  const placeOf = new Map(places.map((place) => [place.address, place]));
  const numbers = new Map<string, number>();
  const numberOf = (word: string): number => {
    const known = numbers.get(word) ?? numbers.size;
    numbers.set(word, known);
    return known;
  };
  const files = new Map<string, number>();
  const phrases: number[] = [];
  const anchors: string[] = [];
  /** Puts a phrase down; gives how many that were, 0 or 1. */
  const phrase = (kind: PhraseKind, text: string, anchor?: string): number => {
    const words = wordsOf(text, speech).filter((word) => !isStopWord(word, speech));
    if (words.length === 0) return 0;
    phrases.push(phraseKinds.indexOf(kind) + kindsInANumber * words.length, ...words.map(numberOf));
    if (anchor !== undefined) anchors.push(anchor);
    return 1;
  };
  const all = (kind: PhraseKind, texts: readonly string[]): number =>
    texts.reduce((sum, text) => sum + phrase(kind, text), 0);
  const packed = mine.flatMap((row) => {
    const place = placeOf.get(row.address);
    if (!place) return [];
    if (!files.has(place.file)) files.set(place.file, files.size);
    const headings = mine.length > headingsUpTo ? [] : row.headings;
    const count =
      phrase('title', row.title) +
      all('clause', clauses(row.title, speech)) +
      all('alias', row.aliases) +
      headings.reduce((sum, h) => sum + phrase('heading', h.text, h.anchor), 0);
    const kind = resultKinds.indexOf(row.kind);
    return [[row.address, row.title, kind, row.reader, place.page, files.get(place.file) ?? 0, count] as const];
  });
  const inPhrases = new Set([...numbers.keys()].map((word) => formsOf(word, speech)));
  return {
    words: [...numbers.keys()].join(' '),
    known: [...new Set(said)]
      .filter((family) => !inPhrases.has(family))
      .sort()
      .join(' '),
    files: [...files.keys()],
    rows: packed,
    phrases,
    anchors,
    misspelled: lang === first ? misspelled : {},
    beside,
  };
}

/** "Hard to start, or will not start" says two things. */
function clauses(title: string, { titles }: Speech): string[] {
  const head = title.split(titles.of)[0] ?? title;
  const parts = [head, ...title.split(titles.and)].map((part) => part.trim());
  return [...new Set(parts)].filter((part) => part.length > 3 && part !== title);
}
