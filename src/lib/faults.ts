/** The complaint files, read once. */
import type { CollectionEntry } from 'astro:content';
import { collection } from './collection.ts';
import { once } from './once.ts';

export const allFaults = once('faults', async (): Promise<readonly CollectionEntry<'faults'>[]> =>
  [...(await collection('faults'))].sort((a, b) => a.data.title.localeCompare(b.data.title, 'en')),
);
