/** Search while one writes: the pages of the running server are read once, and again where a file was saved. */
import { rmSync } from 'node:fs';
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { readFile } from 'node:fs/promises';
import { addSearch } from '../search/add-search.ts';

/** Pages asked for at once. */
const atOnce = 4;

export class LiveSearch {
  readonly #project: string;
  readonly #address: () => string | undefined;
  /** Path of each page ("/jobs/x/") with its HTML. */
  readonly #pages = new Map<string, string>();
  #folder: Promise<string> | undefined;
  /** Paths to read again; "all" before anything was read. */
  #stale: Set<string> | 'all' = 'all';
  #making: Promise<void> | undefined;

  /** @param address of the running server */
  constructor(project: string, address: () => string | undefined) {
    this.#project = project;
    this.#address = address;
  }

  /** A file was saved: an article is a page, what is in a record may be on any. */
  changed(path: string | undefined): void {
    if (path === undefined) this.#stale = 'all';
    else if (this.#stale !== 'all') this.#stale.add(path);
  }

  /** A file of the index, made anew when something was saved since. */
  async file(name: string): Promise<Buffer | undefined> {
    this.#making ??= this.#make().finally(() => (this.#making = undefined));
    await this.#making;
    const folder = await this.#folder;
    return folder === undefined ? undefined : readFile(join(folder, 'pagefind', name)).catch(() => undefined);
  }

  async close(): Promise<void> {
    const folder = await this.#folder;
    if (folder !== undefined) await rm(folder, { recursive: true, force: true });
  }

  async #make(): Promise<void> {
    const stale = this.#stale;
    if (stale !== 'all' && stale.size === 0) return;
    this.#stale = new Set();
    if (stale === 'all') this.#pages.clear();
    await this.#read(stale === 'all' ? ['/'] : [...stale]);
    this.#folder ??= mkdtemp(join(tmpdir(), 'almanac-writing-')).then((made) => {
      // Ctrl+C leaves no time for the way of close().
      process.once('exit', () => rmSync(made, { recursive: true, force: true }));
      return made;
    });
    const folder = await this.#folder;
    await rm(folder, { recursive: true, force: true });
    await mkdir(folder);
    for (const [path, html] of this.#pages) {
      const file = join(folder, path === '/' ? 'index.html' : `${path.slice(1, -1)}.html`);
      await mkdir(dirname(file), { recursive: true });
      await writeFile(file, html);
    }
    await addSearch(folder, this.#project);
  }

  /** Reads pages and, from each, the pages it links to that were not read yet. */
  async #read(start: readonly string[]): Promise<void> {
    const waiting = [...start];
    const seen = new Set([...this.#pages.keys(), ...start]);
    const one = async (path: string): Promise<void> => {
      const html = await this.#page(path);
      if (html === undefined) return void this.#pages.delete(path);
      this.#pages.set(path, html);
      for (const [, link = ''] of html.matchAll(/\shref="(\/(?!@|_)[^"?#]*)/g)) {
        const next = decodeURI(link).replace(/\.html$|\/?$/, '/');
        if (/\.\w+\/$/.test(next) || seen.has(next)) continue;
        seen.add(next);
        waiting.push(next);
      }
    };
    while (waiting.length > 0) await Promise.all(waiting.splice(0, atOnce).map(one));
  }

  async #page(path: string): Promise<string | undefined> {
    const address = this.#address();
    if (address === undefined) return undefined;
    const answer = await fetch(new URL(encodeURI(path), address), { headers: { accept: 'text/html' } }).catch(
      () => undefined,
    );
    return answer?.ok && (answer.headers.get('content-type') ?? '').includes('html') ? answer.text() : undefined;
  }
}
