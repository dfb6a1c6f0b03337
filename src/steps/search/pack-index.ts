/** Packs a Pagefind index and its engine as classic scripts, which load from a server and from disk alike. */
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { build } from 'esbuild';
import { browserSources } from '../support/browser-sources.ts';
import { classicOptions } from '../support/classic.ts';
import { listFiles } from '../support/files.ts';

/** Pagefind also writes ready-made search boxes and a worker; none of them is used. */
const used = /^(?:pagefind-entry\.json|pagefind\.[^/]+\.pf_meta|wasm\.[^/]+\.pagefind|(?:index|fragment|filter)\/.+)$/;

export async function packIndex(pagefindFolder: string, outFolder: string): Promise<void> {
  const entry = JSON.parse(await readFile(join(pagefindFolder, 'pagefind-entry.json'), 'utf8')) as {
    languages: Record<string, { wasm?: string }>;
  };
  const wasms = new Set(Object.values(entry.languages).map((l) => `wasm.${l.wasm ?? 'unknown'}.pagefind`));
  for (const name of await listFiles(pagefindFolder)) {
    if (!used.test(name) || (name.startsWith('wasm.') && !wasms.has(name))) continue;
    const bytes = await readFile(join(pagefindFolder, name));
    const file = join(outFolder, `${name}.js`);
    await mkdir(dirname(file), { recursive: true });
    await writeFile(file, `almanacSearch.put(${JSON.stringify(name)},${JSON.stringify(bytes.toString('base64'))})\n`);
  }
  await writeFile(join(outFolder, 'engine.js'), await engine(join(pagefindFolder, 'pagefind.js')));
}

/** Pagefind's own code with `fetch` replaced inside this bundle only; nothing global is touched. */
async function engine(pagefind: string): Promise<string> {
  const made = await build({
    entryPoints: [browserSources.searchEngine],
    ...classicOptions,
    define: { fetch: 'hostFetch', 'import.meta.url': 'undefined' },
    inject: [browserSources.searchFiles],
    plugins: [
      {
        name: 'pagefind',
        setup: (build) => build.onResolve({ filter: /^almanac:pagefind$/ }, () => ({ path: pagefind })),
      },
    ],
  });
  return made.outputFiles[0]?.text ?? '';
}
