/** Every article once, with its address. Collections are read a single time: asking on each page is slow at scale. */
import { getCollection, type CollectionEntry } from 'astro:content';
import { addressIn, first, splitName, type Lang } from '../words/index.ts';
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

let cache: Promise<readonly Article[]> | undefined;

export function allArticles(): Promise<readonly Article[]> {
  cache ??= Promise.all(
    folders.map(async (folder) => (await getCollection(folder)).map((entry) => toArticle(folder, entry))),
  ).then((lists) => lists.flat().sort((a, b) => a.entry.data.title.localeCompare(b.entry.data.title, a.lang)));
  return cache;
}

export async function articlesIn(folder: Folder, lang: Lang = first): Promise<readonly Article[]> {
  return (await allArticles()).filter((a) => a.folder === folder && a.lang === lang);
}

/** The languages of the site that it is written in. */
export async function languagesOf(article: Article): Promise<readonly Lang[]> {
  written ??= allArticles().then((list) => new Set(list.map((a) => a.path)));
  const paths = await written;
  return spoken.filter((lang) => paths.has(addressIn(lang, article.inside)));
}

let written: Promise<ReadonlySet<string>> | undefined;
