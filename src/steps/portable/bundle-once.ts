/** Bundles a piece of source once for the whole site, however many pages ask for it. */
import type { ClassicScripts } from './classic-scripts.ts';
import type { HashedFiles } from './hashed-files.ts';

export class BundleOnce {
  readonly #scripts: ClassicScripts;
  readonly #files: HashedFiles;
  readonly #name: string;
  readonly #made = new Map<string, Promise<string>>();

  /** `name` begins the names of the files made. */
  constructor(name: string, scripts: ClassicScripts, files: HashedFiles) {
    this.#name = name;
    this.#scripts = scripts;
    this.#files = files;
  }

  /** Path in dist of the classic script made from `source`. */
  file(source: string): Promise<string> {
    const made =
      this.#made.get(source) ?? this.#scripts.bundle(source).then((code) => this.#files.add(this.#name, 'js', code));
    this.#made.set(source, made);
    return made;
  }
}
