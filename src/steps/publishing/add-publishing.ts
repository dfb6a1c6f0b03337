/**
 * What only a host or a search engine reads. Written after the worker's list of files: some hosts keep such a file to
 * themselves, and a device that waits for it would never have the whole site.
 */
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { listFiles } from '../support/files.ts';
import { headersText } from './headers.ts';
import { robotsText, sitemapText } from './sitemap.ts';

/** @param base path the site stands below  @param site the address it will live at, where the shop has set one */
export async function addPublishing(dist: string, base: string, site: string | undefined): Promise<void> {
  const files = await listFiles(dist);
  await writeFile(join(dist, '_headers'), headersText(files, base));
  if (site === undefined) return;
  const folder = new URL(base, site).href;
  await writeFile(join(dist, 'sitemap.xml'), sitemapText(files, folder));
  await writeFile(join(dist, 'robots.txt'), robotsText(folder));
}
