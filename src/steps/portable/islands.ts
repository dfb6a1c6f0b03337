/** One classic script per set of islands, so that a page carries its own calculators and no others. */
import { basename } from 'node:path';
import { BundleOnce } from './bundle-once.ts';
import type { ClassicScripts } from './classic-scripts.ts';
import type { Edit } from './edits.ts';
import type { HashedFiles } from './hashed-files.ts';
import { lookUp, readRuntime } from './island-runtime.ts';
import type { Page, PageElement } from './parse-page.ts';

const moduleAttributes = ['component-url', 'renderer-url', 'before-hydration-url'];

/** Without these an island would sleep on, and nothing would say why. */
const required = ['component-url', 'renderer-url'];

export interface IslandSet {
  /** Path of the bundle in dist. */
  readonly file: string;
  readonly edits: readonly Edit[];
  /** Inline scripts the bundle has taken in. */
  readonly taken: ReadonlySet<PageElement>;
}

export class IslandBundles {
  readonly #bundles: BundleOnce;

  constructor(scripts: ClassicScripts, files: HashedFiles) {
    this.#bundles = new BundleOnce('islands', scripts, files);
  }

  async forPage(page: Page): Promise<IslandSet | undefined> {
    const islands = page.elements.filter((e) => e.tag === 'astro-island');
    if (islands.length === 0) return undefined;
    const runtime = readRuntime(page);
    const edits: Edit[] = [];
    const names = new Set<string>();
    for (const island of islands) {
      // Made of the project's own path, among others; without it the same content gives the same bytes everywhere.
      const uid = island.attributeAt['uid'];
      if (uid) edits.push({ ...uid, text: '' });
      for (const attribute of moduleAttributes) {
        const url = island.attributes[attribute];
        const at = island.attributeAt[attribute];
        if (url === undefined || !at) continue;
        names.add(basename(url));
        edits.push({ ...at, text: `${attribute}="${basename(url)}"` });
      }
    }
    const unnamed = islands.filter((i) => !required.every((attribute) => i.attributes[attribute]));
    if (unnamed.length > 0)
      throw new Error(
        `${page.file} has ${unnamed.length} of ${islands.length} islands without ${required.join(' or ')}; ` +
          'src/steps/portable/islands.ts no longer fits how Astro names what an island loads.',
      );
    const source = bundleSource([...names].sort(), runtime.directives, runtime.element);
    return { file: await this.#bundles.file(source), edits, taken: new Set(runtime.scripts) };
  }
}

function bundleSource(names: readonly string[], directives: readonly string[], element: string): string {
  const imports = names.map((name, i) => `import * as m${i} from './${name}';`);
  const table = names.map((name, i) => `${JSON.stringify(name)}: m${i}`);
  return [
    ...imports,
    `const ${lookUp} = async (name) => ({ ${table.join(', ')} })[name];`,
    ...directives,
    element,
  ].join('\n');
}
