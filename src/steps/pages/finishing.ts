/**
 * What happens to a page after Astro has made it: its last form, its file, its place in the search; and to one that is
 * kept from the build before, which has its last form already.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { setImmediate } from 'node:timers/promises';
import { PortableSite } from '../portable/make-portable.ts';
import { packSearch, searchFolder } from '../search/add-search.ts';
import { KeptParts } from '../search/kept-parts.ts';
import { SearchParts } from '../search/search-parts.ts';
import { hasBox } from '../search/wake-early.ts';
import { letGo } from '../support/let-go.ts';
import { markOfFile } from '../worker/mark-of-file.ts';
import type { Finished, FinisherGiven } from './between-threads.ts';
import { signLead } from './said.ts';
import type { FinishedPage } from './kept-pages.ts';
import { filesOf, PageFiles } from './page-files.ts';

export class Finishing {
  readonly #given: FinisherGiven;
  readonly #site: PortableSite;
  readonly #files: Set<string>;
  readonly #kept: KeptParts;
  readonly #parts: SearchParts;
  readonly #withBox: string[] = [];
  readonly #folders = new Set<string>();
  readonly #pages: Record<string, FinishedPage> = {};
  readonly #marks: Record<string, string> = {};
  readonly #pageFiles: PageFiles;
  readonly #signs: Signs;

  private constructor(given: FinisherGiven, keptParts: KeptParts, parts: SearchParts) {
    const { dist, files, base, leftOut, keepIn, kept } = given;
    this.#given = given;
    this.#signs = given.signs.map(([sign, said]) => [Buffer.from(sign), Buffer.from(said)]);
    this.#files = new Set(files);
    this.#site = new PortableSite(dist, { files: this.#files, base, leftOut: new Set(leftOut) });
    this.#kept = keptParts;
    this.#parts = parts;
    this.#pageFiles = new PageFiles(
      keepIn.folder,
      keepIn.file,
      filesOf((kept?.pages ?? []).map(([, { place }]) => place)),
    );
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
    const bytes = Buffer.from(html);
    await this.#put(file, bytes, { place: this.#pageFiles.write(bytes), links, names, box: hasBox(html) });
  }

  /** Writes the pages of the build before that stand; new ones are taken in between. */
  async asTheyWere(): Promise<void> {
    for (const [file, page] of this.#given.kept?.pages ?? []) {
      await this.#asItWas(file, page);
      await setImmediate();
    }
  }

  async #asItWas(file: string, page: FinishedPage): Promise<void> {
    this.#site.kept(file, page);
    const bytes = this.#pageFiles.read(page.place);
    const place = this.#given.kept?.together ? this.#pageFiles.write(bytes) : page.place;
    await this.#put(file, bytes, { ...page, place });
  }

  async #put(file: string, bytes: Buffer, page: FinishedPage): Promise<void> {
    const { dist } = this.#given;
    this.#pages[file] = page;
    const published = withoutSigns(bytes, this.#signs);
    const path = join(dist, file);
    if (!this.#folders.has(dirname(path))) mkdirSync(dirname(path), { recursive: true });
    this.#folders.add(dirname(path));
    writeFileSync(path, published);
    // A page with the box is written once more when the search stands.
    if (page.box) this.#withBox.push(file);
    else this.#marks[file] = markOfFile(published);
    await this.#parts.add(file, () => published.toString('utf8'));
  }

  /** All pages are there. The index is made by a program of its own: meanwhile the scripts are. */
  async end(): Promise<Finished> {
    const { dist, project, kept } = this.#given;
    this.#pageFiles.close();
    letGo();
    const searched = { parts: this.#parts, dist, project, withBox: this.#withBox };
    await Promise.all([this.#site.finish(kept?.named), packSearch(searched)]);
    await this.close();
    return { pages: this.#pages, marks: this.#marks, parts: this.#kept.names };
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
