/** What the engine found, turned into text runs the box can show without inserting markup. */
import type { ResultKind } from '../../browser/language/packed-list.ts';
import type { Hit as EngineHit } from '../../browser/search/contract.ts';

export interface Run {
  readonly text: string;
  readonly marked: boolean;
}

export interface Hit {
  readonly title: string;
  readonly kind: ResultKind;
  readonly part: string;
  readonly address: string;
  readonly excerpt: readonly Run[];
}

/** Stands before every hidden search word of a page; an excerpt with it in would read as nonsense. */
const hiddenWord = '‡';

export function toHit({ title, kind, part, address, summary, excerpt }: EngineHit): Hit {
  const readable =
    excerpt !== '' && !excerpt.includes(hiddenWord) && !isFigures(excerpt) && !beginsInTitle(excerpt, title);
  return { title, kind, part, address, excerpt: readable ? runs(excerpt) : [{ text: summary, marked: false }] };
}

/** A piece that begins in the page's name has found nothing but the name, which stands above it already. */
export function beginsInTitle(excerpt: string, title: string): boolean {
  const words = (text: string) =>
    text
      .toLowerCase()
      .replace(/<[^>]*>/g, '')
      .match(/[\p{L}\p{N}]+/gu) ?? [];
  const [name, piece] = [words(decode(title)), words(decode(excerpt))];
  return name.some((_, from) => name.length - from > 1 && name.slice(from).every((word, k) => word === piece[k]));
}

/** A piece of a table of figures tells nobody which page it is. */
function isFigures(excerpt: string): boolean {
  const text = excerpt.replace(/<[^>]*>/g, '');
  return (text.match(/\d/g)?.length ?? 0) * 2 > (text.match(/\p{L}/gu)?.length ?? 0);
}

const entities: Readonly<Record<string, string>> = {
  '&amp;': '&',
  '&lt;': '<',
  '&gt;': '>',
  '&quot;': '"',
  '&#39;': "'",
  '&#x27;': "'",
  '&nbsp;': ' ',
};

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
