/** The pictures beside articles that an article shows. Only these are handed on: what is handed on is published. */
import { readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { places } from '../../schemas/places.ts';
import { isDraft } from './drafts.ts';
import { listFiles } from './files.ts';

/** ![what](./name.jpg), or the address of one that is named elsewhere in the text. */
const named = /(?:\]\(|\]:)\s*<?(\.{1,2}\/[^\s)>]+\.(?:jpg|png|webp))/g;

/** From the project's folder, in the order of their names. */
export async function shownPictures(project: string, withDrafts: boolean): Promise<string[]> {
  const shown = new Set<string>();
  const there = new Set<string>();
  for (const place of places)
    for (const name of await listFiles(join(project, place)).catch(() => [])) {
      const file = `${place}/${name}`;
      if (/\.(?:jpg|png|webp)$/.test(name)) there.add(file);
      if (!name.endsWith('.mdx')) continue;
      const text = readFileSync(join(project, file), 'utf8');
      if (!withDrafts && isDraft(text)) continue;
      for (const [, src = ''] of text.matchAll(named)) shown.add(posix.join(posix.dirname(file), decodeURI(src)));
    }
  return [...shown].filter((file) => there.has(file)).sort();
}
