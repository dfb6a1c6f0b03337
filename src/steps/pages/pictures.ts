/**
 * Pictures that pages show, as Astro's own build makes them: each named after what was asked of it, made once, and the
 * original left out of the site. The names are Astro's, so that both ways of building give the same files.
 */
import { mkdir, readFile, rm, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { LocalImageService } from 'astro';

interface Options {
  readonly src: { readonly src: string };
}

interface Wanted {
  readonly original: string;
  readonly originalPath: string;
  readonly options: Options;
}

/** Pictures that pages show, by their path in the site. */
export type Pictures = Readonly<Record<string, Picture>>;

export interface Picture {
  readonly original: string;
  /** Some page shows the original as well: it stays part of the site. */
  readonly plainToo: boolean;
}

interface Naming {
  hashTransform: (options: Options, service: string, properties: readonly string[]) => string;
  propsToFilename: (path: string, options: Options, hash: string) => string;
}

/** What Astro's program asks while it makes pages. */
interface AstroAsset {
  imageService?: LocalImageService;
  referencedImages: Set<string>;
  recordReferencedImage: (path: string) => void;
  addStaticImage: (options: Options, properties: readonly string[], originalPath: string) => string;
}

const service = 'astro/assets/services/sharp';

export class PagePictures {
  /** Path in the site -> what it is made of. */
  readonly #wanted = new Map<string, Wanted>();
  readonly #asset: AstroAsset;
  /** Called with each new picture's path in the site, while the page that shows it is being made. */
  readonly #found: (file: string) => void;

  private constructor(naming: Naming, found: (file: string) => void) {
    this.#found = found;
    this.#asset = {
      referencedImages: new Set(),
      recordReferencedImage: () => undefined,
      addStaticImage: (options, properties, originalPath) => {
        const original = options.src.src;
        const address = naming.propsToFilename(original, options, naming.hashTransform(options, service, properties));
        const file = address.replace(/^\//, '');
        if (!this.#wanted.has(file)) this.#found(file);
        this.#wanted.set(file, { original: original.replace(/^\//, ''), originalPath, options });
        return encodeURI(address);
      },
    };
    (globalThis as Record<string, unknown>)['astroAsset'] = this.#asset;
  }

  static async listen(found: (file: string) => void): Promise<PagePictures> {
    // Astro keeps its naming to itself; a test holds that what is made is what Astro makes.
    const astro = dirname(createRequire(import.meta.url).resolve('astro/package.json'));
    const hash = join(astro, 'dist/assets/utils/hash.js');
    return new PagePictures((await import(pathToFileURL(hash).href)) as Naming, found);
  }

  /** @param kept those of pages that stand as they were: made before, their originals left out like the others' */
  async make(dist: string, kept: Pictures): Promise<Pictures> {
    const { imageService } = this.#asset;
    for (const [file, { original, options }] of this.#wanted) {
      if (!imageService) throw new Error('A page shows a picture, and Astro named no way to make it.');
      const bytes = await readFile(join(dist, original));
      const made = await imageService.transform(
        bytes,
        { ...options, src: options.src.src },
        { service: { entrypoint: service, config: {} } } as never,
        console,
      );
      await mkdir(dirname(join(dist, file)), { recursive: true });
      await writeFile(join(dist, file), made.data);
    }
    const all = { ...kept, ...this.#shown() };
    const plain = new Set(Object.values(all).flatMap(({ original, plainToo }) => (plainToo ? [original] : [])));
    for (const original of new Set(Object.values(all).map((picture) => picture.original)))
      if (!plain.has(original)) await rm(join(dist, original));
    return all;
  }

  #shown(): Pictures {
    const { referencedImages } = this.#asset;
    return Object.fromEntries(
      [...this.#wanted].map(([file, { original, originalPath }]) => [
        file,
        { original, plainToo: referencedImages.has(originalPath) },
      ]),
    );
  }
}
