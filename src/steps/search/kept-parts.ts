/**
 * Parts of the search index that are kept from one build to the next, each in a folder named after what it was made of:
 * its packed files, and what the whole site's search needs of it.
 */
import { existsSync } from 'node:fs';
import { cp, mkdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { unfinished } from '../support/whole-file.ts';
import type { PackedPart } from './pack-part.ts';

const filesFolder = 'files';
const aboutFile = 'about.json';
const named = /^part-\d+-[0-9a-f]+$/;

/** Whether a name in the folder is that of a kept part. */
export const isKeptPart = (name: string): boolean => named.test(name);

export class KeptParts {
  readonly #folder: string;
  /** Folder of each part, by its number. */
  readonly names: string[];

  /** @param names of the parts that hold, by number; the others are put in as they are made */
  constructor(folder: string, names: readonly string[] = []) {
    this.#folder = folder;
    this.names = [...names];
  }

  /** Copies the files of a part into the site. */
  async bring(number: number, to: string): Promise<PackedPart> {
    const from = join(this.#folder, this.names[number] ?? '');
    await cp(join(from, filesFolder), to, { recursive: true });
    return JSON.parse(await readFile(join(from, aboutFile), 'utf8')) as PackedPart;
  }

  /** @param files the folder of its files in the site */
  async put(number: number, mark: string, part: PackedPart, files: string): Promise<void> {
    const name = `part-${number}-${mark}`;
    this.names[number] = name;
    const place = join(this.#folder, name);
    if (existsSync(place)) return;
    const making = unfinished(place);
    await mkdir(making, { recursive: true });
    await cp(files, join(making, filesFolder), { recursive: true });
    await writeFile(join(making, aboutFile), JSON.stringify(part));
    // Another build may have put the same one there meanwhile.
    await rename(making, place).catch(() => rm(making, { recursive: true, force: true }));
  }
}
