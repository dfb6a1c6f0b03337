/**
 * The pages of the last build with the same program, kept beside it. A page is taken from there as long as all it was
 * made of still says the same; then it is neither made nor given its last form again. In a kept page a sign stands for
 * the edition's mark (said.ts).
 *
 * What lies in the program's folder: the pages end to end in one file, notes about them, a folder of the scripts, styles
 * and pictures they name, and the parts of the search index. The notes are put in place last and name their file of pages
 * and their parts, so that a build which is stopped leaves those of the build before.
 */
import { existsSync } from 'node:fs';
import { mkdir, readdir, readFile, rename, rm } from 'node:fs/promises';
import { join } from 'node:path';
import type { NamedCard } from '../cards/add-cards.ts';
import type { PageLinks } from '../portable/make-portable.ts';
import { madeFolder } from '../portable/made-files.ts';
import type { Pictures } from './pictures.ts';
import { isKeptPart } from '../search/kept-parts.ts';
import { isAbandoned, unfinished, writeWhole } from '../support/whole-file.ts';
import { changed, type Said } from './said.ts';
import type { Rests } from './read-log.ts';

const notesFile = 'pages.json';
const pagesFile = /^pages-.*\.html$/;

/** What the thread that finishes pages knows of one. */
export interface FinishedPage {
  /** In the file of pages [bytes]. */
  readonly at: number;
  readonly length: number;
  readonly links: PageLinks;
  /** Scripts, styles and pictures it names, in the folder Astro makes for them. */
  readonly names: readonly string[];
  /** Whether it has the search box. */
  readonly box: boolean;
}

export interface KeptPage extends FinishedPage {
  readonly rests: Rests;
  readonly card?: NamedCard | undefined;
}

export interface Notes {
  /** Every file of the site before pages are finished: links lead to these. */
  readonly files: readonly string[];
  readonly said: Said;
  readonly made: Readonly<Record<string, Rests>>;
  readonly pages: Readonly<Record<string, KeptPage>>;
  readonly pictures: Pictures;
  /** Folders of the parts of the search index, by number. */
  readonly parts: readonly string[];
}

export interface KeptPages {
  /** Pages that are as they were. */
  readonly pages: ReadonlyMap<string, KeptPage>;
  readonly made: Notes['made'];
  /** Those that they show. */
  readonly pictures: Pictures;
  /** The file of pages. */
  readonly from: string;
  /** The folder of what they name. */
  readonly named: string;
  readonly parts: Notes['parts'];
}

/** Where a build that runs writes its pages end to end. */
export const newPagesFile = (folder: string): string => unfinished(join(folder, 'pages'));
const namedFolder = (folder: string): string => join(folder, 'named');

/** Those of the build before that still hold. */
export async function keptPages(
  folder: string,
  now: { readonly files: readonly string[]; readonly said: Said },
): Promise<KeptPages | undefined> {
  const notes = join(folder, notesFile);
  if (!existsSync(notes)) return undefined;
  const { file, files, said, made, pages, pictures, parts } = JSON.parse(await readFile(notes, 'utf8')) as Stored;
  const from = join(folder, file);
  if (!existsSync(from) || files.join('\n') !== now.files.join('\n')) return undefined;
  const holds = whatHolds(made, changed(said, now.said));
  const standing = Object.entries(pages).filter(([, { rests }]) => holds(rests));
  const shown = new Set(standing.flatMap(([, { names }]) => names.map((name) => `${madeFolder}/${name}`)));
  return {
    pages: new Map(standing),
    made,
    pictures: Object.fromEntries(Object.entries(pictures).filter(([name]) => shown.has(name))),
    from,
    named: namedFolder(folder),
    parts,
  };
}

type Stored = Notes & { readonly file: string };

/** Whether something rests on nothing that has changed, itself or through what it uses. */
export function whatHolds(made: Notes['made'], differs: ReadonlySet<string>): (rests: Rests) => boolean {
  let standing = new Map(Object.entries(made));
  const holds = ({ reads, uses }: Rests): boolean =>
    reads.every((what) => !differs.has(what)) && uses.every((name) => standing.has(name));
  // What falls takes with it what uses it, until nothing more does.
  for (let left = -1; left !== standing.size;) {
    left = standing.size;
    standing = new Map([...standing].filter(([, rests]) => holds(rests)));
  }
  return holds;
}

/** Keeps what a build has made; `written` is its file of pages, `dist` the finished site. */
export async function keepPages(folder: string, notes: Notes, written: string, dist: string): Promise<void> {
  const named = namedFolder(folder);
  await mkdir(named, { recursive: true });
  const there = new Set(await readdir(named));
  const made = join(dist, madeFolder);
  const names = existsSync(made) ? await readdir(made) : [];
  for (const name of names) if (!there.has(name)) writeWhole(join(named, name), await readFile(join(made, name)));
  const stored: Stored = { file: `pages-${process.pid}-${Date.now()}.html`, ...notes };
  await rename(written, join(folder, stored.file));
  writeWhole(join(folder, notesFile), JSON.stringify(stored));
  for (const name of await readdir(folder))
    if (name !== stored.file && !notes.parts.includes(name) && isLeft(name))
      await rm(join(folder, name), { recursive: true, force: true });
}

/** Of the build before, or of one that was stopped. */
const isLeft = (name: string): boolean => pagesFile.test(name) || isKeptPart(name) || isAbandoned(name);
