/** Cautions, sources, machines and words by id, read once. A wrong id stops the build with the id in the message. */
import type { CollectionEntry } from 'astro:content';
import { collection, entryOf } from './collection.ts';
import { onceFor } from './once.ts';

type RecordFolder = 'hazards' | 'sources' | 'machines' | 'glossary' | 'checks' | 'parts';

const all = onceFor(
  'records',
  async (folder: RecordFolder): Promise<ReadonlyMap<string, unknown>> =>
    new Map((await collection(folder)).map((e) => [e.id, e.data])),
);

export async function records<F extends RecordFolder>(
  folder: F,
): Promise<ReadonlyMap<string, CollectionEntry<F>['data']>> {
  return (await all(folder)) as ReadonlyMap<string, CollectionEntry<F>['data']>;
}

export async function record<F extends RecordFolder>(folder: F, id: string): Promise<CollectionEntry<F>['data']> {
  const found = await entryOf(folder, id);
  if (!found) throw new Error(`There is no ${folder}/${id}.yaml in the knowledge or in the shop's folder.`);
  return found.data;
}
