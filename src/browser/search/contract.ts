/** What the search engine offers a page. One global, `almanacSearch`, from the script pagefind/engine.js. */
import type { Lang } from '../../words/lang.ts';
import type { Speech } from '../../words/say/speech.ts';
import type { ResultKind } from '../language/packed-list.ts';
import type { Replaced } from './question.ts';

export type Reader = 'customer' | 'mechanic';

export interface Hit {
  /** Ready for an href on the page that asked. */
  readonly address: string;
  readonly title: string;
  readonly kind: ResultKind;
  /** The section that matched best; empty when it is the page as a whole. */
  readonly part: string;
  /** The page's own one-sentence summary. */
  readonly summary: string;
  /** Text around the words found, as HTML: escaped, with <mark> around the words; empty when only the title says it. */
  readonly excerpt: string;
}

/** A calculator that opens filled with what was typed, or the row of a table. */
export interface OfferedPage {
  readonly address: string;
  readonly title: string;
  /** Whether the page is in the other language than the one that asked. */
  readonly foreign: boolean;
  readonly said: string;
  /** Whether boxes are filled. */
  readonly filled: boolean;
}

export interface Found {
  /** How many pages matched before `limit` cut the list. */
  readonly total: number;
  readonly hits: readonly Hit[];
  /** How many more there are for other readers. */
  readonly hidden: number;
  readonly replaced: readonly Replaced[];
  /** Typed words that stand on no page. */
  readonly left: readonly string[];
  readonly offers: readonly OfferedPage[];
  /** How well the best phrase of any page answers, 0 to 1. */
  readonly certainty: number;
}

/** That the pages of another language answer better. */
export interface Elsewhere {
  readonly lang: Lang;
  /** Its search page, with the question. */
  readonly address: string;
  readonly title: string;
}

export interface SearchOptions {
  readonly reader?: Reader | undefined;
  /** At most this many hits; 20 unless told. */
  readonly limit?: number;
}

export interface SearchEngine {
  /** Loads the index of the page's language. Call it when the search page opens: it takes a moment. */
  readonly ready: () => Promise<void>;
  readonly find: (words: string, options?: SearchOptions) => Promise<Found>;
  /** Asks the lists of the other languages, when one answers better than `certainty`. */
  readonly elsewhere: (words: string, certainty: number) => Promise<Elsewhere | undefined>;
  /** Called by a language's list: what is known of its words. */
  readonly learn: (lang: Lang, speech: Speech) => void;
  /** Called by the index files themselves. */
  readonly put: (name: string, said: string) => void;
}

declare global {
  var almanacSearch: SearchEngine | undefined;
}
