/** The words that stand in the text of pages, as the search box looks them up: it takes none of them for misspelled. */
import { formsOf } from '../../browser/language/forms.ts';
import { wordsOf } from '../../browser/language/words-of.ts';
import { speechOf, type Lang } from '../../words/lang.ts';

/** Each word's forms under one name, once, in no order. Figures and the shortest words are left out. */
export function wordsSaid(lang: Lang, texts: Iterable<string>): string[] {
  const speech = speechOf(lang);
  const said = new Set<string>();
  for (const text of texts) for (const word of wordsOf(text, speech)) said.add(word);
  const known = new Set<string>();
  for (const word of said) if (!/\d/.test(word) && word.length > 2) known.add(formsOf(word, speech));
  return [...known];
}
