/**
 * All that pages say which the program does not know: articles and records, the edition, the samples. It is handed to
 * the program when pages are made (see ../program), so that the program stays the same whatever an article says.
 */
import { kinds, type KindName } from '../../schemas/kinds.ts';
import type { ContentFile } from '../content-check/content-file.ts';
import { editionOf, type Edition } from '../edition/edition.ts';
import { samplesOf, type Sample } from '../writing/samples.ts';

/** One article or record as Astro's content collections give it. */
export interface Entry {
  readonly id: string;
  readonly data: Readonly<Record<string, unknown>>;
  readonly body: string | undefined;
  readonly filePath: string;
}

export interface SiteData {
  /** Kind -> id -> entry, in the order of their ids. */
  readonly store: ReadonlyMap<string, ReadonlyMap<string, Entry>>;
  readonly edition: Edition & {
    /** What stands for it in a page that is kept for the next build. */
    readonly standIn?: (lang: string) => string;
  };
  readonly samples: Readonly<Record<string, Sample>>;
}

/** Where the program finds it: a global of this name. */
export const slot = 'almanacSite';

export function handToProgram(site: SiteData): void {
  (globalThis as Record<string, unknown>)[slot] = site;
}

/** @param files what makes up the site, checked */
export async function siteData(project: string, files: readonly ContentFile[]): Promise<SiteData> {
  return { store: storeOf(files), edition: await editionOf(project), samples: samplesOf(project, files) };
}

function storeOf(files: readonly ContentFile[]): SiteData['store'] {
  const store = new Map<string, Map<string, Entry>>();
  for (const [name, kind] of Object.entries(kinds)) {
    const entries = files
      .filter((file) => file.place !== '' && file.folder === name && file.ending === kind.ending && !file.draft)
      .sort((a, b) => (a.id < b.id ? -1 : 1))
      .map((file): [string, Entry] => [file.id, entryOf(file, kinds[name as KindName].schema)]);
    // A kind of content a shop has none of is an empty one: Astro warns of one that is missing.
    store.set(name, new Map(entries));
  }
  return store;
}

function entryOf({ id, path, yaml, body, ending }: ContentFile, schema: { parse: (data: unknown) => unknown }): Entry {
  const data = schema.parse(yaml.data ?? {}) as Entry['data'];
  return { id, data, body: ending === 'mdx' ? body.trim() : undefined, filePath: path };
}
