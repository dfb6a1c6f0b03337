/** The files of a folder, with forward slashes on every system. */
import { readdir } from 'node:fs/promises';
import { join, relative, sep } from 'node:path';

export async function listFiles(folder: string): Promise<string[]> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  return entries
    .filter((e) => e.isFile())
    .map((e) => relative(folder, join(e.parentPath, e.name)).split(sep).join('/'))
    .sort();
}
