/**
 * The parts of a site's search index on their way to their files. A part is packed as soon as its last page is there, while
 * those of other parts are still being made.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PageIndex, partOf } from './index-pages.ts';
import type { KeptParts } from './kept-parts.ts';
import { packPart, type PackedPart } from './pack-part.ts';

export interface PartsAsked {
  /** Every page that will come. */
  readonly pages: readonly string[];
  /** Folder of the search in the site. */
  readonly out: string;
  /** Those of the build before, and the numbers of those that hold. */
  readonly kept?: KeptParts | undefined;
  readonly holding?: ReadonlySet<number> | undefined;
  /** A site of this size has so many. */
  readonly count?: number | undefined;
}

/** A part whose pages come in any order, and are given on in theirs: another order would be another index. */
interface Filling {
  /** Its pages. */
  readonly order: string[];
  /** How many of them were given on. */
  given: number;
  /** Those that wait for one before them. */
  readonly waiting: Map<string, string>;
  last: Promise<void>;
}

export class SearchParts {
  readonly #asked: PartsAsked;
  readonly #index: PageIndex;
  /** By number; none for a part that is there. */
  readonly #filling: readonly (Filling | undefined)[];
  readonly #packing = new Map<number, Promise<PackedPart>>();
  /** Where Pagefind writes. */
  readonly #plain = mkdtempSync(join(tmpdir(), 'almanac-search-'));

  private constructor(asked: PartsAsked, index: PageIndex) {
    this.#asked = asked;
    this.#index = index;
    this.#filling = index.parts.map(
      (part) => part && { order: [], given: 0, waiting: new Map(), last: Promise.resolve() },
    );
    for (const page of asked.pages) this.#filling[this.#partOf(page)]?.order.push(page);
    for (const [number, part] of index.parts.entries()) if (!part) this.#complete(number);
  }

  static async start(asked: PartsAsked): Promise<SearchParts> {
    return new SearchParts(asked, await PageIndex.start(asked.pages.length, asked.holding, asked.count));
  }

  /** A page, as it is published; its text is asked for where its part is being made. */
  async add(page: string, html: () => string): Promise<void> {
    const number = this.#partOf(page);
    const filling = this.#filling[number];
    if (!filling) return;
    filling.waiting.set(page, html());
    filling.last = filling.last.then(() => this.#giveOn(number, filling));
    await filling.last;
  }

  async #giveOn(number: number, filling: Filling): Promise<void> {
    const { order, waiting } = filling;
    for (let page = order[filling.given]; page !== undefined; page = order[filling.given]) {
      const html = waiting.get(page);
      if (html === undefined) return;
      waiting.delete(page);
      filling.given += 1;
      await this.#index.parts[number]?.add(page, html);
    }
    this.#complete(number);
  }

  /** By number. No page is yet to come. */
  all(): Promise<readonly PackedPart[]> {
    return Promise.all(this.#index.parts.keys().map((number) => this.#packed(number)));
  }

  /** Whatever came of it. */
  async close(): Promise<void> {
    await this.#index.close();
    rmSync(this.#plain, { recursive: true, force: true });
  }

  #partOf(page: string): number {
    return partOf(page, this.#index.parts.length);
  }

  /** What goes wrong is said when all are asked for. */
  #complete(number: number): void {
    this.#packed(number).catch(() => undefined);
  }

  #packed(number: number): Promise<PackedPart> {
    const packing = this.#packing.get(number) ?? this.#pack(number);
    this.#packing.set(number, packing);
    return packing;
  }

  async #pack(number: number): Promise<PackedPart> {
    const { out, kept } = this.#asked;
    const files = join(out, String(number));
    const part = this.#index.parts[number];
    if (!part) {
      if (!kept) throw new Error(`Part ${number} of the search index was not made, and none is kept.`);
      return kept.bring(number, files);
    }
    const folder = join(this.#plain, String(number));
    await part.finish(folder);
    const packed = await packPart(folder, number, files, part.rows);
    await kept?.put(number, part.mark(), packed, files);
    return packed;
  }
}
