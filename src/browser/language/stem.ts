/** Words of one family under one name: the forms of a word (./forms.ts), and what means the same (./kin.ts). */
import type { Speech } from '../../words/say/speech.ts';
import { formsOf } from './forms.ts';
import { kinOf } from './kin.ts';

interface Kin {
  /** Forms -> the forms they are compared as. */
  readonly family: ReadonlyMap<string, string>;
  /** Forms -> the word these pages use. */
  readonly own: ReadonlyMap<string, string>;
}

const read = new WeakMap<Speech, Kin>();

function kinIn(speech: Speech): Kin {
  const known = read.get(speech);
  if (known) return known;
  const pairs = [...kinOf(speech)];
  const kin = {
    family: new Map(pairs.map(([word, own]) => [formsOf(word, speech), formsOf(own, speech)])),
    own: new Map(pairs.map(([word, own]) => [formsOf(word, speech), own])),
  };
  read.set(speech, kin);
  return kin;
}

/** The family of a word as `wordsOf` gives it: "disc" is "blade". */
export function stem(word: string, speech: Speech): string {
  const forms = formsOf(word, speech);
  return kinIn(speech).family.get(forms) ?? forms;
}

/** The word these pages use for one that means the same; the word itself when there is none. */
export function siteWord(word: string, speech: Speech): string {
  return kinIn(speech).own.get(formsOf(word, speech)) ?? word;
}
