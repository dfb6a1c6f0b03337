/**
 * Finished pages, end to end in files, each written by one build. A page that stands as it was stays in the file it is in,
 * so that a build with little to do writes little; when they are spread over many, a build brings all together again.
 */
import { closeSync, openSync, readSync, statSync, writeSync } from 'node:fs';
import { join } from 'node:path';
import process from 'node:process';
import { unfinished } from '../support/whole-file.ts';

/** Where the bytes of a page are. */
export interface PagePlace {
  /** Name of the file. */
  readonly in: string;
  readonly at: number;
  readonly length: number;
}

const named = /^pages-.*\.html$/;

/** Whether a name in the folder is that of such a file. */
export const isPageFile = (name: string): boolean => named.test(name);

/** The file of this build; while it is being written it bears its writer's number. */
export const newPageFile = (): string => `pages-${process.pid}-${Date.now()}.html`;

/** In more files than this, or with more that no page is in than pages, all are brought together. */
const mostFiles = 8;

export function isSpread(folder: string, places: readonly PagePlace[]): boolean {
  const files = filesOf(places);
  const size = files.reduce((sum, file) => sum + statSync(join(folder, file)).size, 0);
  return files.length > mostFiles || size > 2 * places.reduce((sum, { length }) => sum + length, 0);
}

export const filesOf = (places: Iterable<PagePlace>): readonly string[] => [
  ...new Set([...places].map((place) => place.in)),
];

export class PageFiles {
  readonly #name: string;
  readonly #written: number;
  #length = 0;
  readonly #before: ReadonlyMap<string, number>;

  /** @param before files of earlier builds: open, they can be read though another build has cleared them away */
  constructor(folder: string, name: string, before: readonly string[]) {
    this.#name = name;
    this.#written = openSync(unfinished(join(folder, name)), 'w');
    this.#before = new Map(before.map((file) => [file, openSync(join(folder, file), 'r')]));
  }

  write(bytes: Buffer): PagePlace {
    const place = { in: this.#name, at: this.#length, length: bytes.length };
    writeSync(this.#written, bytes);
    this.#length += bytes.length;
    return place;
  }

  read({ in: file, at, length }: PagePlace): Buffer {
    const from = this.#before.get(file);
    const bytes = Buffer.alloc(length);
    if (from === undefined || readSync(from, bytes, 0, length, at) !== length)
      throw new Error(`${file} holds no ${length} bytes at ${at}: pages kept there are gone.`);
    return bytes;
  }

  close(): void {
    for (const file of [this.#written, ...this.#before.values()]) closeSync(file);
  }
}
