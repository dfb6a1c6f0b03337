/** The packed search engine: Pagefind on the page's own thread, its files read by script tag. */
import { createInstance, type Fragment, type Instance, type SubResult } from 'almanac:pagefind';
import type { Found, Hit, SearchOptions } from './contract.ts';
import { put } from './index-files.ts';
import { missingWords } from './missing-words.ts';
import { inOurWords, type OtherWords } from './other-words.ts';

/** Filled in by the build from the aliases in content/glossary. */
declare const OTHER_WORDS: OtherWords;

const root = new URL('..', (document.currentScript as HTMLScriptElement).src);
let instance: Instance | undefined;

function open(): Instance {
  instance ??= createInstance({ basePath: '/pagefind/', baseUrl: '/', noWorker: true, excerptLength: 24 });
  return instance;
}

async function find(words: string, options: SearchOptions = {}): Promise<Found> {
  // A page without a reader (a list) and one for both are found under either choice.
  const filters = options.reader ? { reader: { any: [options.reader, 'both'] } } : {};
  const ask = async (question: string) => (await open().search(question, { filters })).results;
  const asTyped = await ask(words);
  const ours = document.documentElement.lang.startsWith('en') ? inOurWords(words, OTHER_WORDS) : undefined;
  const seen = new Set(asTyped.map((r) => r.id));
  const results = ours === undefined ? asTyped : [...asTyped, ...(await ask(ours)).filter((r) => !seen.has(r.id))];
  const fragments = await Promise.all(results.slice(0, options.limit ?? 20).map((r) => r.data()));
  return {
    total: results.length,
    hits: fragments.map(toHit),
    missing: missingWords(
      words,
      fragments.map((f) => `${f.meta['title'] ?? ''} ${f.content}`),
    ),
  };
}

function toHit(f: Fragment): Hit {
  const part = bestPart(f);
  const title = f.meta['title'] ?? '';
  return {
    address: new URL(f.raw_url ?? f.url, root).href + (part ? new URL(part.url, root).hash : ''),
    title,
    part: part && part.title !== title ? part.title : '',
    summary: f.meta['summary'] ?? '',
    excerpt: part?.excerpt ?? f.excerpt,
    readers: f.filters['reader'] ?? [],
  };
}

/** Stands before the search words a page does not show; they come last and belong to no section. */
const hiddenWord = '‡';

/** The section that says the most about the words found; none when the page's own head does. */
function bestPart({ sub_results: parts }: Fragment): SubResult | undefined {
  const weight = (p: SubResult) => p.weighted_locations.reduce((sum, l) => sum + l.balanced_score, 0);
  const best = [...parts].sort((a, b) => weight(b) - weight(a))[0];
  return best?.anchor && !best.excerpt.includes(hiddenWord) ? best : undefined;
}

globalThis.almanacSearch = { ready: async () => void (await open().filters()), find, put };
