/** Every article once, with its address. */
import type { CollectionEntry } from 'astro:content';
import { addressIn, first, nameIn, splitName, type Lang } from '../words/index.ts';
import { collection, entryOf } from './collection.ts';
import { once } from './once.ts';
import { spoken } from './spoken.ts';

/** What the bench reads: in English. */
export const benchFolders = ['jobs', 'tables', 'explainers', 'calculators'] as const;
export const folders = ['guides', ...benchFolders] as const;
export type Folder = (typeof folders)[number];

export interface Article {
  readonly folder: Folder;
  readonly slug: string;
  readonly lang: Lang;
  /** "/guides/cutting-wet/", the same in every language */
  readonly inside: string;
  /** "/es/guides/cutting-wet/" */
  readonly path: string;
  readonly entry: CollectionEntry<Folder>;
}

function toArticle(folder: Folder, entry: CollectionEntry<Folder>): Article {
  const { lang, name: slug } = splitName(entry.id);
  const inside = `/${folder}/${slug}/`;
  return { folder, slug, lang, inside, path: addressIn(lang, inside), entry };
}

/** In no order: whoever asks here has read no title, and is not made anew when one changes. */
const everyArticle = once('articles', async (): Promise<readonly Article[]> => {
  const lists = await Promise.all(
    folders.map(async (folder) => (await collection(folder)).map((entry) => toArticle(folder, entry))),
  );
  return lists.flat();
});

/** By their titles. */
export const allArticles = once('articles by title', async (): Promise<readonly Article[]> =>
  [...(await everyArticle())].sort((a, b) => a.entry.data.title.localeCompare(b.entry.data.title, a.lang)),
);

export async function articlesIn(folder: Folder, lang: Lang = first): Promise<readonly Article[]> {
  return (await allArticles()).filter((a) => a.folder === folder && a.lang === lang);
}

export const isFolder = (name: string): name is Folder => (folders as readonly string[]).includes(name);

/** One article in one language, or nothing where it is not written in that. */
export async function articleIn(folder: Folder, slug: string, lang: Lang): Promise<Article | undefined> {
  const entry = await entryOf(folder, nameIn(lang, slug));
  return entry && toArticle(folder, entry);
}

/** The languages of the site that it is written in. */
export async function languagesOf({ folder, slug }: Article): Promise<readonly Lang[]> {
  const twins = await Promise.all(spoken.map((lang) => articleIn(folder, slug, lang)));
  return spoken.filter((_, at) => twins[at] !== undefined);
}
