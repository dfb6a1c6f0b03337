/**
 * Astro's build cuts the scripts into chunks that import one another. Classic scripts cannot import: a chunk leaves
 * what it gives in a table, and takes what it needs from there. Every part is so on a page once, whoever asks for it:
 * two copies of Preact on one page do not know each other.
 */
import { build, type Plugin } from 'esbuild';

/** Global table: chunk name -> what the chunk gives. */
export const table = 'almanacChunks';

export interface Need {
  /** "kit.rTa657PZ.js" */
  readonly chunk: string;
  readonly names: readonly string[];
}

/**
 * What a chunk imports from others, read from Vite's output: import{a as b}from"./x.js". Whatever else imports (a
 * whole module under one name, a default, a re-export) is counted by esbuild and refused here: passed over, the part
 * would be missing on the page, and nobody would be told.
 */
export async function needsOf(chunk: string, code: string): Promise<Need[]> {
  const needs = needsUnderstood(code);
  const { metafile } = await build({
    stdin: { contents: code, loader: 'js' },
    bundle: true,
    write: false,
    metafile: true,
    format: 'esm',
    logLevel: 'silent',
    plugins: [
      { name: 'all-outside', setup: (b) => b.onResolve({ filter: /./ }, (a) => ({ path: a.path, external: true })) },
    ],
  });
  const imports = Object.values(metafile.inputs).flatMap((i) => i.imports.filter((x) => x.kind === 'import-statement'));
  if (imports.length !== needs.length)
    throw new Error(
      `${chunk} has ${imports.length} imports and ${needs.length} of them are understood; ` +
        'src/steps/portable/chunk-needs.ts no longer fits how Vite writes them.',
    );
  return needs;
}

function needsUnderstood(code: string): Need[] {
  return [...code.matchAll(/\bimport\s*(?:\{([^}]*)\}\s*from\s*)?["']\.\/([^"']+)["']/g)].map(
    ([, list = '', chunk = '']) => ({
      chunk,
      names: list
        .split(',')
        .map((part) => part.trim().split(/\s+as\s+/)[0] ?? '')
        .filter((name) => name !== ''),
    }),
  );
}

/** For building a chunk: its imports come from the table. */
export function takeFromTable(needs: readonly Need[]): Plugin {
  return {
    name: 'take-from-table',
    setup(build) {
      build.onResolve({ filter: /^\.\// }, ({ path, kind }) => {
        const need = needs.find((n) => path === `./${n.chunk}`);
        return need && kind === 'import-statement' ? { path: need.chunk, namespace: 'table' } : undefined;
      });
      build.onLoad({ filter: /./, namespace: 'table' }, ({ path }) => {
        const names = needs.filter((n) => n.chunk === path).flatMap((n) => n.names);
        const exports = [...new Set(names)]
          .map((name) => (name === 'default' ? `export default from.default;` : `export const ${name} = from.${name};`))
          .join('\n');
        return { contents: `const from = globalThis.${table}[${JSON.stringify(path)}];\n${exports}` };
      });
    },
  };
}
