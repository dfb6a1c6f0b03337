/** The packed search engine: Pagefind on the page's own thread, its files read by script tag. */
import { createInstance, type Instance } from 'almanac:pagefind';
import type { Found, SearchOptions } from './contract.ts';
import { put } from './index-files.ts';

const root = new URL('..', (document.currentScript as HTMLScriptElement).src);
let instance: Instance | undefined;

function open(): Instance {
  instance ??= createInstance({ basePath: '/pagefind/', baseUrl: '/', noWorker: true, excerptLength: 24 });
  return instance;
}

async function find(words: string, options: SearchOptions = {}): Promise<Found> {
  // A page without a reader (a list) and one for both are found under either choice.
  const filters = options.reader ? { reader: { any: [options.reader, 'both'] } } : {};
  const { results } = await open().search(words, { filters });
  const fragments = await Promise.all(results.slice(0, options.limit ?? 20).map((r) => r.data()));
  const hits = fragments.map((f) => ({
    address: new URL(f.raw_url ?? f.url, root).href,
    title: f.meta['title'] ?? '',
    summary: f.meta['summary'] ?? '',
    excerpt: f.excerpt,
    readers: f.filters['reader'] ?? [],
  }));
  return { total: results.length, hits };
}

globalThis.almanacSearch = { ready: async () => void (await open().filters()), find, put };
