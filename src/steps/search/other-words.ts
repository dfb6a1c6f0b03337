/** The glossary's aliases, turned round: each other word -> the word the almanac uses. */
import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { parse } from 'yaml';
import { word } from '../../schemas/reference.ts';
import { listFiles } from '../support/files.ts';

/** @param folders the glossaries; a file in a later one stands in for one of the same name */
export async function otherWords(folders: readonly string[]): Promise<Readonly<Record<string, string>>> {
  const files = new Map<string, string>();
  for (const folder of folders.filter((f) => existsSync(f)))
    for (const file of await listFiles(folder)) files.set(file, join(folder, file));
  const found: Record<string, string> = {};
  for (const file of files.values()) {
    const entry = word.safeParse(parse(await readFile(file, 'utf8')));
    if (!entry.success) continue;
    const term = entry.data.term.toLowerCase();
    for (const alias of [...entry.data.aliases, ...entry.data.misspelled])
      if (alias.toLowerCase() !== term) found[alias.toLowerCase()] ??= term;
  }
  return found;
}
