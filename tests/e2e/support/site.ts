/** The built site that the browser tests look at. */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { listFiles } from '../../../src/steps/support/files.ts';

/** `npm test` builds dist first; SITE_DIST names another folder to look at. */
export const dist = process.env['SITE_DIST'] ?? fileURLToPath(new URL('../../../dist/', import.meta.url));

if (!existsSync(join(dist, 'sw.js'))) throw new Error(`There is no finished site in ${dist}. Run npm run build first.`);

/** Every page; 404.html is left out where a page is opened at a place of its own, since hosts show it anywhere. */
export const pages: readonly string[] = (await listFiles(dist)).filter((f) => f.endsWith('.html') && f !== '404.html');
export const calculators = pages.filter((p) => p.startsWith('calculators/'));

/** One page of each kind: the first of each folder, and all that stand at the top. Pages of a kind share one layout. */
export const oneOfEach: readonly string[] = pages.filter((page, at) => {
  const folder = page.slice(0, page.lastIndexOf('/') + 1);
  return folder === '' || pages.findIndex((p) => p.startsWith(folder) && !p.slice(folder.length).includes('/')) === at;
});

export const readPage = (file: string): string => readFileSync(join(dist, file), 'utf8');
