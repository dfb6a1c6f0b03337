/** What the thread that makes pages and the one that finishes them tell each other. */

export interface FinisherGiven {
  readonly dist: string;
  readonly project: string;
  /** Every file of the site, pages yet to come as well. */
  readonly files: readonly string[];
  readonly base: string;
  /** Pages the shop leaves out, by file. */
  readonly leftOut: readonly string[];
  readonly pages: number;
}

export type ToFinisher =
  | { readonly file: string; readonly html: string }
  /** A file of the site that was not known before. */
  | { readonly added: string }
  | { readonly end: true };

export type FromFinisher = 'taken' | 'finished' | { readonly failed: unknown; readonly name: string };
