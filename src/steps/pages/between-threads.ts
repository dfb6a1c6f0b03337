/** What the thread that makes pages and the one that finishes them tell each other. */
import type { FinishedPage } from './kept-pages.ts';

export interface FinisherGiven {
  readonly dist: string;
  readonly project: string;
  /** Every file of the site, pages yet to come as well. */
  readonly files: readonly string[];
  readonly base: string;
  /** Pages the shop leaves out, by file. */
  readonly leftOut: readonly string[];
  readonly pages: number;
  /** What stands in pages as they are made -> what a reader sees there. */
  readonly signs: readonly (readonly [sign: string, text: string])[];
  /** Where finished pages are kept for the next build. */
  readonly keepIn: string;
  /** Where those of the last one are, and what they name. */
  readonly keptIn: { readonly from: string; readonly named: string } | undefined;
}

export type ToFinisher =
  | { readonly file: string; readonly html: string }
  | { readonly file: string; readonly kept: FinishedPage }
  /** A file of the site that was not known before. */
  | { readonly added: string }
  | { readonly end: true };

/** Of each page, by file. */
export type Finished = Readonly<Record<string, FinishedPage>>;

export type FromFinisher =
  'taken' | { readonly finished: Finished } | { readonly failed: unknown; readonly name: string };
