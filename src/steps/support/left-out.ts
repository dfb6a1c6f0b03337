/** What the shop's shop.yaml leaves out of the knowledge. A broken file is the content check's to report. */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'yaml';
import { shopFile } from '../../schemas/places.ts';

/** "jobs/drive-belt-change" for each page. */
export function leftOut(projectFolder: string): ReadonlySet<string> {
  const path = join(projectFolder, shopFile);
  if (!existsSync(path)) return new Set();
  try {
    return leftOutBy(parse(readFileSync(path, 'utf8')));
  } catch {
    return new Set();
  }
}

/** @param shop what shop.yaml holds */
export function leftOutBy(shop: unknown): ReadonlySet<string> {
  const list = (shop as { leaveOut?: unknown } | null | undefined)?.leaveOut;
  return new Set(Array.isArray(list) ? list.filter((page): page is string => typeof page === 'string') : []);
}

/** Whether an entry of a kind's folder is left out; a guide goes with its twins in other languages. */
export function isLeftOut(pages: ReadonlySet<string>, folder: string, id: string): boolean {
  return pages.has(`${folder}/${id.replace(/^[a-z]{2}\//, '')}`);
}
