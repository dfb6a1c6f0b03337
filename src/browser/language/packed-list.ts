/** What the build hands to the search box beside the full text: titles, other words and headings, as numbers of words. */

import type { Lang } from '../../words/lang.ts';

/** What a result is, in the order the numbers of `PackedRow` mean. */
export const resultKinds = [
  'guide',
  'trouble',
  'fault',
  'job',
  'calculator',
  'table',
  'explainer',
  'word',
  'caution',
  'machine',
  'page',
] as const;
export type ResultKind = (typeof resultKinds)[number];

/** What a phrase is: the title, a clause of it, another word for the page, a heading. */
export const phraseKinds = ['title', 'clause', 'alias', 'heading'] as const;
export type PhraseKind = (typeof phraseKinds)[number];

export type PackedRow = readonly [
  address: string,
  title: string,
  kind: number,
  /** "customer", "mechanic", or nothing for both. */
  reader: string,
  /** The page's number in the full text, and the file its text is in. */
  page: string,
  file: number,
  /** How many of the phrases are its own. */
  phrases: number,
];

/** How many kinds of phrase a number can tell apart beside the count of its words. */
export const kindsInANumber = 4;

export interface PackedList {
  /** Every word of the phrases once, stop words left out; joined by spaces. */
  readonly words: string;
  /** Forms of words that stand in the text of pages and in no phrase. They are not misspelled. */
  readonly known: string;
  readonly files: readonly string[];
  readonly rows: readonly PackedRow[];
  /**
   * The phrases of all rows, one after the other: kind + `kindsInANumber` times the count of its words, then their
   * numbers. One long list is read in a fraction of the time that many short ones take.
   */
  readonly phrases: readonly number[];
  /** Where each heading among the phrases stands on its page, in their order. */
  readonly anchors: readonly string[];
  /** Misspelled word -> the one that is meant, where content knows both. */
  readonly misspelled: Readonly<Record<string, string>>;
  /** The other languages of the site that have a list. */
  readonly beside: readonly Lang[];
}
