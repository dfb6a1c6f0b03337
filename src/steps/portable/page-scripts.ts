/** The scripts of one page that are not islands: module files become classic, inline ones move to files. */
import { basename } from 'node:path';
import { BundleOnce } from './bundle-once.ts';
import type { ClassicScripts } from './classic-scripts.ts';
import type { Edit } from './edits.ts';
import type { HashedFiles } from './hashed-files.ts';
import { isInline } from './island-runtime.ts';
import type { Page, PageElement } from './parse-page.ts';

export class PageScripts {
  readonly #bundles: BundleOnce;
  readonly #files: HashedFiles;

  constructor(scripts: ClassicScripts, files: HashedFiles) {
    this.#bundles = new BundleOnce('page', scripts, files);
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
        const file = await this.#bundles.file(src === undefined ? script.text : `import './${basename(src)}';`);
        edits.push({ start: script.start, end: script.end, text: `<script defer src="${address(file)}"></script>` });
      } else if (isInline(script)) {
        const file = await this.#files.add('inline', 'js', script.text);
        edits.push({ start: script.start, end: script.end, text: `<script src="${address(file)}"></script>` });
      }
    }
    return edits;
  }
}
