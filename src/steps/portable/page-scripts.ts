/** The scripts of one page that are not islands: module files become classic, inline ones move to files. */
import { basename } from 'node:path';
import { needsOf } from './chunk-needs.ts';
import type { ClassicScripts } from './classic-scripts.ts';
import type { Edit } from './edits.ts';
import type { HashedFiles } from './hashed-files.ts';
import { isInline } from './island-runtime.ts';
import { madeFolder } from './made-files.ts';
import type { Page, PageElement } from './parse-page.ts';

export class PageScripts {
  readonly #scripts: ClassicScripts;
  readonly #files: HashedFiles;
  /** Each source is bundled once for the whole site, however many pages ask for it. */
  readonly #made = new Map<string, Promise<readonly string[]>>();

  constructor(scripts: ClassicScripts, files: HashedFiles) {
    this.#scripts = scripts;
    this.#files = files;
  }

  /** `address` turns a file of dist into what this page calls it. */
  async forPage(page: Page, taken: ReadonlySet<PageElement>, address: (file: string) => string): Promise<Edit[]> {
    const edits: Edit[] = [];
    for (const script of page.elements) {
      if (script.tag !== 'script') continue;
      const { type, src } = script.attributes;
      if (taken.has(script)) edits.push({ start: script.start, end: script.end, text: '' });
      else if (type === 'module') {
        const files = await this.#bundled(src === undefined ? script.text : `import './${basename(src)}';`);
        const text = files.map((file) => `<script defer src="${address(file)}"></script>`).join('');
        edits.push({ start: script.start, end: script.end, text });
      } else if (isInline(script)) {
        const file = await this.#files.add('inline', 'js', script.text);
        edits.push({ start: script.start, end: script.end, text: `<script src="${address(file)}"></script>` });
      }
    }
    return edits;
  }

  /** Paths in dist of the classic scripts made from `source`, in their order. */
  #bundled(source: string): Promise<readonly string[]> {
    const made = this.#made.get(source) ?? this.#bundle(source);
    this.#made.set(source, made);
    return made;
  }

  async #bundle(source: string): Promise<readonly string[]> {
    const names = (await needsOf('a script of a page', source)).map((need) => need.chunk);
    const { code, before } = await this.#scripts.bundle(source, names);
    return [...before.map((name) => `${madeFolder}/${name}`), await this.#files.add('page', 'js', code)];
  }
}
