/** Packs a Pagefind index and its engine as classic scripts, which load from a server and from disk alike. */
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { build } from 'esbuild';
import type { Lang } from '../../words/lang.ts';
import { browserSources } from '../support/browser-sources.ts';
import { classicOptions } from '../support/classic.ts';
import { listFiles } from '../support/files.ts';

/** Pagefind also writes ready-made search boxes and a worker; none of them is used. */
const parts = /^(?:index|fragment)\/.+$/;

interface Entry {
  readonly languages: Readonly<Record<string, { readonly hash: string; readonly wasm?: string }>>;
}

/** @param langs those of the site; each gets a script with all that Pagefind starts from */
export async function packIndex(pagefindFolder: string, outFolder: string, langs: readonly Lang[]): Promise<void> {
  const entryFile = 'pagefind-entry.json';
  const { languages } = JSON.parse(await readFile(join(pagefindFolder, entryFile), 'utf8')) as Entry;
  const put = async (name: string): Promise<string> => {
    const bytes = await readFile(join(pagefindFolder, name));
    return `almanacSearch.put(${JSON.stringify(name)},${JSON.stringify(bytes.toString('base64'))})\n`;
  };
  const write = async (name: string, files: readonly string[]): Promise<void> => {
    const file = join(outFolder, `${name}.js`);
    await mkdir(dirname(file), { recursive: true });
    await writeFile(file, (await Promise.all(files.map(put))).join(''));
  };
  for (const name of await listFiles(pagefindFolder)) if (parts.test(name)) await write(name, [name]);
  for (const lang of langs) {
    const { hash, wasm = 'unknown' } = languages[lang] ?? { hash: '' };
    await write(`start.${lang}`, [entryFile, `pagefind.${hash}.pf_meta`, `wasm.${wasm}.pagefind`]);
  }
  await writeFile(join(outFolder, 'engine.js'), await engine(join(pagefindFolder, 'pagefind.js')));
}

/** Pagefind's own code with `fetch` and its waiting replaced inside this bundle only; nothing global is touched. */
async function engine(pagefind: string): Promise<string> {
  const made = await build({
    entryPoints: [browserSources.searchEngine],
    ...classicOptions,
    define: { fetch: 'hostFetch', setTimeout: 'hostSoon', 'import.meta.url': 'undefined' },
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
