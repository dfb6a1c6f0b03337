/**
 * Turns Astro's module scripts into classic ones. Everything a script imports is put into the
 * same file; what it loads later with import() becomes a classic file of its own, added to the
 * page by a script tag when it is first needed.
 */
import { readFile, writeFile } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { build, transform, type Plugin } from 'esbuild';
import { classicOptions } from '../support/classic.ts';
import { handOver, needsOf, table, takeFromTable, type Need } from './later-chunks.ts';

/** Put in front of a script that loads others later. */
const loader = `const __here = document.currentScript.src;
const __later = (name) => {
  const chunks = globalThis.${table} ??= {};
  return chunks['load ' + name] ??= new Promise((done, failed) => {
    const tag = document.createElement('script');
    tag.src = new URL(name, __here).href;
    tag.onload = () => done(chunks['own ' + name]);
    tag.onerror = () => {
      delete chunks['load ' + name];
      tag.remove();
      failed(new Error(name + ' could not be loaded'));
    };
    document.head.append(tag);
  });
};`;

export class ClassicScripts {
  readonly folder: string;
  /** Chunks some script loads later; each is made classic once, after all pages are done. */
  readonly #later = new Set<string>();

  /** `folder` is dist/_astro, where Astro's chunks are. */
  constructor(folder: string) {
    this.folder = folder;
  }

  /** One classic script from module source that may import the chunks by "./name.js". */
  async bundle(source: string): Promise<string> {
    const first = await this.#build(source);
    if (first.later.size === 0) return first.code;
    for (const name of first.later) this.#later.add(name);
    const needs = await Promise.all([...first.later].sort().map((name) => this.#needs(name)));
    const { code } = await this.#build(`${handOver(needs.flat())}\n${source}`);
    return `(()=>{${(await transform(loader, { minify: true })).code.trim()}${code}})();`;
  }

  /** Writes every chunk that is loaded later over its module version; gives the file names. */
  async writeLater(): Promise<ReadonlySet<string>> {
    const classic = new Map<string, string>();
    for (const name of this.#later) {
      const needs = await this.#needs(name);
      const { code, later } = await this.#build(`export * from './${name}'`, {
        plugins: [takeFromTable(needs)],
        globalName: '__own',
      });
      if (later.size > 0)
        throw new Error(
          `${name} is itself loaded later and loads ${[...later].join(', ')} in turn; only one step is built for.`,
        );
      classic.set(name, `(()=>{${code}globalThis.${table}[${JSON.stringify(`own ${name}`)}]=__own})();\n`);
    }
    for (const [name, code] of classic) await writeFile(join(this.folder, name), code);
    return new Set(classic.keys());
  }

  async #needs(name: string): Promise<Need[]> {
    return needsOf(name, await readFile(join(this.folder, name), 'utf8'));
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
    for (const name of later)
      code = code.replaceAll(
        new RegExp(`\\bimport\\((["'\`])\\./${escapeRegExp(name)}\\1\\)`, 'g'),
        `__later("${name}")`,
      );
    refuseImportLeft(code);
    return { code, later };
  }
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
    build.onLoad({ filter: /preload-helper\.[^/\\]+\.js$/ }, async ({ path }) => {
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
