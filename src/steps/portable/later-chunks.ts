/**
 * A file loaded later with import() uses parts its loader already has. It must use those very
 * parts, not copies: two copies of Preact on one page do not know each other. So the loader
 * hands them over in a table, and the later file takes them from there.
 */
import { build, type Plugin } from 'esbuild';

/** Global table: chunk name -> the exports the loader handed over; also where later files leave their own. */
export const table = 'almanacChunks';

export interface Need {
  /** "kit.rTa657PZ.js" */
  readonly chunk: string;
  readonly names: readonly string[];
}

/**
 * What a chunk imports from others, read from Vite's output: import{a as b}from"./x.js". Whatever else imports (a
 * whole module under one name, a default, a re-export) is counted by esbuild and refused here: passed over, the part
 * would be bundled a second time, and nobody would be told.
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
        'src/steps/portable/later-chunks.ts no longer fits how Vite writes them.',
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

/** Code for the loader: puts what a later file needs into the table. */
export function handOver(needs: readonly Need[]): string {
  return needs
    .map(({ chunk, names }, i) => {
      const local = (name: string) => `__s${i}_${name}`;
      const given = names.map((name) => `${JSON.stringify(name)}: ${local(name)}`).join(', ');
      return `import { ${names.map((name) => `${name} as ${local(name)}`).join(', ')} } from './${chunk}';
Object.assign((globalThis.${table} ??= {})[${JSON.stringify(chunk)}] ??= {}, { ${given} });`;
    })
    .join('\n');
}

/** For building the later file: its imports come from the table. */
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
        const exports = [...new Set(names)].map((name) => `export const ${name} = from.${name};`).join('\n');
        return { contents: `const from = globalThis.${table}[${JSON.stringify(path)}];\n${exports}` };
      });
    },
  };
}
