/** The search engine as one classic script: Pagefind's own browser code, with ours around it. */
import { dirname } from 'node:path';
import { build } from 'esbuild';
import { browserSources } from '../support/browser-sources.ts';
import { classicOptions } from '../support/classic.ts';

/**
 * In Pagefind's code `fetch` and its waiting are replaced, inside this script only; nothing global is touched.
 * @param pagefind that code, as Pagefind writes it beside an index
 */
export async function engineScript(pagefind: string): Promise<string> {
  const made = await build({
    entryPoints: [browserSources.searchEngine],
    ...classicOptions,
    define: { fetch: 'hostFetch', setTimeout: 'hostSoon', 'import.meta.url': 'undefined' },
    inject: [browserSources.searchFiles],
    plugins: [
      {
        name: 'pagefind',
        setup(build) {
          const resolveDir = dirname(browserSources.searchEngine);
          build.onResolve({ filter: /^almanac:pagefind$/ }, ({ path }) => ({ path, namespace: 'pagefind' }));
          build.onLoad({ filter: /./, namespace: 'pagefind' }, () => ({ contents: pagefind, resolveDir }));
        },
      },
    ],
  });
  return made.outputFiles[0]?.text ?? '';
}
