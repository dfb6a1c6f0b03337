/** What the search engine offers a page. One global, `almanacSearch`, from the script pagefind/engine.js. */

export type Reader = 'customer' | 'mechanic';

export interface Hit {
  /** Ready for an href on the page that asked. */
  readonly address: string;
  readonly title: string;
  /** The section that matched best; empty when it is the page as a whole. */
  readonly part: string;
  /** The article's own one-sentence summary. */
  readonly summary: string;
  /** Text around the words found, as HTML: escaped, with <mark> around the words. */
  readonly excerpt: string;
  /** Who the page is for; empty when the page does not say. */
  readonly readers: readonly string[];
}

export interface Found {
  /** How many pages matched before `limit` cut the list. */
  readonly total: number;
  readonly hits: readonly Hit[];
  /** Typed words that no page found carries: the hits come near without them. */
  readonly missing: readonly string[];
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
  /** Called by the index files themselves. */
  readonly put: (name: string, base64: string) => void;
}

declare global {
  var almanacSearch: SearchEngine | undefined;
}
