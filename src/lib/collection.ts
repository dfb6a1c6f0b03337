/**
 * The articles and records of one kind. Nobody else asks Astro for them: here is noted which page reads what of which, so
 * that a build makes anew only those that say something else.
 */
import { getCollection, type CollectionEntry, type CollectionKey } from 'astro:content';
import { reads } from 'almanac:reads';
import { onceFor } from './once.ts';

const all = onceFor('collection', async (kind: CollectionKey): Promise<readonly CollectionEntry<CollectionKey>[]> => {
  const entries = await getCollection(kind);
  if (!reads) return entries;
  const log = reads;
  log.note(kind);
  return entries.map((entry) => noted(entry, (part) => log.note(`${kind}/${entry.id} ${part}`)));
});

export function collection<K extends CollectionKey>(kind: K): Promise<readonly CollectionEntry<K>[]> {
  return all(kind) as Promise<readonly CollectionEntry<K>[]>;
}

/** The entry, which tells what of it is read: "body", or a field of its data. */
function noted<E extends CollectionEntry<CollectionKey>>(entry: E, note: (part: string) => void): E {
  const { body } = entry as { readonly body?: string };
  const data = new Proxy(entry.data, {
    get: (of, name) => (note(String(name)), Reflect.get(of, name) as unknown),
    has: (of, name) => (note(String(name)), Reflect.has(of, name)),
    ownKeys: (of) => (note(anyField), Reflect.ownKeys(of)),
  });
  return Object.defineProperty({ ...entry, data }, 'body', { enumerable: true, get: () => (note('body'), body) });
}

/** Which fields there are, rather than what one says. */
const anyField = '*';
