/** Makes every local address of a page relative, and collects those that lead nowhere. */
import { posix } from 'node:path';
import { filesMeant, readPath } from '../../browser/address/index.ts';
import type { Edit } from './edits.ts';
import type { Page, PageElement } from './parse-page.ts';
import { fileFor, relativePath, type FileSet } from './site-paths.ts';
import { unlink } from './unlink.ts';

const addressAttributes = new Set(['href', 'src', 'poster', 'data', 'action', 'xlink:href']);
const elsewhere = /^(?:[a-z][a-z0-9+.-]*:|\/\/)/i;

export interface LinkProblem {
  readonly file: string;
  readonly link: string;
  readonly why: string;
}

/** A link to a place on a page, to be checked when the ids of all pages are known. */
export interface Anchor {
  readonly file: string;
  readonly link: string;
  readonly target: string;
  readonly id: string;
}

/** Ids of each page, by file. */
export type Ids = ReadonlyMap<string, ReadonlySet<string>>;

/** Those that lead nowhere. What is no page (a picture) has no ids to ask for. */
export function lostAnchors(anchors: readonly Anchor[], ids: Ids): LinkProblem[] {
  return anchors
    .filter(({ target, id }) => ids.get(target)?.has(id) === false)
    .map(({ file, link, id }) => ({ file, link, why: `the page has nothing with the id "${id}"` }));
}

export interface SiteFiles {
  readonly files: FileSet;
  /** Put in front of addresses on the page that has no fixed place (404.html): "/" or "/shop/". */
  readonly base: string;
  /** Pages the shop leaves out, by file: a link to one becomes its words, or goes with its row of a list. */
  readonly leftOut: FileSet;
}

export interface Relinked {
  readonly edits: readonly Edit[];
  readonly problems: readonly LinkProblem[];
  readonly anchors: readonly Anchor[];
}

export function relink(page: Page, site: SiteFiles, skip: (element: PageElement) => boolean): Relinked {
  const edits: Edit[] = [];
  const problems: LinkProblem[] = [];
  const anchors: Anchor[] = [];
  const change = (element: PageElement, name: string, rewrite: (value: string) => string) => {
    const value = element.attributes[name];
    const at = element.attributeAt[name];
    if (value === undefined || !at) return;
    const rewritten = rewrite(value);
    if (rewritten !== value) edits.push({ ...at, text: `${name}="${escapeAttribute(rewritten)}"` });
  };
  const point = (link: string): string => {
    const target = targetOf(page.file, link, site);
    if ('why' in target) {
      problems.push({ file: page.file, link, why: target.why });
      return link;
    }
    if (target.anchor) anchors.push({ file: page.file, link, ...target.anchor });
    return target.address;
  };
  const pointEach = (set: string): string =>
    set
      .split(',')
      .map((part) => part.trim().replace(/^\S+/, point))
      .join(', ');
  const unlinked = unlink(page, (link) => leadsOut(link, site.leftOut));
  for (const element of page.elements) {
    if (skip(element) || unlinked.covers(element)) continue;
    for (const name in element.attributes)
      if (addressAttributes.has(name)) change(element, name, point);
      else if (name === 'srcset') change(element, name, pointEach);
  }
  return { edits: [...edits, ...unlinked.edits], problems, anchors };
}

function leadsOut(link: string, leftOut: FileSet): boolean {
  if (leftOut.size === 0 || elsewhere.test(link)) return false;
  const path = readPath(link.split(/[?#]/)[0]?.replace(/^\//, '') ?? '');
  return path !== undefined && path !== '' && filesMeant(path).some((file) => leftOut.has(file));
}

type Target =
  { readonly address: string; readonly anchor?: Pick<Anchor, 'target' | 'id'> | undefined } | { readonly why: string };

/** Of each site, what a link means on the pages of a folder: nine links in ten stand on every page. */
const known = new WeakMap<SiteFiles, Map<string, Target>>();

function targetOf(fromFile: string, link: string, site: SiteFiles): Target {
  // A link within a page means each page's own.
  if (!link.startsWith('/')) return pointTo(fromFile, link, site);
  const targets = known.get(site) ?? new Map<string, Target>();
  known.set(site, targets);
  const place = `${fromFile === '404.html' ? fromFile : posix.dirname(fromFile)} ${link}`;
  const target = targets.get(place) ?? pointTo(fromFile, link, site);
  // A file that is not there may yet be added.
  if (!('why' in target)) targets.set(place, target);
  return target;
}

function pointTo(fromFile: string, link: string, site: SiteFiles): Target {
  if (link === '' || elsewhere.test(link)) return { address: link };
  const [, path = '', query = '', hash = ''] = /^([^?#]*)(\?[^#]*)?(#.*)?$/s.exec(link) ?? [];
  if (path !== '' && !path.startsWith('/')) return { why: 'start links with a slash: /jobs/drive-belt-change/' };
  const file = path === '' ? fromFile : fileFor(path, site.files);
  if (file === undefined) return { why: 'no such page or file' };
  const id = readPath(hash.slice(1));
  if (id === undefined) return { why: 'a percent sign that stands for no letter' };
  const anchor = id === '' ? undefined : { target: file, id };
  if (path === '') return { address: link, anchor };
  return {
    anchor,
    address:
      (fromFile === '404.html' ? `${site.base}${relativePath('index.html', file)}` : relativePath(fromFile, file)) +
      query +
      hash,
  };
}

function escapeAttribute(value: string): string {
  return value.replaceAll('&', '&amp;').replaceAll('"', '&quot;');
}
