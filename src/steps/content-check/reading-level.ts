/**
 * How hard a text is to read, from the length of its sentences and words.
 *
 * English: Flesch reading ease 206.835 - 1.015 W/S - 84.6 Y/W and Flesch-Kincaid grade 0.39 W/S + 11.8 Y/W - 15.59.
 * Spanish: Szigriszt-Pazos 206.835 - 62.3 Y/W - W/S, read on the INFLESZ bands (65 and more is fairly easy).
 * W words, S sentences, Y syllables. Conventions: colon and semicolon end a sentence; a figure or an abbreviation
 * counts as one syllable. Results over 100 or under 0 are legal on short texts.
 */
export type ReadingLanguage = 'en' | 'es';

export interface Reading {
  readonly words: number;
  readonly sentences: number;
  readonly syllables: number;
}

/** At most this grade, at least this ease. */
export const targets = { grade: 8, englishEase: 60, spanishEase: 65 } as const;

export const englishGrade = ({ words, sentences, syllables }: Reading): number =>
  (0.39 * words) / sentences + (11.8 * syllables) / words - 15.59;

export const englishEase = ({ words, sentences, syllables }: Reading): number =>
  206.835 - (1.015 * words) / sentences - (84.6 * syllables) / words;

export const spanishEase = ({ words, sentences, syllables }: Reading): number =>
  206.835 - (62.3 * syllables) / words - words / sentences;

/** Counts a text whose sentences end in . ! ? : ; or at the end of a line. */
export function readingOf(text: string, lang: ReadingLanguage): Reading {
  const sentences = text
    // A point inside a figure, and the points of a short form, end nothing.
    .replace(/(\d)[.:,](?=\d)/g, '$1')
    .split(/[.!?:;]+(?=\s|$|["'”’)])|\n+/)
    .map((s) => s.match(/[\p{L}\d][\p{L}\d'’-]*/gu) ?? [])
    .filter((words) => words.length > 0);
  const words = sentences.flat();
  const count = lang === 'en' ? englishSyllables : spanishSyllables;
  return {
    words: words.length,
    sentences: sentences.length,
    syllables: words.reduce((sum, word) => sum + word.split('-').reduce((n, part) => n + count(part), 0), 0),
  };
}

const isOne = (word: string): boolean => /\d/.test(word) || /^\p{Lu}{2,}s?$/u.test(word) || word.length < 3;

/** By groups of vowels: a silent e at the end does not count, -le after a consonant and -ed after t or d do. */
export function englishSyllables(written: string): number {
  if (isOne(written)) return 1;
  const word = written.toLowerCase().replace(/['’]s?$/, '');
  const groups = word
    .replace(/(?:[^aeiouylr]e|[^aeiou]re|[aeiouy][lr]e)$/, (end) => end.slice(0, -1))
    .replace(/(?:[^laeiouytd]|[aeiouy][lr])ed$/, (end) => end.slice(0, -2))
    .replace(/(?:[^aeiouylsxzcgh]|[aeiouy][lr])es$/, (end) => `${end.slice(0, -2)}s`)
    .match(/[aeiouy]+/g);
  const hiatus = word.match(/i[ao](?!n|us$)|[aeo]ing|uel/g)?.length ?? 0;
  return Math.max(1, (groups?.length ?? 0) + hiatus);
}

/** Two strong vowels, or a weak one with an accent beside a strong one, are two syllables; any other group is one. */
export function spanishSyllables(written: string): number {
  if (isOne(written)) return 1;
  const groups =
    written
      .toLowerCase()
      .replace(/qu(?=[eiéí])/g, 'q')
      .replace(/gu(?=[eiéí])/g, 'g')
      .replace(/y(?=[aeiouáéíóú])/g, 'j')
      .match(/[aeiouáéíóúüy]+/g) ?? [];
  const inGroup = (group: string): number => {
    const strong = group.match(/[aeoáéóíú]/g)?.length ?? 0;
    return Math.max(1, strong);
  };
  return Math.max(
    1,
    groups.reduce((sum, group) => sum + inGroup(group), 0),
  );
}
