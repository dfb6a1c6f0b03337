/** The glossary's aliases, turned round: each other word -> the word the almanac uses. */
import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { parse } from 'yaml';
import { word } from '../../schemas/reference.ts';
import { listFiles } from '../support/files.ts';

export async function otherWords(glossary: string): Promise<Readonly<Record<string, string>>> {
  const found: Record<string, string> = {};
  if (!existsSync(glossary)) return found;
  for (const file of await listFiles(glossary)) {
    const entry = word.safeParse(parse(await readFile(join(glossary, file), 'utf8')));
    if (!entry.success) continue;
    const term = entry.data.term.toLowerCase();
    for (const alias of [...entry.data.aliases, ...entry.data.misspelled])
      if (alias.toLowerCase() !== term) found[alias.toLowerCase()] ??= term;
  }
  return found;
}
