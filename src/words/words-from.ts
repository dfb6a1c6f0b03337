/** One language's words, out of those a script can fetch. */
import type { Lang } from './lang.ts';

/** @param files as `import.meta.glob` gives them */
export function wordsFrom<Words>(files: Readonly<Record<string, () => Promise<Words>>>, lang: Lang): Promise<Words> {
  const [, load] = Object.entries(files).find(([file]) => file.startsWith(`./${lang}/`)) ?? [];
  return load ? load() : Promise.reject(new Error(`There are no words in "${lang}".`));
}
