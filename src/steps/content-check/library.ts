/** Everything an article may point to. */
import { addressIn, languages, nameIn, splitAddress, splitName } from '../../words/lang.ts';
import { kindOf, kinds } from '../../schemas/kinds.ts';
import { isLeftOut } from '../support/shop-says.ts';
import type { ContentFile } from './content-file.ts';
import { anchorsOf } from './heading-problems.ts';
import { parseBody } from './parse-body.ts';

/** What exists outside content/. */
export interface Known {
  /** Components an author may use, with the attributes each takes. */
  readonly components: ReadonlyMap<string, ReadonlySet<string>>;
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
  /** Addresses of drafts: pages only while somebody writes. */
  readonly drafts: ReadonlySet<string>;
  /** Anchors of each article's headings, by page. */
  readonly anchors: ReadonlyMap<string, ReadonlySet<string>>;
  /** Pictures: every file of public/ and content/, from the project folder. */
  readonly files: ReadonlySet<string>;
}

/** @param leftOut pages the shop does not publish: they may be named, and links to them go when the site is built */
export function libraryOf(
  files: readonly ContentFile[],
  known: Known,
  pictures: ReadonlySet<string>,
  leftOut: ReadonlySet<string>,
): Library {
  const ids: Record<string, Set<string>> = Object.fromEntries(
    Object.keys(kinds).map((folder) => [folder, new Set<string>()]),
  );
  const pages = new Set<string>();
  const addresses = new Set(known.addresses);
  const drafts = new Set<string>();
  const anchors = new Map<string, ReadonlySet<string>>();
  for (const file of files) {
    const { folder, id } = file;
    ids[folder]?.add(id);
    if (!kindOf(folder)?.page) continue;
    const { lang, name } = splitName(id);
    // Nothing that is published may lead to a draft.
    if (file.draft) {
      drafts.add(addressIn(lang, `/${folder}/${name}/`));
      continue;
    }
    pages.add(`${folder}/${id}`);
    if (file.ending === 'mdx' && !isLeftOut(leftOut, folder, id))
      anchors.set(`${folder}/${id}`, anchorsOf(parseBody(file).pieces));
    // A complaint's file holds every language, and makes a page in each.
    for (const spoken of folder === 'trouble' ? languages : [lang])
      addresses.add(addressIn(spoken, `/${folder}/${name}/`));
  }
  return { ...known, ids, pages, addresses, drafts, anchors, files: pictures };
}

const barePath = (link: string): string => (link.split(/[?#]/)[0] ?? '').replace(/\/*$/, '/');

export const leadsToDraft = (library: Library, link: string): boolean => library.drafts.has(barePath(link));

/** Whether a page stands at "/jobs/x/", with or without the last slash, anchor and query. */
export function hasAddress(library: Library, link: string): boolean {
  const path = barePath(link);
  return library.addresses.has(path) || library.patterns.some((p) => p.test(path));
}

/** "/es/guides/cutting-wet/" -> "guides/es/cutting-wet", the page as content names it. */
export function pageAt(address: string): string | undefined {
  const { lang, path } = splitAddress(address);
  const [, folder, slug] = /^\/([a-z]+)\/([a-z0-9-]+)\/?$/.exec(path) ?? [];
  return folder === undefined || slug === undefined ? undefined : `${folder}/${nameIn(lang, slug)}`;
}
