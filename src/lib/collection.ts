/**
 * The articles and records of one kind. Nobody else asks Astro for them: here is noted which page reads what of which, so
 * that a build makes anew only those that say something else.
 */
import { getCollection, type CollectionEntry, type CollectionKey } from 'astro:content';
import { reads } from 'almanac:reads';
import { onceFor } from './once.ts';

type Entry<K extends CollectionKey> = CollectionEntry<K>;

/** By id. Whoever asks has not read yet which there are. */
const entries = onceFor('entries', async (kind: CollectionKey): Promise<ReadonlyMap<string, Entry<CollectionKey>>> => {
  const log = reads;
  const tells = (entry: Entry<CollectionKey>) =>
    log ? noted(entry, (part) => log.note(`${kind}/${entry.id} ${part}`)) : entry;
  return new Map((await getCollection(kind)).map((entry) => [entry.id, tells(entry)]));
});

const all = onceFor('collection', async (kind: CollectionKey): Promise<readonly Entry<CollectionKey>[]> => {
  reads?.note(kind);
  return [...(await entries(kind)).values()];
});

/** Every one. Where one is named, ask for it alone: a page that knows the list is made anew when another is written. */
export function collection<K extends CollectionKey>(kind: K): Promise<readonly Entry<K>[]> {
  return all(kind) as Promise<readonly Entry<K>[]>;
}

/** One, or nothing where there is none of that name. */
export async function entryOf<K extends CollectionKey>(kind: K, id: string): Promise<Entry<K> | undefined> {
  reads?.note(`${kind}/${id} ${anyField}`);
  return (await entries(kind)).get(id) as Entry<K> | undefined;
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
