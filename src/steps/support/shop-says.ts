/** What the steps ask of the shop's shop.yaml: what it leaves out, its color. A broken file is the content check's to report. */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'yaml';
import { shopFile } from '../../schemas/places.ts';

function shopIn(projectFolder: string): unknown {
  const path = join(projectFolder, shopFile);
  if (!existsSync(path)) return undefined;
  try {
    return parse(readFileSync(path, 'utf8'));
  } catch {
    return undefined;
  }
}

/** "jobs/drive-belt-change" for each page. */
export function leftOut(projectFolder: string): ReadonlySet<string> {
  return leftOutBy(shopIn(projectFolder));
}

export function shopColor(projectFolder: string): string | undefined {
  const color = (shopIn(projectFolder) as { color?: unknown } | null | undefined)?.color;
  return typeof color === 'string' ? color : undefined;
}

/** The codes of the languages its site speaks. */
export function languagesOfShop(projectFolder: string): ReadonlySet<string> {
  return languagesBy(shopIn(projectFolder));
}

/** @param shop what shop.yaml holds */
export function languagesBy(shop: unknown): ReadonlySet<string> {
  const list = (shop as { languages?: unknown } | null | undefined)?.languages;
  return new Set(Array.isArray(list) ? list.filter((code): code is string => typeof code === 'string') : []);
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
