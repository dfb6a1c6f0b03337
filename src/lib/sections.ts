/** The sections of the site by language, in the order of the header and of the list at the foot. */
import { addressIn, first, wordsFor, type Lang } from '../words/index.ts';

export function sectionsOf(lang: Lang): readonly (readonly [path: string, label: string])[] {
  const words = wordsFor(lang);
  const sections = [
    ['/guides/', words.guides],
    // The bench reads English; whoever reads another language is a customer.
    ...(lang === first
      ? ([
          ['/faults/', words.faults],
          ['/jobs/', words.jobs],
          ['/tables/', words.tables],
          ['/calculators/', words.calculators],
          ['/explainers/', words.explainers],
        ] as const)
      : ([
          ['/trouble/', words.trouble],
          ['/check/', words.checkFirst],
          ['/shop/', words.theShop],
        ] as const)),
    ['/search/', words.search],
  ] as const;
  return sections.map(([path, label]) => [addressIn(lang, path), label]);
}
