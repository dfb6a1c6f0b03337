/** The shop's own pages: legal notice, privacy, who works here; named at the foot. */
import { getCollection, type CollectionEntry } from 'astro:content';
import type { Lang } from '../words/index.ts';

export interface OwnPage {
  readonly slug: string;
  readonly lang: Lang;
  readonly path: string;
  readonly entry: CollectionEntry<'pages'>;
}

let cache: Promise<readonly OwnPage[]> | undefined;

function all(): Promise<readonly OwnPage[]> {
  cache ??= getCollection('pages').then((list) =>
    list
      .map((entry): OwnPage => {
        const lang: Lang = entry.id.startsWith('es/') ? 'es' : 'en';
        const slug = entry.id.replace(/^es\//, '');
        return { slug, lang, path: `${lang === 'es' ? '/es' : ''}/pages/${slug}/`, entry };
      })
      .sort((a, b) => a.entry.data.title.localeCompare(b.entry.data.title, a.lang)),
  );
  return cache;
}

export async function ownPages(lang: Lang): Promise<readonly OwnPage[]> {
  return (await all()).filter((page) => page.lang === lang);
}

/** For the foot: in the reader's language where there is a twin, else in English. */
export async function ownPagesFor(lang: Lang): Promise<readonly OwnPage[]> {
  const twins = await ownPages(lang);
  const english = (await ownPages('en')).filter((page) => !twins.some((twin) => twin.slug === page.slug));
  return lang === 'en' ? twins : [...twins, ...english];
}

export async function ownTwinOf(page: OwnPage): Promise<OwnPage | undefined> {
  return (await all()).find((other) => other.slug === page.slug && other.lang !== page.lang);
}
