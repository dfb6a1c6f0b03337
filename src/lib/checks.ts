/** The lists of checks, and the guide that shows each. */
import { getCollection, type CollectionEntry } from 'astro:content';
import { articlesIn, type Article } from './articles.ts';
import { addressIn, type Lang } from '../words/index.ts';

let cache: Promise<readonly CollectionEntry<'checks'>[]> | undefined;

export function allChecks(): Promise<readonly CollectionEntry<'checks'>[]> {
  // Hand-held saws first: they are by far the most.
  cache ??= getCollection('checks').then((list) => [...list].sort((a, b) => b.data.kinds.length - a.data.kinds.length));
  return cache;
}

export const checkPath = (id: string, lang: Lang): string => addressIn(lang, `/check/${id}/`);

export async function guideOf(list: string, lang: Lang): Promise<Article | undefined> {
  return (await articlesIn('guides', lang)).find((a) => a.entry.body?.includes(`<Checks of="${list}"`));
}
