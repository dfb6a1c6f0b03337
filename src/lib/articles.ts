/** Every article once, with its address. Collections are read a single time: asking on each page is slow at scale. */
import { getCollection, type CollectionEntry } from 'astro:content';
import type { Lang } from '../words/index.ts';

export const folders = ['guides', 'jobs', 'tables', 'explainers', 'calculators'] as const;
export type Folder = (typeof folders)[number];

export interface Article {
  readonly folder: Folder;
  readonly slug: string;
  readonly lang: Lang;
  /** "/guides/cutting-wet/" */
  readonly path: string;
  readonly entry: CollectionEntry<Folder>;
}

function toArticle(folder: Folder, entry: CollectionEntry<Folder>): Article {
  const lang: Lang = entry.id.startsWith('es/') ? 'es' : 'en';
  const slug = entry.id.replace(/^es\//, '');
  return { folder, slug, lang, path: `${lang === 'es' ? '/es' : ''}/${folder}/${slug}/`, entry };
}

let cache: Promise<readonly Article[]> | undefined;

export function allArticles(): Promise<readonly Article[]> {
  cache ??= Promise.all(
    folders.map(async (folder) => (await getCollection(folder)).map((entry) => toArticle(folder, entry))),
  ).then((lists) => lists.flat().sort((a, b) => a.entry.data.title.localeCompare(b.entry.data.title, a.lang)));
  return cache;
}

export async function articlesIn(folder: Folder, lang: Lang = 'en'): Promise<readonly Article[]> {
  return (await allArticles()).filter((a) => a.folder === folder && a.lang === lang);
}

/** The same guide in the other language, when there is one. */
export async function twinOf(article: Article): Promise<Article | undefined> {
  byPath ??= allArticles().then((list) => new Map(list.map((a) => [a.path, a])));
  const inside = `/${article.folder}/${article.slug}/`;
  return (await byPath).get(article.lang === 'es' ? inside : `/es${inside}`);
}

let byPath: Promise<ReadonlyMap<string, Article>> | undefined;
