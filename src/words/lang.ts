/** Which languages there are, their words, and the one that an address or a file name is in. */
import * as all from './languages.ts';
import { addressOf, first } from './say/address.ts';
import { plain, type Speech } from './say/speech.ts';

export type Lang = keyof typeof all;

/** What a language must bring, and what it may leave out: the English folder has all of it. */
export type Language = Omit<typeof all.en, Optional> & Partial<Pick<typeof all.en, Optional>>;
type Optional = 'reading' | 'speech';

export { first };
export type Other = Exclude<Lang, typeof first>;

const words: Readonly<Record<Lang, Language>> = all;
export const others: readonly Other[] = (Object.keys(all) as Lang[]).filter((lang): lang is Other => lang !== first);
/** English first. */
export const languages: readonly Lang[] = [first, ...others];

export const isLang = (code: string): code is Lang => Object.hasOwn(all, code);

export const wordsIn = (lang: Lang): Language => words[lang];

/** What the search knows of its words; nothing where the language has not said. */
export const speechOf = (lang: Lang): Speech => words[lang].speech ?? plain;

const inEnglish = new Intl.DisplayNames('en', { type: 'language' });

/** "Spanish": what it is called in English, for whoever writes. */
export const nameOf = (lang: Lang): string => inEnglish.of(lang) ?? lang;

/** "es/cutting-wet" is "cutting-wet" in Spanish; what stands in no language's folder is English. */
export function splitName(id: string): { readonly lang: Lang; readonly name: string } {
  const [folder = '', ...rest] = id.split('/');
  return rest.length > 0 && isOther(folder) ? { lang: folder, name: rest.join('/') } : { lang: first, name: id };
}

/** "cutting-wet" in Spanish is "es/cutting-wet". */
export const nameIn = (lang: Lang, name: string): string => (lang === first ? name : `${lang}/${name}`);

/** "/guides/" in Spanish is "/es/guides/". */
export const addressIn: (lang: Lang, path: string) => string = addressOf;

/** "/es/guides/" is "/guides/" in Spanish. */
export function splitAddress(address: string): { readonly lang: Lang; readonly path: string } {
  const [, folder = '', path = ''] = /^\/([^/.]+)(\/.*|\.html)?$/.exec(address) ?? [];
  return isOther(folder) ? { lang: folder, path: path.replace(/^\.html$/, '') || '/' } : { lang: first, path: address };
}

/** The language of the page at an address, as its first folder says. */
export const langAt = (address: string): Lang => splitAddress(address).lang;

const isOther = (code: string): code is Other => code !== first && isLang(code);
