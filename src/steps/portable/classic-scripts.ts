/**
 * Turns Astro's module scripts into classic ones, which also run from disk. Each chunk becomes one classic file for
 * the whole site; a page names the files an island needs, in their order, and what a script loads with import() is
 * added to the page by script tags when it is first needed.
 */
import { readFile, writeFile } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { build, transform, type Plugin } from 'esbuild';
import { classicOptions } from '../support/classic.ts';
import { needsOf, table, takeFromTable, type Need } from './chunk-needs.ts';

/** Global function: names of chunk files, the last of them the one wanted -> a promise of what that one gives. */
export const load = 'almanacLoad';

/**
 * Put in front of a script that loads others. Tags that are not async run in the order they were added, whichever
 * arrives first. What did not come is asked for again the next time.
 */
const loader = `globalThis.${load} ??= ((here, given, coming) => (names) => Promise.all(names.map((name) => given[name] ? 0 :
  coming[name] ??= new Promise((done, failed) => {
    const tag = document.createElement('script');
    tag.src = new URL(name, here).href;
    tag.async = false;
    tag.onload = () => given[name] ? done() : tag.onerror();
    tag.onerror = () => {
      delete coming[name];
      tag.remove();
      failed(new Error(name + ' could not be loaded'));
    };
    document.head.append(tag);
  }))).then(() => given[names.at(-1)]))(document.currentScript.src, globalThis.${table} ??= {}, {});`;

export interface Classic {
  readonly code: string;
  /** Chunk files that must stand on the page before it, in their order. */
  readonly before: readonly string[];
}

export class ClassicScripts {
  readonly folder: string;
  /** Chunks pages name; each is made classic once, after all pages are done. */
  readonly #used = new Set<string>();
  readonly #needs = new Map<string, Promise<readonly Need[]>>();

  /** `folder` is dist/_astro, where Astro's chunks are. */
  constructor(folder: string) {
    this.folder = folder;
  }

  /** A chunk and all it needs, each after what it needs itself; they become files of their own. */
  async order(name: string): Promise<readonly string[]> {
    const names = await this.#closure([name]);
    for (const one of names) this.#used.add(one);
    return names;
  }

