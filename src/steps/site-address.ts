/** The address in the shop's shop.yaml, read before Astro starts. A broken file is the content check's to report. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parse } from 'yaml';
import { shopFile } from '../schemas/places.ts';

export function siteAddress(): string | undefined {
  try {
    const shop: unknown = parse(readFileSync(fileURLToPath(new URL(`../../${shopFile}`, import.meta.url)), 'utf8'));
    const site = (shop as { site?: unknown } | null)?.site;
    return typeof site === 'string' && URL.canParse(site) ? site : undefined;
  } catch {
    return undefined;
  }
}
