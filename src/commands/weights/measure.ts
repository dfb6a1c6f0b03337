/** What a reader's device must fetch for one page, packed with gzip as a host sends it. */
import { isLang, languages, nameIn } from '../../words/lang.ts';
import { readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { gzipSync } from 'node:zlib';
import { moduleAttributes } from '../../steps/portable/islands.ts';
import { parsePage } from '../../steps/portable/parse-page.ts';

export interface Weight {
  readonly file: string;
  /** Bytes after gzip; pictures are not counted. */
  readonly html: number;
  /** Without the faces, which are fetched once for the whole site. */
  readonly css: number;
  /** What comes before anybody touches the page. */
  readonly js: number;
  /** That and what every calculator of the page needs once it is reached. */
  readonly woken: number;
}

export class Scales {
  readonly #dist: string;
  readonly #packed = new Map<string, number>();
  constructor(dist: string) {
    this.#dist = dist;
  }

  /** Bytes of one file after gzip; each file is packed once. */
  gzip(file: string): number {
    let size = this.#packed.get(file);
    if (size === undefined) {
      size = gzipSync(readFileSync(join(this.#dist, file)), { level: 9 }).length;
      this.#packed.set(file, size);
    }
    return size;
  }

  page(file: string): Weight {
    const { elements } = parsePage(file, readFileSync(join(this.#dist, file), 'utf8'));
    const near = (address: string) => decodeURI(posix.join(posix.dirname(file), address));
    const sum = (addresses: Iterable<string>) =>
      [...new Set([...addresses].map(near))].reduce((total, path) => total + this.gzip(path), 0);
    const sheets = elements
      .filter((e) => e.tag === 'link' && e.attributes['rel'] === 'stylesheet')
      .map((e) => e.attributes['href'] ?? '')
      .filter((href) => !isFaces(href));
    const scripts = elements
      .filter((e) => e.tag === 'script' && e.attributes['src'] !== undefined)
      .map((e) => e.attributes['src'] ?? '');
    const top = posix.relative(posix.dirname(file), '_astro');
    const reached = elements
      .filter((e) => e.tag === 'astro-island' && e.attributes['client'] === 'reached')
      .flatMap((e) => moduleAttributes.flatMap((name) => e.attributes[name]?.split(' ') ?? []))
      .map((name) => `${top}/${name}`);
    return {
      file,
      html: this.gzip(file),
      css: sum(sheets),
      js: sum(scripts),
      woken: sum([...scripts, ...reached]),
    };
  }
}

export const isFaces = (file: string): boolean => /(?:^|\/)faces\.\w+\.css$/.test(file);

/** "calculators" for calculators/x.html, "xx/guides" for xx/guides/x.html in another language, "kept on the device" for the job sheet and own saws, "start and lists" for the rest. */
export function kindOf(file: string): string {
  const folder = posix.dirname(file);
  if (file === 'job-sheet.html' || file === 'own-saws.html') return 'kept on the device';
  if (languages.some((lang) => file === `${nameIn(lang, 'search')}.html`)) return 'search';
  if (file === 'writing.html') return 'for whoever writes';
  return folder === '.' || isLang(folder) ? 'start and lists' : folder;
}
