/** The shop's own pages: legal notice, privacy, who works here; named at the foot. */
import type { CollectionEntry } from 'astro:content';
import { addressIn, first, splitName, type Lang } from '../words/index.ts';
import { collection } from './collection.ts';
import { once } from './once.ts';
import { spoken } from './spoken.ts';

export interface OwnPage {
  readonly slug: string;
  readonly lang: Lang;
  /** "/pages/privacy/", the same in every language */
  readonly inside: string;
  readonly path: string;
  readonly entry: CollectionEntry<'pages'>;
}

const all = once('own pages', async (): Promise<readonly OwnPage[]> =>
  (await collection('pages'))
    .map((entry): OwnPage => {
      const { lang, name: slug } = splitName(entry.id);
      const inside = `/pages/${slug}/`;
      return { slug, lang, inside, path: addressIn(lang, inside), entry };
    })
    .sort((a, b) => a.entry.data.title.localeCompare(b.entry.data.title, a.lang)),
);

export async function ownPages(lang: Lang): Promise<readonly OwnPage[]> {
  return (await all()).filter((page) => page.lang === lang);
}

/** For the foot: in the reader's language where there is a twin, else in English. */
export async function ownPagesFor(lang: Lang): Promise<readonly OwnPage[]> {
  const twins = await ownPages(lang);
  const english = (await ownPages(first)).filter((page) => !twins.some((twin) => twin.slug === page.slug));
  return lang === first ? twins : [...twins, ...english];
}

/** The languages of the site that it is written in. */
export async function languagesOfOwn(page: OwnPage): Promise<readonly Lang[]> {
  const same = new Set((await all()).filter((other) => other.slug === page.slug).map((other) => other.lang));
  return spoken.filter((lang) => same.has(lang));
}