  async #closure(names: readonly string[], above: readonly string[] = []): Promise<readonly string[]> {
    const all: string[] = [];
    for (const name of names) {
      if (above.includes(name))
        throw new Error(`The chunks ${[...above, name].join(' -> ')} need one another; none of them can come first.`);
      const needs = await this.#needsOf(name);
      all.push(...(await this.#closure([...new Set(needs.map((n) => n.chunk))], [...above, name])), name);
    }
    return [...new Set(all)];
  }

  /**
   * One classic script from module source that imports the chunks `names`, all put into it but those in `outside`. What
   * it loads later needs some of the same chunks: these stay files of their own too, so that each is there once.
   */
  async bundle(source: string, names: readonly string[], outside: Iterable<string> = []): Promise<Classic> {
    const alone = await this.#build(source);
    const shared = new Set(outside);
    for (const name of alone.later) for (const one of await this.order(name)) shared.add(one);
    if (shared.size === 0) return { code: alone.code, before: [] };
    const inside = await this.#closure(names);
    const before = inside.filter((name) => shared.has(name));
    const needs = (await Promise.all([...inside].map((name) => this.#needsOf(name)))).flat();
    const { code } = await this.#build(source, {
      plugins: [takeFromTable(needs.filter(({ chunk }) => shared.has(chunk)))],
    });
    // What they need stands on the page as well.
    const files: string[] = [];
    for (const name of before) files.push(...(await this.order(name)));
    return { code: alone.later.size > 0 ? await withLoader(code) : code, before: [...new Set(files)] };
  }

  /** A script that finds what it loads by name in the page itself: nothing in it is looked up at the build. */
  async runtime(source: string): Promise<string> {
    return withLoader((await this.#build(source)).code);
  }

  /** Writes every chunk that is used over its module version; gives the file names. */
  async writeChunks(): Promise<ReadonlySet<string>> {
    const classic = new Map<string, string>();
    const waiting = [...this.#used];
    for (let name = waiting.pop(); name !== undefined; name = waiting.pop()) {
      if (classic.has(name)) continue;
      const before = this.#used.size;
      const { code } = await this.#build(`export * as all from './${name}'`, {
        plugins: [takeFromTable(await this.#needsOf(name))],
        globalName: '__own',
      });
      classic.set(name, `(()=>{${code}(globalThis.${table}??={})[${JSON.stringify(name)}]=__own.all})();\n`);
      // What a chunk loads later is found while it is built.
      if (this.#used.size > before) waiting.push(...[...this.#used].filter((n) => !classic.has(n)));
    }
    for (const [name, code] of classic) await writeFile(join(this.folder, name), code);
    return new Set(classic.keys());
  }

  #needsOf(name: string): Promise<readonly Need[]> {
    const known =
      this.#needs.get(name) ?? readFile(join(this.folder, name), 'utf8').then((code) => needsOf(name, code));
    this.#needs.set(name, known);
    return known;
  }

  /** `later` names the chunks the code loads with import(); the calls are swapped for the loader's. */
  async #build(
    source: string,
    { plugins = [], globalName }: Options = {},
  ): Promise<{ code: string; later: ReadonlySet<string> }> {
    const later = new Set<string>();
    const made = await build({
      stdin: { contents: source, resolveDir: this.folder, loader: 'js' },
      ...classicOptions,
      define: { 'import.meta.url': 'undefined', 'import.meta.resolve': 'undefined' },
      plugins: [noteLater(later), plainLoad, ...plugins],
      ...(globalName === undefined ? {} : { globalName }),
    });
    let code = (made.outputFiles[0]?.text ?? '').trim();
    for (const name of later) {
      const names = JSON.stringify(await this.order(name));
      code = code.replaceAll(
        new RegExp(`\\bimport\\((["'\`])\\./${escapeRegExp(name)}\\1\\)`, 'g'),
        () => `${load}(${names})`,
      );
    }
    refuseImportLeft(code);
    return { code, later };
  }
}

async function withLoader(code: string): Promise<string> {
  return `${(await transform(loader, { minify: true })).code.trim()}${code}`;
}

interface Options {
  readonly plugins?: readonly Plugin[];
  /** Variable that gets the module's exports. */
  readonly globalName?: string;
}

/** Leaves import('./chunk.js') standing and notes the chunk, so it can be swapped for the loader. */
function noteLater(later: Set<string>): Plugin {
  return {
    name: 'note-later',
    setup(build) {
      build.onResolve({ filter: /./ }, (args) => {
        if (args.kind !== 'dynamic-import') return undefined;
        const name = basename(args.path);
        later.add(name);
        return { path: `./${name}`, external: true };
      });
    },
  };
}

/** Vite wraps import() in a helper that adds preload links; with nothing to preload it is only weight. */
const plainLoad: Plugin = {
  name: 'no-preload-helper',
  setup(build) {
    // As a file: what a bundle takes from the table is no file, and gives the helper as it is there.
    build.onLoad({ filter: /preload-helper\.[^/\\]+\.js$/, namespace: 'file' }, async ({ path }) => {
      const name = /export\s*\{\s*\w+ as (\w+)\s*\}/.exec(await readFile(path, 'utf8'))?.[1];
      return name ? { contents: `export const ${name} = (load) => load();`, resolveDir: dirname(path) } : undefined;
    });
  },
};

/** A classic script cannot load with import() from disk: one that stays works on a server and nowhere else. */
export function refuseImportLeft(code: string): void {
  const left = /(?<![.\w$])import\([^)]{0,60}\)?/.exec(code)?.[0];
  if (left !== undefined)
    throw new Error(
      `A script still loads a part with ${left} and would not work from disk; src/steps/portable/classic-scripts.ts no longer fits how esbuild writes it.`,
    );
}

function escapeRegExp(text: string): string {
  return text.replaceAll(/[.*+?^${}()|[\]\\]/g, '\\$&');
}
