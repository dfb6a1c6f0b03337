/**
 * The scripts, styles and pictures of a site, in the folder Astro makes for them, each named after what is in it. A page
 * that is kept from one build to the next names some of them, and these name others: they are kept and brought back with it.
 */
import { copyFile, readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { readPath } from '../../browser/address/index.ts';

export const madeFolder = '_astro';

/** Files of that folder that a page names. */
export function namesIn(html: string): string[] {
  const found = html.matchAll(/\b_astro\/([^"'\s?#,)<>&]+)/g);
  return [...new Set([...found].flatMap(([, name = '']) => readPath(name) ?? []))];
}

/**
 * Copies what is named, and what that names in turn.
 * @param names may hold some that are no file of their own
 * @param from  where such files are kept
 * @param to    the folder in the site
 * @param there files the site has already
 * @returns all that is needed, copied or there
 */
export async function bringBack(
  names: Iterable<string>,
  from: string,
  to: string,
  there: ReadonlySet<string>,
): Promise<ReadonlySet<string>> {
  const kept = new Set(await readdir(from));
  const needed = new Set<string>();
  const waiting = [...new Set(names)];
  for (let name = waiting.pop(); name !== undefined; name = waiting.pop()) {
    if (needed.has(name) || !kept.has(name)) continue;
    needed.add(name);
    if (name.endsWith('.js')) waiting.push(...namedByScript(await readFile(join(from, name), 'utf8')));
  }
  for (const name of needed) if (!there.has(name)) await copyFile(join(from, name), join(to, name));
  return needed;
}

/** What a script loads later stands in it by name, between quotes. */
const namedByScript = (code: string): string[] =>
  [...code.matchAll(/["'`]([\w.-]+\.js)["'`]/g)].map(([, name = '']) => name);
