/**
 * Reading level of English: Flesch reading ease 206.835 - 1.015 W/S - 84.6 Y/W and Flesch-Kincaid grade
 * 0.39 W/S + 11.8 Y/W - 15.59; W words, S sentences, Y syllables. Results over 100 or under 0 are legal on short texts.
 */
import { isOneSyllable, type Reading, type ReadingIndex } from '../say/reading.ts';

/** At most this grade, at least this ease. */
const targets = { grade: 8, ease: 60 };

export const grade = ({ words, sentences, syllables }: Reading): number =>
  (0.39 * words) / sentences + (11.8 * syllables) / words - 15.59;

export const ease = ({ words, sentences, syllables }: Reading): number =>
  206.835 - (1.015 * words) / sentences - (84.6 * syllables) / words;

/** By groups of vowels: a silent e at the end does not count, -le after a consonant and -ed after t or d do. */
export function syllables(written: string): number {
  if (isOneSyllable(written)) return 1;
  const word = written.toLowerCase().replace(/['’]s?$/, '');
  const groups = word
    .replace(/(?:[^aeiouylr]e|[^aeiou]re|[aeiouy][lr]e)$/, (end) => end.slice(0, -1))
    .replace(/(?:[^laeiouytd]|[aeiouy][lr])ed$/, (end) => end.slice(0, -2))
    .replace(/(?:[^aeiouylsxzcgh]|[aeiouy][lr])es$/, (end) => `${end.slice(0, -2)}s`)
    .match(/[aeiouy]+/g);
  const hiatus = word.match(/i[ao](?!n|us$)|[aeo]ing|uel/g)?.length ?? 0;
  return Math.max(1, (groups?.length ?? 0) + hiatus);
}

export const reading: ReadingIndex = {
  syllables,
  tooHard: (text) => {
    const [level, easy] = [grade(text), ease(text)];
    if (level <= targets.grade && easy >= targets.ease) return undefined;
    return {
      got: `grade ${level.toFixed(1)} (Flesch-Kincaid), reading ease ${easy.toFixed(1)} (Flesch)`,
      allowed: `grade ${targets.grade} or less and ease ${targets.ease} or more`,
    };
  },
};
