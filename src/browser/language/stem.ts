/** Words of one family under one name: the forms of a word (./forms.ts), and what means the same (./kin.ts). */
import { formsOf, type Tongue } from './forms.ts';
import { kinOf } from './kin.ts';

interface Kin {
  /** Forms -> the forms they are compared as. */
  readonly family: ReadonlyMap<string, string>;
  /** Forms -> the word these pages use. */
  readonly own: ReadonlyMap<string, string>;
}

const kin: Readonly<Record<Tongue, Kin>> = { en: read('en'), es: read('es') };

function read(lang: Tongue): Kin {
  const pairs = [...kinOf(lang)];
  return {
    family: new Map(pairs.map(([word, own]) => [formsOf(word, lang), formsOf(own, lang)])),
    own: new Map(pairs.map(([word, own]) => [formsOf(word, lang), own])),
  };
}

/** The family of a word as `wordsOf` gives it: "disc" is "blade". */
export function stem(word: string, lang: Tongue): string {
  const forms = formsOf(word, lang);
  return kin[lang].family.get(forms) ?? forms;
}

/** The word these pages use for one that means the same; the word itself when there is none. */
export function siteWord(word: string, lang: Tongue): string {
  return kin[lang].own.get(formsOf(word, lang)) ?? word;
}
