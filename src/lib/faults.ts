/** The complaint files, read once. */
import { getCollection, type CollectionEntry } from 'astro:content';

let cache: Promise<readonly CollectionEntry<'faults'>[]> | undefined;

export function allFaults(): Promise<readonly CollectionEntry<'faults'>[]> {
  cache ??= getCollection('faults').then((list) =>
    [...list].sort((a, b) => a.data.title.localeCompare(b.data.title, 'en')),
  );
  return cache;
}
