/**
 * What happens to a page after Astro has made it: its last form, its file, its place in the search; and to one that is
 * kept from the build before, which has its last form already.
 */
import { closeSync, mkdirSync, openSync, readSync, writeFileSync, writeSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { PortableSite, type PageLinks } from '../portable/make-portable.ts';
import { packSearch, searchFolder } from '../search/add-search.ts';
import { KeptParts } from '../search/kept-parts.ts';
import { SearchParts } from '../search/search-parts.ts';
import { hasBox } from '../search/wake-early.ts';
import { letGo } from '../support/let-go.ts';
import type { Finished, FinisherGiven } from './between-threads.ts';
import { signLead } from './said.ts';
import type { FinishedPage } from './kept-pages.ts';

interface Ready {
  readonly bytes: Buffer;
  readonly links: PageLinks;
  readonly names: readonly string[];
  readonly box: boolean;
}

export class Finishing {
  readonly #given: FinisherGiven;
  readonly #site: PortableSite;
  readonly #files: Set<string>;
  readonly #kept: KeptParts;
  readonly #parts: SearchParts;
  readonly #withBox: string[] = [];
  readonly #folders = new Set<string>();
  readonly #pages: Record<string, FinishedPage> = {};
  /** The file of pages that is being written, and that of the build before. */
  readonly #written: number;
  readonly #before: number | undefined;
  #length = 0;
  readonly #signs: Signs;

  private constructor(given: FinisherGiven, keptParts: KeptParts, parts: SearchParts) {
    const { dist, files, base, leftOut, keepIn, kept } = given;
    this.#given = given;
    this.#signs = given.signs.map(([sign, said]) => [Buffer.from(sign), Buffer.from(said)]);
    this.#files = new Set(files);
    this.#site = new PortableSite(dist, { files: this.#files, base, leftOut: new Set(leftOut) });
    this.#kept = keptParts;
    this.#parts = parts;
    this.#written = openSync(keepIn.pages, 'w');
    this.#before = kept && openSync(kept.from, 'r');
  }

  static async begin(given: FinisherGiven): Promise<Finishing> {
    const { dist, pages, keepIn, kept: before } = given;
    const kept = new KeptParts(keepIn.folder, before?.parts);
    const asked = { pages, out: searchFolder(dist), kept, holding: before?.holding };
    return new Finishing(given, kept, await SearchParts.start(asked));
  }

  /** A file of the site that was not known before. */
  added(file: string): void {
    this.#files.add(file);
  }

  async made(file: string, made: string): Promise<void> {
    const { html, links, names } = await this.#site.page(file, made);
    await this.#put(file, { bytes: Buffer.from(html), links, names, box: hasBox(html) });
  }

  async asItWas(file: string, { at, length, links, names, box }: FinishedPage): Promise<void> {
    this.#site.kept(file, { links, names });
    const bytes = Buffer.alloc(length);
    if (this.#before === undefined || readSync(this.#before, bytes, 0, length, at) !== length)
      throw new Error(`The page ${file} is not among the kept ones any more.`);
    await this.#put(file, { bytes, links, names, box });
  }

  async #put(file: string, { bytes, links, names, box }: Ready): Promise<void> {
    const { dist } = this.#given;
    writeSync(this.#written, bytes);
    this.#pages[file] = { at: this.#length, length: bytes.length, links, names, box };
    this.#length += bytes.length;
    const published = withoutSigns(bytes, this.#signs);
    const path = join(dist, file);
    if (!this.#folders.has(dirname(path))) mkdirSync(dirname(path), { recursive: true });
    this.#folders.add(dirname(path));
    writeFileSync(path, published);
    if (box) this.#withBox.push(file);
    await this.#parts.add(file, () => published.toString('utf8'));
  }

  /** All pages are there. The index is made by a program of its own: meanwhile the scripts are. */
  async end(): Promise<Finished> {
    const { dist, project, kept } = this.#given;
    closeSync(this.#written);
    if (this.#before !== undefined) closeSync(this.#before);
    letGo();
    const searched = { parts: this.#parts, dist, project, withBox: this.#withBox };
    await Promise.all([this.#site.finish(kept?.named), packSearch(searched)]);
    await this.close();
    return { pages: this.#pages, parts: this.#kept.names };
  }

  async close(): Promise<void> {
    await this.#parts.close();
  }
}

type Signs = readonly (readonly [sign: Buffer, said: Buffer])[];

/** A page with what readers see in place of each sign. As bytes: most pages are never needed as text. */
function withoutSigns(page: Buffer, signs: Signs): Buffer {
  const pieces: Buffer[] = [];
  let from = 0;
  for (let at = page.indexOf(signLead); at >= 0; at = page.indexOf(signLead, at + 1)) {
    const found = signs.find(([sign]) => sign.equals(page.subarray(at, at + sign.length)));
    if (!found) continue;
    pieces.push(page.subarray(from, at), found[1]);
    from = at + found[0].length;
  }
  return pieces.length === 0 ? page : Buffer.concat([...pieces, page.subarray(from)]);
}
