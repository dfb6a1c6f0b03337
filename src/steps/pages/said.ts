/** What the content says, piece by piece, each as a short mark: two builds compare them and know what has changed. */
import { hash } from 'node:crypto';
import type { SiteData } from '../program/site-data.ts';
import type { ReadLog } from './read-log.ts';

/** "jobs/recoil-cord title" -> a mark of what it says. */
export type Said = Readonly<Record<string, string>>;

const sample = (kind: string) => `sample ${kind}`;

export function saidBy({ store, samples }: SiteData): Said {
  const said: Record<string, string> = {};
  for (const [kind, text] of Object.entries(samples)) said[sample(kind)] = markOf(text);
  for (const [kind, entries] of store) {
    said[kind] = markOf([...entries.keys()]);
    for (const [id, { data, body, filePath }] of entries) {
      const piece = (part: string) => `${kind}/${id} ${part}`;
      // Where it stands decides what its pictures are.
      said[piece('body')] = markOf([filePath, body]);
      said[piece('*')] = markOf(Object.keys(data));
      for (const [field, value] of Object.entries(data)) said[piece(field)] = markOf(value);
    }
  }
  return said;
}

/** What differs between two builds, by name. */
export function changed(before: Said, now: Said): ReadonlySet<string> {
  const names = new Set([...Object.keys(before), ...Object.keys(now)]);
  return new Set([...names].filter((name) => before[name] !== now[name]));
}

/**
 * In a kept page the edition, which follows every change, as a page in this language says it. Between signs that stand
 * for nothing (Unicode, private use), so that no text holds it.
 */
export const editionIn = (lang: string): string => `${signLead}${lang}\uE0EE`;

/** What such a sign begins with. */
export const signLead = '\uE0ED';

/** The site as pages read it: what is read besides articles and records is noted too. */
export function notedSite(site: SiteData, reads: ReadLog): SiteData & { readonly reads: ReadLog } {
  const samples = new Proxy(site.samples, {
    get: (of, kind) => (reads.note(sample(String(kind))), Reflect.get(of, kind) as unknown),
  });
  return { ...site, samples, edition: { ...site.edition, standIn: editionIn }, reads };
}

/** A short value is its own mark. */
function markOf(value: unknown): string {
  const text = JSON.stringify(value) ?? 'nothing';
  return text.length < 24 ? text : hash('sha1', text, 'base64');
}
