/** The address in the shop's shop.yaml, read before Astro starts. A broken file is the content check's to report. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parse } from 'yaml';
import { shopFile } from '../schemas/places.ts';
import { languages, nameIn } from '../words/lang.ts';
import { leftOut } from './support/shop-says.ts';

export function siteAddress(): string | undefined {
  try {
    const shop: unknown = parse(readFileSync(fileURLToPath(new URL(`../../${shopFile}`, import.meta.url)), 'utf8'));
    const site = (shop as { site?: unknown } | null)?.site;
    return typeof site === 'string' && URL.canParse(site) ? site : undefined;
  } catch {
    return undefined;
  }
}

/** The path a site stands below: "/" or "/shop/". */
export function basePath(site: string | undefined): string {
  return site === undefined ? '/' : new URL(site).pathname.replace(/\/?$/, '/');
}

/** Pages the shop leaves out, as files of the site, each in every language. */
export function leftOutFiles(project: string): ReadonlySet<string> {
  const pages = [...leftOut(project)];
  return new Set(pages.flatMap((page) => languages.map((lang) => `${nameIn(lang, page)}.html`)));
}
