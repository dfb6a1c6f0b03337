/** The forms of a word under one name: "slipping", "slipped" and "slips" are "slip", "won't" and "does not" are "no". */
import type { Speech } from '../../words/say/speech.ts';

/** The name of a word's forms; the word as `wordsOf` gives it. */
export function formsOf(word: string, speech: Speech): string {
  if (speech.negatives.has(word)) return 'no';
  if (speech.theSaw.has(word)) return 'saw';
  const whole = /\d/.test(word) || word.length < 4;
  return speech.irregular[word] ?? (whole ? word : speech.stem(word));
}
