/** The glossary's own list of misspellings: each word as it is written wrong -> the word that is meant. */
import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { parse } from 'yaml';
import { fold } from '../../browser/language/words-of.ts';
import { word } from '../../schemas/reference.ts';
import { listFiles } from '../support/files.ts';

/** @param folders the glossaries; a file in a later one stands in for one of the same name */
export async function misspelledWords(folders: readonly string[]): Promise<Readonly<Record<string, string>>> {
  const files = new Map<string, string>();
  for (const folder of folders.filter((f) => existsSync(f)))
    for (const file of await listFiles(folder)) files.set(file, join(folder, file));
  const found: Record<string, string> = {};
  for (const file of files.values()) {
    const entry = word.safeParse(parse(await readFile(file, 'utf8')));
    if (!entry.success) continue;
    for (const wrong of entry.data.misspelled)
      if (!wrong.includes(' ')) found[fold(wrong)] ??= entry.data.term.toLowerCase();
  }
  return found;
}
