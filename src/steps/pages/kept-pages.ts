/**
 * The pages of the last build with the same program, kept beside it. A page is taken from there as long as all it was
 * made of still says the same; then it is neither made nor given its last form again. In a kept page a sign stands for
 * the edition's mark (said.ts).
 *
 * What lies in the program's folder: the pages end to end (page-files.ts), notes about them, a folder of the scripts, styles
 * and pictures they name, and the parts of the search index. The notes are put in place last and name their files of pages
 * and their parts, so that a build which is stopped leaves those of the build before.
 */
import { existsSync } from 'node:fs';
import { mkdir, readdir, readFile, rename, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { filesMeant } from '../../browser/address/index.ts';
import type { NamedCard } from '../cards/add-cards.ts';
import type { PageLinks } from '../portable/make-portable.ts';
import { madeFolder } from '../portable/made-files.ts';
import type { Pictures } from './pictures.ts';
import { isKeptPart } from '../search/kept-parts.ts';
import { isAbandoned, unfinished, writeWhole } from '../support/whole-file.ts';
import { changed, type Said } from './said.ts';
import { filesOf, isPageFile, isSpread, type PagePlace } from './page-files.ts';
import type { Rests } from './read-log.ts';
import type { PagePath } from './renderer.ts';

const notesFile = 'pages.json';
/** The list of pages, among what was made for the whole site. */
export const listOfPages = 'list of pages';

/** What the thread that finishes pages knows of one. */
export interface FinishedPage {
  readonly place: PagePlace;
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
  readonly paths: readonly PagePath[];
  readonly pages: Readonly<Record<string, KeptPage>>;
  readonly pictures: Pictures;
  /** Folders of the parts of the search index, by number. */
  readonly parts: readonly string[];
}

export interface KeptPages {
  /** Pages that are as they were. */
  readonly pages: ReadonlyMap<string, KeptPage>;
  /** Pictures that they show. */
  readonly pictures: Pictures;
  /** They lie in so many files that they are better brought together. */
  readonly spread: boolean;
}

const pageFilesOf = ({ pages }: Notes) => filesOf(Object.values(pages).map(({ place }) => place));
const namedFolder = (folder: string): string => join(folder, 'named');

/** What the build before has left, and what of it still holds. */
export class BuildBefore {
  readonly #folder: string;
  readonly #notes: Notes;
  readonly #holds: (rests: Rests) => boolean;
  /** The folder of what they name. */
  readonly named: string;

  private constructor(folder: string, notes: Notes, said: Said) {
    this.#folder = folder;
    this.#notes = notes;
    this.#holds = whatHolds(notes.made, changed(notes.said, said));
    this.named = namedFolder(folder);
  }

  /** @param said what the content says today */
  static async load(folder: string, said: Said): Promise<BuildBefore | undefined> {
    const file = join(folder, notesFile);
    if (!existsSync(file)) return undefined;
    const notes = JSON.parse(await readFile(file, 'utf8')) as Notes;
    const there = pageFilesOf(notes).every((one) => existsSync(join(folder, one)));
    return there ? new BuildBefore(folder, notes, said) : undefined;
  }

  get made(): Notes['made'] {
    return this.#notes.made;
  }

  /** Parts of its search index, which is of so many pages. */
  get index(): { readonly pages: number; readonly parts: Notes['parts'] } {
    return { pages: Object.keys(this.#notes.pages).length, parts: this.#notes.parts };
  }

  /** Every page and file the program makes, where that is as it was. */
  get paths(): Notes['paths'] | undefined {
    return this.#holds({ reads: [], uses: [listOfPages] }) ? this.#notes.paths : undefined;
  }

  /** @param files every file of the site before pages are finished */
  pages(files: readonly string[]): KeptPages {
    const { pages, pictures, files: before } = this.#notes;
    if (!leadsTheSame(before, files)) return { pages: new Map(), pictures: {}, spread: false };
    const standing = Object.entries(pages).filter(([, { rests }]) => this.#holds(rests));
    const shown = new Set(standing.flatMap(([, { names }]) => names.map((name) => `${madeFolder}/${name}`)));
    return {
      pages: new Map(standing),
      spread: isSpread(
        this.#folder,
        standing.map(([, { place }]) => place),
      ),
      pictures: Object.fromEntries(Object.entries(pictures).filter(([name]) => shown.has(name))),
    };
  }
}

/**
 * Whether each link leads where it led: all files are still there, and none has come that would be found before one that
 * the same address meant.
 */
export function leadsTheSame(before: readonly string[], now: readonly string[]): boolean {
  const there = new Set(before);
  const here = new Set(now);
  const come = now.filter((file) => !there.has(file));
  const meantBefore = (file: string) => filesMeant(file.replace(/\.html$/, '')).some((other) => there.has(other));
  return before.every((file) => here.has(file)) && !come.some(meantBefore);
}

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

/** Keeps what a build has made; `file` is its file of pages, `dist` the finished site. */
export async function keepPages(folder: string, notes: Notes, file: string, dist: string): Promise<void> {
  const named = namedFolder(folder);
  await mkdir(named, { recursive: true });
  const there = new Set(await readdir(named));
  const made = join(dist, madeFolder);
  const names = existsSync(made) ? await readdir(made) : [];
  for (const name of names) if (!there.has(name)) writeWhole(join(named, name), await readFile(join(made, name)));
  await rename(unfinished(join(folder, file)), join(folder, file));
  writeWhole(join(folder, notesFile), JSON.stringify(notes));
  const used = new Set([...pageFilesOf(notes), ...notes.parts]);
  for (const name of await readdir(folder))
    if (!used.has(name) && isLeft(name)) await rm(join(folder, name), { recursive: true, force: true });
}

/** Of the build before, or of one that was stopped. */
const isLeft = (name: string): boolean => isPageFile(name) || isKeptPart(name) || isAbandoned(name);
