/**
 * Turns Astro's module scripts into classic ones. Everything a script imports is put into the
 * same file; what it loads later with import() becomes a classic file of its own, added to the
 * page by a script tag when it is first needed.
 */
import { readFile, writeFile } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { build, transform, type Plugin } from 'esbuild';

/** Names a lazily loaded file registers under, and the loader each bundle starts with. */
const registry = 'almanacChunks';
const loader = `const __here = document.currentScript.src;
const __lazy = (name) => (globalThis.${registry} ??= {})[name] ??= new Promise((done, failed) => {
  const tag = document.createElement('script');
  tag.src = new URL(name, __here).href;
  tag.onload = () => done(globalThis.${registry}[name + ':ready']);
  tag.onerror = () => { delete globalThis.${registry}[name]; tag.remove(); failed(new Error(name + ' could not be loaded')); };
  document.head.append(tag);
});`;

export class ClassicScripts {
  readonly folder: string;
  /** Chunks some script loads later; each is made classic once, after all pages are done. */
  readonly #lazy = new Set<string>();

  /** `folder` is dist/_astro, where Astro's chunks are. */
  constructor(folder: string) {
    this.folder = folder;
  }

  /** One classic script from module source that may import the chunks by "./name.js". */
  async bundle(source: string): Promise<string> {
    const found = new Set<string>();
    const code = await this.#bundle({ contents: source, resolveDir: this.folder, sourcefile: 'entry.js', loader: 'js' }, found);
    for (const name of found) this.#lazy.add(name);
    return found.size === 0 ? code : `(()=>{${await minify(loader)}${code}})();`;
  }

  /** Writes every chunk that is loaded later over its module version; gives the file names. */
  async writeLazy(): Promise<ReadonlySet<string>> {
    const classic = new Map<string, string>();
    for (const name of this.#lazy) {
      const found = new Set<string>();
      const code = await this.#bundle({ contents: `export * from './${name}'`, resolveDir: this.folder, loader: 'js' }, found, '__chunk');
      if (code.includes('dangerouslySetInnerHTML')) throw new Error(`${name} is loaded later and would bring a second copy of Preact, which breaks the islands on the page. Import it at the top instead.`);
      if (found.size > 0) throw new Error(`${name} is itself loaded later and loads ${[...found].join(', ')} in turn; only one step is built for.`);
      classic.set(name, `(()=>{${code};(globalThis.${registry}??={})[${JSON.stringify(`${name}:ready`)}]=__chunk})();`);
    }
    for (const [name, code] of classic) await writeFile(join(this.folder, name), code);
    return new Set(classic.keys());
  }

  async #bundle(stdin: { contents: string; resolveDir: string; loader: 'js'; sourcefile?: string }, found: Set<string>, globalName?: string): Promise<string> {
    const made = await build({
      stdin,
      bundle: true,
      write: false,
      format: 'iife',
      minify: true,
      charset: 'utf8',
      legalComments: 'none',
      target: ['es2022'],
      logLevel: 'silent',
      define: { 'import.meta.url': 'undefined', 'import.meta.resolve': 'undefined' },
      plugins: [laterPlugin(found), plainLoadPlugin],
      ...(globalName ? { globalName } : {}),
    });
    let code = (made.outputFiles[0]?.text ?? '').trim();
    for (const name of found) code = code.replaceAll(new RegExp(`\\bimport\\((["'\`])\\./${escapeRegExp(name)}\\1\\)`, 'g'), `__lazy("${name}")`);
    return code;
  }
}

/** Leaves import('./chunk.js') standing and notes the chunk, so it can be swapped for the loader. */
function laterPlugin(found: Set<string>): Plugin {
  return {
    name: 'loaded-later',
    setup({ onResolve }) {
      onResolve({ filter: /./ }, (args) => {
        if (args.kind !== 'dynamic-import') return undefined;
        const name = basename(args.path);
        found.add(name);
        return { path: `./${name}`, external: true };
      });
    },
  };
}

/** Vite wraps import() in a helper that adds preload links; with nothing to preload it is only weight. */
const plainLoadPlugin: Plugin = {
  name: 'no-preload-helper',
  setup({ onLoad }) {
    onLoad({ filter: /preload-helper\.[^/\\]+\.js$/ }, async ({ path }) => {
      const name = /export\s*\{\s*\w+ as (\w+)\s*\}/.exec(await readFile(path, 'utf8'))?.[1];
      return name ? { contents: `export const ${name} = (load) => load();`, resolveDir: dirname(path) } : undefined;
    });
  },
};

async function minify(code: string): Promise<string> {
  return (await transform(code, { minify: true })).code.trim();
}

function escapeRegExp(text: string): string {
  return text.replaceAll(/[.*+?^${}()|[\]\\]/g, '\\$&');
}
