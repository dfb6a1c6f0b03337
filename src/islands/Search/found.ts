/** What the engine found, turned into text runs the box can show without inserting markup. */
import type { Hit as EngineHit } from '../../lib/page/search/contract.ts';

export interface Run {
  readonly text: string;
  readonly marked: boolean;
}

export interface Hit {
  readonly title: string;
  readonly part: string;
  readonly address: string;
  readonly excerpt: readonly Run[];
  /** What matched, shown or not: a page may be found by another name for the thing. */
  readonly matched: string;
}

/** Stands before every hidden search word of a page; an excerpt with it in would read as nonsense. */
const hiddenWord = '‡';

export function toHit(hit: EngineHit): Hit {
  const found = runs(hit.excerpt);
  const matched = found.filter((run) => run.marked).map((run) => run.text).join(' ');
  const excerpt = hit.excerpt.includes(hiddenWord) ? [{ text: hit.summary, marked: false }] : found;
  return { title: hit.title, part: hit.part, address: hit.address, excerpt, matched };
}

const entities: Readonly<Record<string, string>> = { '&amp;': '&', '&lt;': '<', '&gt;': '>', '&quot;': '"', '&#39;': "'", '&#x27;': "'", '&nbsp;': ' ' };

/** Marked and plain runs of an excerpt. */
export function runs(excerpt: string): readonly Run[] {
  return excerpt
    .split(/(<mark>.*?<\/mark>)/s)
    .filter((part) => part !== '')
    .map((part) => ({ marked: part.startsWith('<mark>'), text: decode(part.replace(/<[^>]*>/g, '')) }));
}

function decode(text: string): string {
  return text.replace(/&(?:amp|lt|gt|quot|nbsp|#39|#x27);/g, (e) => entities[e] ?? e);
}

/**
 * The typed words no hit carries. The engine shortens a word until something matches;
 * the reader should be told when that happened.
 */
export function wordsNotFound(term: string, hits: readonly Hit[]): readonly string[] {
  const said = hits.map((h) => `${h.title} ${h.part} ${h.matched}`).join(' ').toLowerCase();
  const stem = (word: string) => word.toLowerCase().slice(0, Math.max(3, word.length - 3));
  return term.split(/\s+/).filter((word) => word.length > 2 && !said.includes(stem(word)));
}
