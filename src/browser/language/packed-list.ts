/** What the build hands to the search box beside the full text: titles, other words and headings, as numbers of words. */

import type { Tongue } from './forms.ts';

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

/** Kind of phrase, numbers of its words, anchor of a heading. */
export type PackedPhrase = readonly [kind: number, words: readonly number[], anchor?: string];

export type PackedRow = readonly [
  address: string,
  title: string,
  kind: number,
  /** "customer", "mechanic", or nothing for both. */
  reader: string,
  /** The page's number in the full text, and the file its text is in. */
  page: string,
  file: number,
  phrases: readonly PackedPhrase[],
];

export interface PackedList {
  /** Every word of the phrases once, stop words left out; joined by spaces. */
  readonly words: string;
  /** Forms of words that stand in the text of pages and in no phrase. They are not misspelled. */
  readonly known: string;
  readonly files: readonly string[];
  readonly rows: readonly PackedRow[];
  /** Misspelled word -> the one that is meant, where content knows both. */
  readonly misspelled: Readonly<Record<string, string>>;
  /** The other languages of the site that have a list. */
  readonly beside: readonly Tongue[];
}
