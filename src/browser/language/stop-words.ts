/** Words that carry no part of a question. Negatives and directions (no, off, out, back) do, and are not among them. */
import type { Tongue } from './forms.ts';

const list = (words: string): ReadonlySet<string> => new Set(words.split(/\s+/));

const always: Readonly<Record<Tongue, ReadonlySet<string>>> = {
  en: list(
    `a an the my our your his her their this that these those it its i we you he she they me us them im ive youre is am are was
    were be been being do does did has have had will would shall should can could may might must of to for in on at by with
    from into onto as and or but if then than so what which who whose how why where when there here some any very really just
    please use using once ok okay completely only still again now today used try tried trying says said get gets got getting keep keeps kept need needs want go goes going make makes much many lot also too until while
    because after does s t let put mean means about help tell show thing everywhere yes hi hello s`,
  ),
  es: list(
    `el la los las lo un una unos unas mi mis su sus tu de del al a en para por con y e o u que cual cuales como cuando donde
    quien es son esta estan este esto estos estas se me le les nos si hay ha he tiene tengo tener ser muy mas puedo puede debo
    debe hago hacer pongo uso usar cuanto cuanta cuantos cuantas ya pero mucho mucha muchos muchas demasiado bastante sola solo otra otro quiere quiero sirve hola favor`,
  ),
};

/** Left out as long as other words remain: nearly every page is about one. */
const soft: Readonly<Record<Tongue, ReadonlySet<string>>> = {
  en: list('saw saws machine machines thing'),
  es: list('sierra sierras maquina maquinas cortadora cortadoras'),
};

export function isStopWord(word: string, lang: Tongue): boolean {
  return always[lang].has(word);
}

/** The words a question stands on; all of them when none would remain. */
export function carrying(words: readonly string[], lang: Tongue): readonly string[] {
  const said = words.filter((w, i) => !isStopWord(w, lang) || isUnit(w, words[i - 1]));
  const sharp = said.filter((w) => !soft[lang].has(w));
  // "floor saw" and "ring saw" are things of their own; "no saw" alone is not.
  return sharp.some((w) => stands(w)) ? sharp : said.length > 0 ? said : words;
}

const isUnit = (word: string, before: string | undefined): boolean => word === 'in' && /^\d/.test(before ?? '');

const stands = (word: string): boolean => word !== 'no' && word.length > 1;
