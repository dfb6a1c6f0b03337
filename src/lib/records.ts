/** Cautions, sources, machines and words by id, read once. A wrong id stops the build with the id in the message. */
import { getCollection, type CollectionEntry } from 'astro:content';

type RecordFolder = 'hazards' | 'sources' | 'machines' | 'glossary' | 'checks' | 'parts';

const cache = new Map<RecordFolder, Promise<ReadonlyMap<string, unknown>>>();

export async function records<F extends RecordFolder>(
  folder: F,
): Promise<ReadonlyMap<string, CollectionEntry<F>['data']>> {
  const known = cache.get(folder) ?? getCollection(folder).then((list) => new Map(list.map((e) => [e.id, e.data])));
  cache.set(folder, known);
  return (await known) as ReadonlyMap<string, CollectionEntry<F>['data']>;
}

export async function record<F extends RecordFolder>(folder: F, id: string): Promise<CollectionEntry<F>['data']> {
  const found = (await records(folder)).get(id);
  if (!found) throw new Error(`There is no ${folder}/${id}.yaml in the knowledge or in the shop's folder.`);
  return found;
}
