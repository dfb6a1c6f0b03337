/**
 * How people ask in a language: what the search knows of its words. Each language has its own in its folder's
 * `speech.ts`, which is read when the pages are indexed and loaded by the pages in that language alone. Words stand as
 * they are compared: small letters, no accents, no apostrophes. All of it may be left out, as `plain` is.
 */
export interface Speech {
  /** Carry no part of a question. Negatives and directions (no, off, out, back) do, and are not among them. */
  readonly stopWords: ReadonlySet<string>;
  /** Left out as long as other words remain: nearly every page is about one. */
  readonly softWords: ReadonlySet<string>;
  /** However it is said that something does not happen. */
  readonly negatives: ReadonlySet<string>;
  /** What every page here is about, under one name. */
  readonly theSaw: ReadonlySet<string>;
  /** Words that change inside -> the one they are a form of. */
  readonly irregular: Readonly<Record<string, string>>;
  /** One name for the forms of a word of four letters or more. */
  readonly stem: (word: string) => string;
  /**
   * Words that say the same thing in another town, trade or country. Each line begins with the word these pages use.
   * Only words that mean one thing here: "wheel" is a blade to one and a roller to another, so it is not among them.
   */
  readonly kin: readonly string[];
  /**
   * What takes several words to say and is one thing: "fire up" is "start", "kill switch" is "stop switch". Read in
   * questions only, before they fall into words; the pages have their own words for it.
   */
  readonly sayings: readonly (readonly [RegExp, string])[];
  /** Names of the machine every page is about; a kind of its own ("floor saw", "ring saw") is not among them. */
  readonly machine: RegExp | undefined;
  /** A question that asks what a word means. */
  readonly meaning: RegExp | undefined;
  /** Where a title falls into parts: what comes after `of` belongs to it, what comes after `and` is another matter. */
  readonly titles: { readonly of: RegExp; readonly and: RegExp };
  /** Numbers and units written out, and the one way they are compared. */
  readonly units: readonly (readonly [written: RegExp, name: string])[];
}

export const list = (words: string): ReadonlySet<string> => new Set(words.trim().split(/\s+/));

const none: ReadonlySet<string> = new Set();

export const plain: Speech = {
  stopWords: none,
  softWords: none,
  negatives: none,
  theSaw: none,
  irregular: {},
  stem: (word) => word,
  kin: [],
  sayings: [],
  machine: undefined,
  meaning: undefined,
  titles: { of: /(?!)/, and: /[,;:?–—]/ },
  units: [],
};
