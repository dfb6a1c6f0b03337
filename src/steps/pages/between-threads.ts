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
  /** Every page, in the order in which they come. */
  readonly pages: readonly string[];
  /** What stands in pages as they are made -> what a reader sees there. */
  readonly signs: readonly (readonly [sign: string, text: string])[];
  /** Where what the next build can use is put: a folder, and the name of the file of pages in it. */
  readonly keepIn: { readonly folder: string; readonly file: string };
  /** What the last one has left. */
  readonly kept: KeptBefore | undefined;
}

export interface KeptBefore {
  /** The pages that stand as they were, in the order in which they are best written. */
  readonly pages: readonly (readonly [file: string, page: FinishedPage])[];
  /** They are brought together in the new file of pages. */
  readonly together: boolean;
  /** The folder of what they name. */
  readonly named: string;
  /** Folders of its parts of the search index, by number. */
  readonly parts: readonly string[];
  /** Those that hold: every page of them stands as it was. */
  readonly holding: ReadonlySet<number>;
}

export type ToFinisher =
  /** A folder whose files the site begins with. */
  | { readonly copy: string; readonly to: string }
  | { readonly given: FinisherGiven }
  | { readonly file: string; readonly html: string }
  /** A file of the site that was not known before. */
  | { readonly added: string }
  | { readonly end: true };

export interface Finished {
  /** By file. */
  readonly pages: Readonly<Record<string, FinishedPage>>;
  /** What the worker knows pages by that are not touched any more, by file. */
  readonly marks: Readonly<Record<string, string>>;
  /** Folders of the parts of the search index, by number. */
  readonly parts: readonly string[];
}

export type FromFinisher =
  'copied' | 'taken' | { readonly finished: Finished } | { readonly failed: unknown; readonly name: string };
