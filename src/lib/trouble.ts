/** What can be wrong with a saw, as its user says it, in the order of the list. */
import type { CollectionEntry } from 'astro:content';
import { saidIn } from '../schemas/languages.ts';
import { addressIn, first, type Lang } from '../words/index.ts';
import { collection } from './collection.ts';
import type { Row } from './listing.ts';
import { once } from './once.ts';

export const allTrouble = once('trouble', async (): Promise<readonly CollectionEntry<'trouble'>[]> =>
  [...(await collection('trouble'))].sort((a, b) => a.data.order - b.data.order),
);

export const troublePath = (id: string, lang: Lang): string => addressIn(lang, `/trouble/${id}/`);

export async function troubleRows(lang: Lang): Promise<readonly Row[]> {
  return (await allTrouble()).map(({ id, data }) => {
    const { title, line } = saidIn(data, lang);
    return { path: troublePath(id, lang), title, summary: line };
  });
}

/** The customer's page of a complaint at the bench ("faults/hard-to-start"). */
export async function customerPageOf(fault: string): Promise<string> {
  const found = (await allTrouble()).find((t) => t.data.related.includes(fault));
  return found ? troublePath(found.id, first) : '/trouble/';
}
