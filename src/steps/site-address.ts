/** The address in content/shop.yaml, read before Astro starts. A broken file is the content check's to report. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parse } from 'yaml';

export function siteAddress(): string | undefined {
  try {
    const shop: unknown = parse(
      readFileSync(fileURLToPath(new URL('../../content/shop.yaml', import.meta.url)), 'utf8'),
    );
    const site = (shop as { site?: unknown } | null)?.site;
    return typeof site === 'string' && URL.canParse(site) ? site : undefined;
  } catch {
    return undefined;
  }
}
