/** Everything an article may point to. */
import { kindOf, kinds } from '../../schemas/kinds.ts';
import type { ContentFile } from './content-file.ts';

/** What exists outside content/. */
export interface Known {
  /** Components an author may use. */
  readonly components: ReadonlySet<string>;
  readonly figures: ReadonlySet<string>;
  /** Topics with a calculator. */
  readonly topics: ReadonlySet<string>;
  /** Addresses of pages that are not articles: "/", "/search/", "/jobs/". */
  readonly addresses: ReadonlySet<string>;
  /** Pages made from a pattern in src/pages that the check cannot list. */
  readonly patterns: readonly RegExp[];
}

export interface Library extends Known {
  /** File names by folder: ids.hazards has "kickback". */
  readonly ids: Readonly<Record<string, ReadonlySet<string>>>;
  /** "jobs/drive-belt-change" for everything that is a page. */
  readonly pages: ReadonlySet<string>;
}

export function libraryOf(files: readonly ContentFile[], known: Known): Library {
  const ids: Record<string, Set<string>> = Object.fromEntries(
    Object.keys(kinds).map((folder) => [folder, new Set<string>()]),
  );
  const pages = new Set<string>();
  const addresses = new Set(known.addresses);
  for (const { folder, id } of files) {
    ids[folder]?.add(id);
    if (!kindOf(folder)?.page) continue;
    pages.add(`${folder}/${id}`);
    addresses.add(id.startsWith('es/') ? `/es/${folder}/${id.slice(3)}/` : `/${folder}/${id}/`);
  }
  return { ...known, ids, pages, addresses };
}

/** Whether a page stands at "/jobs/x/", with or without the last slash, anchor and query. */
export function hasAddress(library: Library, link: string): boolean {
  const path = (link.split(/[?#]/)[0] ?? '').replace(/\/*$/, '/');
  return library.addresses.has(path) || library.patterns.some((p) => p.test(path));
}
