/**
 * The islands of a page. One that wakes when it is reached names in the page the files it needs, in their order; they
 * are fetched then, so that six calculators share one kit. Those that wake at once are one script in the head, with
 * nothing in it that they do not use; what the others need as well stays a file of its own.
 */
import { basename } from 'node:path';
import { table } from './chunk-needs.ts';
import { load, type ClassicScripts } from './classic-scripts.ts';
import type { Edit } from './edits.ts';
import type { HashedFiles } from './hashed-files.ts';
import { lookUp, readRuntime } from './island-runtime.ts';
import { madeFolder } from './made-files.ts';
import type { Page, PageElement } from './parse-page.ts';

/** An island's attributes that name what it loads. */
export const moduleAttributes = ['component-url', 'renderer-url', 'before-hydration-url'];

/** Without these an island would sleep on, and nothing would say why. */
const required = ['component-url', 'renderer-url'];

/** Islands that wake without being reached. */
const atOnce = ['load', 'only', 'idle'];

/** Astro asks a second time under an address made from the name, with a query behind it. */
const findFiles = `const ${lookUp} = (list) => globalThis.${load}(decodeURI(list).split('/').at(-1).split('?')[0].split(' '));`;

export interface IslandSet {
  /** Paths of the scripts in dist, in their order. */
  readonly files: readonly string[];
  readonly edits: readonly Edit[];
  /** Inline scripts the first of them has taken in. */
  readonly taken: ReadonlySet<PageElement>;
  /** Names of the scripts that come when an island is reached. */
  readonly later: readonly string[];
}

export class Islands {
  readonly #scripts: ClassicScripts;
  readonly #files: HashedFiles;
  readonly #runtimes = new Map<string, Promise<string>>();
  readonly #sets = new Map<string, Promise<readonly string[]>>();

  constructor(scripts: ClassicScripts, files: HashedFiles) {
    this.#scripts = scripts;
    this.#files = files;
  }

  async forPage(page: Page): Promise<IslandSet | undefined> {
    const islands = page.elements.filter((e) => e.tag === 'astro-island');
    if (islands.length === 0) return undefined;
    const runtime = readRuntime(page);
    const unnamed = islands.filter((i) => !required.every((attribute) => i.attributes[attribute]));
    if (unnamed.length > 0)
      throw new Error(
        `${page.file} has ${unnamed.length} of ${islands.length} islands without ${required.join(' or ')}; ` +
          'src/steps/portable/islands.ts no longer fits how Astro names what an island loads.',
      );
    const edits: Edit[] = [];
    const first = new Set<string>();
    const later = new Set<string>();
    for (const island of islands) {
      // Made of the project's own path, among others; without it the same content gives the same bytes everywhere.
      const uid = island.attributeAt['uid'];
      if (uid) edits.push({ ...uid, text: '' });
      const isFirst = atOnce.includes(island.attributes['client'] ?? '');
      for (const attribute of moduleAttributes) {
        const url = island.attributes[attribute];
        const at = island.attributeAt[attribute];
        if (url === undefined || !at) continue;
        const name = basename(url);
        const names = isFirst ? [name] : await this.#scripts.order(name);
        if (isFirst) first.add(name);
        else for (const one of names) later.add(one);
        edits.push({ ...at, text: `${attribute}="${names.join(' ')}"` });
      }
    }
    const ahead = first.size > 0 ? await this.#ahead([...first].sort(), [...later].sort()) : [];
    const file = await this.#runtime([findFiles, ...runtime.directives, runtime.element].join('\n'));
    return { files: [...ahead, file], edits, taken: new Set(runtime.scripts), later: [...later] };
  }

  /** Scripts that have islands at hand before the page is asked to wake them. */
  #ahead(names: readonly string[], outside: readonly string[]): Promise<readonly string[]> {
    const key = [...names, '|', ...outside].join(' ');
    const made = this.#sets.get(key) ?? this.#set(names, outside);
    this.#sets.set(key, made);
    return made;
  }

  async #set(names: readonly string[], outside: readonly string[]): Promise<readonly string[]> {
    const own = names.filter((name) => !outside.includes(name));
    const imports = own.map((name, i) => `import * as m${i} from './${name}';`);
    const given = own.map((name, i) => `${JSON.stringify(name)}: m${i}`);
    const source = `${imports.join('\n')}\nObject.assign(globalThis.${table} ??= {}, { ${given.join(', ')} });`;
    const { code, before } = await this.#scripts.bundle(source, own, outside);
    const rest = (
      await Promise.all(names.filter((n) => outside.includes(n)).map((n) => this.#scripts.order(n)))
    ).flat();
    const files = [...new Set([...before, ...rest])].map((name) => `${madeFolder}/${name}`);
    return own.length > 0 ? [...files, await this.#files.add('ahead', 'js', code)] : files;
  }

  #runtime(source: string): Promise<string> {
    const made =
      this.#runtimes.get(source) ??
      this.#scripts.runtime(source).then((code) => this.#files.add('islands', 'js', code));
    this.#runtimes.set(source, made);
    return made;
  }
}
