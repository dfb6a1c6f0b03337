/** Reads built pages into a Pagefind index, one per language of <html lang>. */
import { close, createIndex, type PagefindIndex } from 'pagefind';
import { partsOf, type Row } from './page-parts.ts';

const atOnce = 32;

/** Files the text is kept in: few for a small site to keep offline; for a big one, more, so that a hit reads little. */
const leastFiles = 64;
const pagesInAFile = 12;

/** Takes the pages of a site one after the other. Only those with `data-pagefind-body` are indexed. */
export class PageIndex {
  readonly rows: Row[] = [];
  readonly #index: PagefindIndex;
  #given: Promise<void>[] = [];

  private constructor(index: PagefindIndex) {
    this.#index = index;
  }

  /** @param pages how many the site has */
  static async start(pages: number): Promise<PageIndex> {
    const { index, errors } = await createIndex({
      maxFragments: Math.max(leastFiles, Math.ceil(pages / pagesInAFile)),
      keepIndexUrl: true,
    });
    if (!index) throw new Error(`The search index could not be started: ${errors.join('; ')}`);
    return new PageIndex(index);
  }

  async add(page: string, html: string): Promise<void> {
    for (const { row, html: part } of partsOf(page, html)) {
      const added = this.#index.addHTMLFile({ url: row.address, content: part });
      this.#given.push(added.then(({ errors }) => report(row.address, errors)));
      this.rows.push(row);
      // Several at a time: the index is made by a program of its own, on another core.
      if (this.#given.length >= atOnce) await Promise.all(this.#given.splice(0));
    }
  }

  /** Writes the index and gives what is in it. */
  async finish(outputPath: string): Promise<readonly Row[]> {
    await Promise.all(this.#given);
    report('index', (await this.#index.writeFiles({ outputPath })).errors);
    return this.rows;
  }

  /** Ends the program that makes it, whatever came of it. */
  close(): Promise<unknown> {
    return close();
  }
}

function report(what: string, errors: readonly string[]): void {
  if (errors.length > 0) throw new Error(`Search index, ${what}: ${errors.join('; ')}`);
}
