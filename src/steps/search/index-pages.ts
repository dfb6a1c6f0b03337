/**
 * Reads built pages into a Pagefind index, one per language of <html lang>. The index of a large site is in several parts
 * of about the same size, so that a changed page asks for a new index of its own part only; a page is always in the same
 * one. The reader asks them all, and sees one list (src/browser/search/full-text.ts).
 */
import { createHash, hash } from 'node:crypto';
import { close, createIndex, type PagefindIndex } from 'pagefind';
import { partsOf, type Row } from './page-parts.ts';

const atOnce = 32;

/** Files the text is kept in: few for a small site to keep offline; for a big one, more, so that a hit reads little. */
const leastFiles = 64;
const pagesInAFile = 12;

/** A site of so many pages has one part: it is quickly made, and one is asked faster than several. */
const onePartUpTo = 500;
const severalParts = 2;

export const partsFor = (pages: number): number => (pages > onePartUpTo ? severalParts : 1);

/** Files that the text of one part is kept in. */
const filesFor = (pages: number, parts: number): number =>
  Math.ceil(Math.max(leastFiles, Math.ceil(pages / pagesInAFile)) / parts);

/**
 * Of the parts an earlier build has left, those of which every page stands as it was; none where the site has come to a
 * size at which its index is parted otherwise.
 * @param before pages of that build
 */
export function partsThatHold(
  pages: readonly string[],
  stands: (page: string) => boolean,
  before: number,
): ReadonlySet<number> {
  const count = partsFor(pages.length);
  if (count !== partsFor(before) || filesFor(pages.length, count) !== filesFor(before, count)) return new Set();
  const changed = new Set(pages.filter((page) => !stands(page)).map((page) => partOf(page, count)));
  return new Set(Array.from({ length: count }, (_, number) => number).filter((number) => !changed.has(number)));
}

/** The part a page is in. */
export const partOf = (page: string, parts: number): number =>
  parts === 1 ? 0 : parseInt(hash('sha1', page).slice(0, 8), 16) % parts;

/**
 * The order in which the pages of a site are best made: those of one part after those of another, so that a part's index
 * is written while others wait; parts that are there already come last.
 */
export function byPart(pages: readonly string[], there: ReadonlySet<number>): (a: string, b: string) => number {
  const count = partsFor(pages.length);
  const last = (part: number) => (there.has(part) ? count : 0);
  const turns = new Map(pages.map((page) => [page, partOf(page, count)]));
  const turn = (page: string) => turns.get(page) ?? 0;
  return (a, b) => turn(a) + last(turn(a)) - turn(b) - last(turn(b));
}

/** Takes pages one after the other. Only those with `data-pagefind-body` are indexed. */
export class IndexPart {
  readonly rows: Row[] = [];
  readonly #index: PagefindIndex;
  readonly #hash = createHash('sha256');
  #given: Promise<void>[] = [];

  constructor(index: PagefindIndex) {
    this.#index = index;
  }

  async add(page: string, html: string): Promise<void> {
    for (const { row, html: part } of partsOf(page, html)) {
      this.#hash.update(`${row.address}\0${part}\0`);
      const added = this.#index.addHTMLFile({ url: row.address, content: part });
      this.#given.push(added.then(({ errors }) => report(row.address, errors)));
      this.rows.push(row);
      // Several at a time: the index is made by a program of its own, on another core.
      if (this.#given.length >= atOnce) await Promise.all(this.#given.splice(0));
    }
  }

  /** Writes the index. */
  async finish(outputPath: string): Promise<void> {
    await Promise.all(this.#given);
    report('index', (await this.#index.writeFiles({ outputPath })).errors);
  }

  /** The same for the same pages in the same order; asked for once, after the last. */
  mark(): string {
    return this.#hash.digest('hex').slice(0, 24);
  }
}

/** The index of a site that is being made; parts that are there already are passed over. */
export class PageIndex {
  readonly parts: readonly (IndexPart | undefined)[];

  private constructor(parts: readonly (IndexPart | undefined)[]) {
    this.parts = parts;
  }

  /**
   * @param pages how many the site has
   * @param there numbers of the parts that need not be made
   */
  static async start(
    pages: number,
    there: ReadonlySet<number> = new Set(),
    count = partsFor(pages),
  ): Promise<PageIndex> {
    const maxFragments = filesFor(pages, count);
    const parts = Array.from({ length: count }, async (_, number) => {
      if (there.has(number)) return undefined;
      const { index, errors } = await createIndex({ maxFragments, keepIndexUrl: true });
      if (!index) throw new Error(`The search index could not be started: ${errors.join('; ')}`);
      return new IndexPart(index);
    });
    return new PageIndex(await Promise.all(parts));
  }

  /** Ends the program that makes it, whatever came of it. */
  close(): Promise<unknown> {
    return close();
  }
}

function report(what: string, errors: readonly string[]): void {
  if (errors.length > 0) throw new Error(`Search index, ${what}: ${errors.join('; ')}`);
}
