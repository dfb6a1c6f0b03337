/** Where a language's pages stand: English at the root, any other in a folder of its code. */

/** The mechanic's pages are written in it. */
export const first = 'en';

/** "/guides/" in Spanish is "/es/guides/". */
export const addressOf = (lang: string, path: string): string => (lang === first ? path : `/${lang}${path}`);
