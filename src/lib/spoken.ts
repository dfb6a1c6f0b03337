/** The languages this shop's site speaks, English first. */
import { languages, wordsFor, type Lang } from '../words/index.ts';
import { shop } from './shop.ts';

export const spoken: readonly Lang[] = languages.filter((lang) => shop.languages.includes(lang));

/** A page that stands in every language, once for each: at the root in English, else in a folder. */
export const inEachLanguage = () => spoken.map((lang) => ({ params: { lang: folderOf(lang) }, props: { lang } }));

/** For the addresses of src/pages/[...lang]: English has no folder. */
export const folderOf = (lang: Lang): string | undefined => (lang === languages[0] ? undefined : lang);

/** For whoever chooses one: each by its own name. */
export const offered = spoken.map((lang) => ({ lang, name: wordsFor(lang).language }));
