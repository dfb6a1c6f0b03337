/** The lists of checks, and the guide that shows each. */
import type { CollectionEntry } from 'astro:content';
import { articlesIn, type Article } from './articles.ts';
import { collection } from './collection.ts';
import { once } from './once.ts';
import { addressIn, type Lang } from '../words/index.ts';

/** Hand-held saws first: they are by far the most. */
export const allChecks = once('checks', async (): Promise<readonly CollectionEntry<'checks'>[]> =>
  [...(await collection('checks'))].sort((a, b) => b.data.kinds.length - a.data.kinds.length),
);

export const checkPath = (id: string, lang: Lang): string => addressIn(lang, `/check/${id}/`);

export async function guideOf(list: string, lang: Lang): Promise<Article | undefined> {
  return (await articlesIn('guides', lang)).find((a) => a.entry.body?.includes(`<Checks of="${list}"`));
}
