/** What was asked, word by word: what it is taken for, what stands in for a misspelled word, what is left out. */
import { formsOf } from '../language/forms.ts';
import { plainly } from '../language/sayings.ts';
import { siteWord, stem } from '../language/stem.ts';
import { carrying, isStopWord } from '../language/stop-words.ts';
import { normalized, wordsOf } from '../language/words-of.ts';
import type { List } from './list.ts';
import { nearestWord } from './nearest-word.ts';

export interface Replaced {
  readonly typed: string;
  readonly used: string;
}

export interface Question {
  /** The words that carry the question, as they are asked for. */
  readonly words: readonly string[];
  /** Each word's family; the last one, still being typed, may stand for several. */
  readonly families: readonly (readonly string[])[];
  /** For the full text: without "saw" and the like as long as others remain. */
  readonly sharp: readonly string[];
  readonly replaced: readonly Replaced[];
  /** Words that stand on no page. */
  readonly left: readonly string[];
  readonly hasNumber: boolean;
  /** Asked what a word means. */
  readonly forMeaning: boolean;
}

/** Beginnings are taken for a word still being typed from so many letters on, and for so many words at most. */
const beginning = 2;
const mostEndings = 12;

export function readQuestion(text: string, list: List): Question {
  const asked = wordsOf(plainly(normalized(text, list.speech), list.speech), list.speech);
  const open = /[\p{L}\p{N}]$/u.test(text) ? asked.length - 1 : -1;
  const words: string[] = [];
  const families: (readonly string[])[] = [];
  const replaced: Replaced[] = [];
  const left: string[] = [];
  const take = (word: string, ...more: readonly string[]) => {
    words.push(word);
    families.push([...new Set([stem(word, list.speech), ...more])]);
  };
  asked.forEach((word, at) => {
    const standIn = list.misspelled[word];
    if (standIn !== undefined) {
      replaced.push({ typed: word, used: standIn });
      for (const part of wordsOf(standIn, list.speech)) take(part);
    } else if (isStopWord(word, list.speech)) words.push(word);
    else if (isKnown(word, list)) take(word);
    else if (at === open && endings(word, list).length > 0) take(word, ...endings(word, list));
    else {
      const nearest = nearestWord(word, list.words, (w) => -list.weightOf(stem(w, list.speech)));
      const parts = nearest === undefined ? inTwo(word, list) : undefined;
      if (nearest !== undefined) {
        replaced.push({ typed: word, used: nearest });
        take(nearest);
      } else if (parts) for (const part of parts) take(part);
      else if (/\d/.test(word)) take(word);
      else left.push(word);
    }
  });
  // The full text knows nothing of words that mean the same: it is asked with the pages' own.
  const sharp = carrying(words, list.speech).map((word) =>
    list.inText(formsOf(word, list.speech)) ? word : siteWord(word, list.speech),
  );
  return {
    words,
    families,
    // How it is denied is no word to find: pages say it in other ways.
    sharp: sharp.some((w) => !denies(w, list)) ? sharp.filter((w) => !denies(w, list)) : sharp,
    replaced,
    left,
    hasNumber: asked.some((word) => /\d/.test(word)),
    forMeaning: list.speech.meaning?.test(text) ?? false,
  };
}

const denies = (word: string, list: List): boolean => stem(word, list.speech) === 'no';

export function isKnown(word: string, list: List): boolean {
  const family = stem(word, list.speech);
  return family === 'no' || list.standsIn(family) !== undefined || list.inText(formsOf(word, list.speech));
}

/** Families of the words that begin so. */
function endings(word: string, list: List): string[] {
  if (word.length < beginning) return [];
  const found = list.words.filter((w) => w.startsWith(word)).map((w) => stem(w, list.speech));
  return [...new Set(found)].slice(0, mostEndings);
}

/** "chopsaw": two known words written as one. */
function inTwo(word: string, list: List): readonly [string, string] | undefined {
  for (let cut = 3; cut <= word.length - 3; cut += 1) {
    const [a, b] = [word.slice(0, cut), word.slice(cut)];
    if (isKnown(a, list) && isKnown(b, list) && !isStopWord(a, list.speech) && !isStopWord(b, list.speech))
      return [a, b];
  }
  return undefined;
}
