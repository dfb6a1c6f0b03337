/** The packed search engine: Pagefind and the pages' own phrases on the page's own thread, files read by script tag. */
import type { Fragment, SubResult } from 'almanac:pagefind';
import type { PackedList } from '../language/packed-list.ts';
import type { Lang } from '../../words/lang.ts';
import { addressOf } from '../../words/say/address.ts';
import { byPhrases, type OwnHit } from './by-phrases.ts';
import type { Elsewhere, Found, Hit, OfferedPage, SearchOptions } from './contract.ts';
import { openFullText, readAhead, searchText, type TextHit } from './full-text.ts';
import { put, readText } from './index-files.ts';
import { readList, type List, type Row } from './list.ts';
import { offerQuery } from './offer-query.ts';
import { pageText } from './page-text.ts';
import { readQuestion } from './question.ts';
import { rank } from './rank.ts';
import { readSizes, type Offer } from './sizes.ts';
import { learn, speechIn } from './speech.ts';

const root = new URL('..', (document.currentScript as HTMLScriptElement).src);
const ours = document.documentElement.lang as Lang;
const lists = new Map<Lang, Promise<List | undefined>>();
const listed = new Set<Lang>();

function listOf(lang: Lang): Promise<List | undefined> {
  const known =
    lists.get(lang) ??
    Promise.all([readText(`list.${lang}`), speechIn(lang)]).then(
      ([text, speech]) => {
        listed.add(lang);
        return readList(JSON.parse(text) as PackedList, lang, speech);
      },
      () => undefined,
    );
  lists.set(lang, known);
  return known;
}

/** The lists of the site's other languages; one that is not there is not asked for. */
async function otherLists(): Promise<readonly (readonly [Lang, List])[]> {
  const beside = (await listOf(ours))?.beside ?? [];
  const found = await Promise.all(beside.map(async (lang) => [lang, await listOf(lang)] as const));
  return found.flatMap(([lang, list]) => (list ? [[lang, list] as const] : []));
}

const empty: Found = { total: 0, hits: [], hidden: 0, replaced: [], left: [], offers: [], certainty: 0 };

async function find(words: string, options: SearchOptions = {}): Promise<Found> {
  if (!listed.has(ours)) readAhead(words, ours);
  const list = await listOf(ours);
  if (!list) return empty;
  const question = readQuestion(words, list);
  const sizes = readSizes(words, (word) => list.standsIn(word) !== undefined, list.speech);
  const text = await searchText(question.sharp, list);
  const own = byPhrases(question.families, list);
  const scores = new Map([...text].map(([row, hit]) => [row, hit.score]));
  const all = rank(list, scores, own, sizes.pins, question);
  // A page without a reader (a list) and one for both are found under either choice.
  const fits = ({ row }: { row: number }) => {
    const reader = list.rows[row]?.reader ?? '';
    return options.reader === undefined || reader === '' || reader === options.reader;
  };
  const shown = all.filter(fits);
  const hits = await Promise.all(
    shown.slice(0, options.limit ?? 20).map(({ row }) => toHit(list, row, text.get(row), own.get(row))),
  );
  return {
    total: shown.length,
    hits,
    hidden: all.length - shown.length,
    replaced: question.replaced,
    left: question.left,
    offers: (await Promise.all(sizes.offers.map(toOffer))).filter((offer) => offer !== undefined),
    certainty: Math.max(0, ...[...own.values()].map((hit) => hit.score)),
  };
}

async function toHit(list: List, at: number, found: TextHit | undefined, own: OwnHit | undefined): Promise<Hit> {
  const row = list.rows[at] as Row;
  const fragment = found ? await found.read() : await pageText(row.file, row.page);
  const part = partOf(fragment, own);
  return {
    address: new URL(row.address, root).href + (part ? `#${part.anchor}` : ''),
    title: row.title,
    kind: row.kind,
    part: part && part.title !== row.title ? part.title : '',
    summary: fragment?.meta['summary'] ?? '',
    excerpt: part?.excerpt ?? fragment?.excerpt ?? '',
  };
}

/** Stands before the search words a page does not show; they come last and belong to no section. */
const hiddenWord = '‡';
/** A heading that is asked for by name is where the answer stands. */
const named = 0.6;

function partOf(
  fragment: Fragment | undefined,
  own: OwnHit | undefined,
): { anchor: string; title: string; excerpt: string | undefined } | undefined {
  if (own?.anchor !== undefined && own.score >= named) {
    const { anchor } = own;
    const title = fragment?.anchors.find((a) => a.id === anchor)?.text.trim() ?? '';
    const there = fragment?.sub_results?.find((part) => part.anchor?.id === anchor);
    return { anchor, title, excerpt: there?.excerpt };
  }
  const best = bestPart(fragment?.sub_results ?? []);
  return best?.anchor && { anchor: best.anchor.id, title: best.title, excerpt: best.excerpt };
}

/** The section that says the most about the words found; none when the page's own head does. */
function bestPart(parts: readonly SubResult[]): SubResult | undefined {
  const weight = (p: SubResult) => p.weighted_locations.reduce((sum, l) => sum + l.balanced_score, 0);
  const best = [...parts].sort((a, b) => weight(b) - weight(a))[0];
  return best?.anchor && !best.excerpt.includes(hiddenWord) ? best : undefined;
}

async function toOffer(offer: Offer): Promise<OfferedPage | undefined> {
  const { page, figures, said } = offer;
  const [file = '', anchor = ''] = page.split('#');
  const address = new URL(file, root);
  address.search = offerQuery(offer);
  address.hash = anchor;
  const titleIn = (list: List | undefined) => list?.rows.find((row) => row.address === file)?.title;
  const own = titleIn(await listOf(ours));
  // The other lists are fetched only where the page's own does not have it.
  const title = own ?? (await otherLists()).map(([, list]) => titleIn(list)).find((one) => one !== undefined);
  if (title === undefined) return undefined;
  return { address: address.href, title, said, filled: Object.keys(figures).length > 0, foreign: own === undefined };
}

/** Another language is worth a pointer when its best phrase answers that much better, and well by itself. */
const better = 1.3;
const well = 0.3;

async function elsewhere(words: string, certainty: number): Promise<Elsewhere | undefined> {
  const best = (await otherLists())
    .flatMap(([lang, list]) => {
      const [row, hit] = [...byPhrases(readQuestion(words, list).families, list)].sort(
        ([, a], [, b]) => b.score - a.score,
      )[0] ?? [0, undefined];
      return hit ? [{ lang, score: hit.score, title: list.rows[row]?.title ?? '' }] : [];
    })
    .sort((a, b) => b.score - a.score)[0];
  if (!best || best.score < well || best.score < certainty * better) return undefined;
  const address = new URL(addressOf(best.lang, '/search').slice(1) + '.html', root);
  address.searchParams.set('q', words);
  return { lang: best.lang, address: address.href, title: best.title };
}

async function ready(): Promise<void> {
  const [fullText, list] = await Promise.allSettled([openFullText(ours), listOf(ours)]);
  // A language with no page in the search has nothing to open.
  if (fullText.status === 'rejected' && list.status === 'fulfilled' && list.value) throw fullText.reason;
}

globalThis.almanacSearch = { ready, find, elsewhere, learn, put };

// Begun before anybody asks; who asks meets the same failure, and can say so.
ready().catch(() => undefined);
