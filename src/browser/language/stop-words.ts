/** Words that carry no part of a question, and those that carry it. */
import type { Speech } from '../../words/say/speech.ts';

export function isStopWord(word: string, speech: Speech): boolean {
  return speech.stopWords.has(word);
}

/** The words a question stands on; all of them when none would remain. */
export function carrying(words: readonly string[], speech: Speech): readonly string[] {
  const said = words.filter((w, i) => !isStopWord(w, speech) || isUnit(w, words[i - 1]));
  const sharp = said.filter((w) => !speech.softWords.has(w));
  // "floor saw" and "ring saw" are things of their own; "no saw" alone is not.
  return sharp.some((w) => stands(w)) ? sharp : said.length > 0 ? said : words;
}

const isUnit = (word: string, before: string | undefined): boolean => word === 'in' && /^\d/.test(before ?? '');

const stands = (word: string): boolean => word !== 'no' && word.length > 1;
