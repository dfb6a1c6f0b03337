/**
 * The name of what is published: the day of the newest review, and a mark that changes with every byte of content,
 * program or packages. It is read from what the site is made of, never from a clock, so that the same content always
 * has the same edition.
 */
import { createHash } from 'node:crypto';
import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { places } from '../../schemas/places.ts';
import { isDraft } from '../support/drafts.ts';
import { listFiles } from '../support/files.ts';

export interface Edition {
  /** YYYY-MM-DD */
  readonly day: string;
  /** Eight signs, hexadecimal. */
  readonly mark: string;
}

/** What else a page is made of. */
const program = ['src', 'public'];
const single = ['package-lock.json', 'astro.config.mjs'];

export async function editionOf(projectFolder: string): Promise<Edition> {
  const hash = createHash('sha256');
  let day = '';
  const add = (name: string, bytes: Uint8Array) => hash.update(`${name}\0${bytes.length}\0`).update(bytes);
  for (const place of places)
    for (const [name, bytes] of await filesOf(join(projectFolder, place))) {
      const text = /\.(?:mdx|yaml)$/.test(name) ? new TextDecoder().decode(bytes) : '';
      if (isDraft(text)) continue;
      add(name, bytes);
      const reviewed = /^reviewed:[ \t]*["']?(\d{4}-\d\d-\d\d)/m.exec(text)?.[1] ?? '';
      if (reviewed > day) day = reviewed;
    }
  for (const folder of program)
    for (const [name, bytes] of await filesOf(join(projectFolder, folder))) add(`${folder}/${name}`, bytes);
  for (const name of single)
    if (existsSync(join(projectFolder, name))) add(name, await readFile(join(projectFolder, name)));
  return { day: day || '1970-01-01', mark: hash.digest('hex').slice(0, 8) };
}

export const editionName = ({ day, mark }: Edition): string => `${day}-${mark}`;

/** Files in the order of their names; those with a leading dot, or in such a folder, are passed over. */
async function filesOf(folder: string): Promise<[string, Uint8Array][]> {
  if (!existsSync(folder)) return [];
  const names = (await listFiles(folder)).filter((name) => !name.split('/').some((part) => part.startsWith('.')));
  return Promise.all(
    names.map(async (name): Promise<[string, Uint8Array]> => [name, await readFile(join(folder, name))]),
  );
}
