/**
 * How hard a text is to read, from the length of its sentences and words. Each language counts syllables and judges by an
 * index made for it, in its folder's `reading.ts`. Conventions: colon and semicolon end a sentence; a figure or an
 * abbreviation counts as one syllable.
 */

/** What a text has of each. */
export interface Reading {
  readonly words: number;
  readonly sentences: number;
  readonly syllables: number;
}

export interface ReadingIndex {
  /** Of one word. */
  readonly syllables: (word: string) => number;
  /** What is too hard, by which index, and what is asked for; nothing when it is easy enough. */
  readonly tooHard: (reading: Reading) => { readonly got: string; readonly allowed: string } | undefined;
}

/** Counts a text whose sentences end in . ! ? : ; or at the end of a line. */
export function readingOf(text: string, { syllables }: Pick<ReadingIndex, 'syllables'>): Reading {
  const sentences = text
    // A point inside a figure, and the points of a short form, end nothing.
    .replace(/(\d)[.:,](?=\d)/g, '$1')
    .split(/[.!?:;]+(?=\s|$|["'”’)])|\n+/)
    .map((s) => s.match(/[\p{L}\d][\p{L}\d'’-]*/gu) ?? [])
    .filter((words) => words.length > 0);
  const words = sentences.flat();
  return {
    words: words.length,
    sentences: sentences.length,
    syllables: words.reduce((sum, word) => sum + word.split('-').reduce((n, part) => n + syllables(part), 0), 0),
  };
}

/** Figures, abbreviations and words of one or two letters. */
export const isOneSyllable = (word: string): boolean =>
  /\d/.test(word) || /^\p{Lu}{2,}s?$/u.test(word) || word.length < 3;
