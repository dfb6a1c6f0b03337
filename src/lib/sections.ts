/** The sections of the site by language, in the order of the header and of the list at the foot. */
import { wordsFor, type Lang } from '../words/index.ts';

export function sectionsOf(lang: Lang): readonly (readonly [path: string, label: string])[] {
  const words = wordsFor(lang);
  if (lang === 'es')
    return [
      ['/es/guides/', words.guides],
      ['/es/trouble/', words.trouble],
      ['/es/check/', words.checkFirst],
      ['/es/shop/', words.theShop],
      ['/es/search/', words.search],
    ];
  return [
    ['/guides/', words.guides],
    ['/faults/', words.faults],
    ['/jobs/', words.jobs],
    ['/tables/', words.tables],
    ['/calculators/', words.calculators],
    ['/explainers/', words.explainers],
    ['/search/', words.search],
  ];
}
