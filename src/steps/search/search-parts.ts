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

export class SearchParts {
  readonly #asked: PartsAsked;
  readonly #index: PageIndex;
  /** Pages yet to come, by part. */
  readonly #toCome: Map<number, number>;
  readonly #packing = new Map<number, Promise<PackedPart>>();
  /** Where Pagefind writes. */
  readonly #plain = mkdtempSync(join(tmpdir(), 'almanac-search-'));

  private constructor(asked: PartsAsked, index: PageIndex) {
    this.#asked = asked;
    this.#index = index;
    this.#toCome = new Map(index.parts.keys().map((number) => [number, 0]));
    for (const page of asked.pages) this.#count(this.#partOf(page), 1);
  }

  static async start(asked: PartsAsked): Promise<SearchParts> {
    return new SearchParts(asked, await PageIndex.start(asked.pages.length, asked.holding, asked.count));
  }

  /** The next page, as it is published; its text is asked for where its part is being made. */
  async add(page: string, html: () => string): Promise<void> {
    const number = this.#partOf(page);
    await this.#index.parts[number]?.add(page, html());
    // What goes wrong is said when all are asked for.
    if (this.#count(number, -1) === 0) this.#packed(number).catch(() => undefined);
  }

  /** By number. No page is yet to come. */
  all(): Promise<readonly PackedPart[]> {
    return Promise.all(this.#toCome.keys().map((number) => this.#packed(number)));
  }

  /** Whatever came of it. */
  async close(): Promise<void> {
    await this.#index.close();
    rmSync(this.#plain, { recursive: true, force: true });
  }

  #partOf(page: string): number {
    return partOf(page, this.#index.parts.length);
  }

  #count(number: number, pages: number): number {
    const left = (this.#toCome.get(number) ?? 0) + pages;
    this.#toCome.set(number, left);
    return left;
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
