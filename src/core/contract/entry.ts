/**
 * What stands in the boxes of a form, and where each figure comes from. The sums get figures only; what may be said
 * about them hangs on where they come from, so the two travel together to the page, the paper, the link and the job sheet.
 */
import type { UnitSystem } from '../quantity/index.ts';

/**
 * `example` the worked example or an unconfirmed default, `page` an article's own figures, `usual` a default with its
 * reason, `plate` the list of a machine the reader chose, `carried` the answer of another calculator, `own` typed here.
 */
export type From = 'example' | 'page' | 'usual' | 'plate' | 'carried' | 'own';

/** What a figure was taken over from. */
export interface Of {
  /** Machine, by its id in the shop's list or the reader's own name for it. */
  readonly machine?: string;
  /** Calculator that answered it, and the edition of the almanac it stood in. */
  readonly topic?: string;
  readonly edition?: string;
  /** Weakest origin of the figures that answer rests on: carrying washes nothing. */
  readonly weakest?: From;
}

export interface Entry {
  /** As typed or written; never rewritten. */
  readonly text: string;
  readonly from: From;
  /** System whose unit a bare number in the text has. */
  readonly unitIn: UnitSystem;
  readonly of?: Of;
}

export type EntryRow = Readonly<Record<string, Entry>>;
export type Held = Entry | readonly EntryRow[];
/** By field key. A box without an entry is empty. */
export type Entries = Readonly<Record<string, Held>>;

/**
 * True for a list of rows, as a box of rows holds it. @param raw what a box holds @returns false for a single
 * figure
 */
export function isRows(held: Held | undefined): held is readonly EntryRow[] {
  return Array.isArray(held);
}

/** Pencil is a figure that is nobody's yet: the example's, an article's, or carried from such. */
export function isPencil({ from, of }: Entry): boolean {
  const weakest = from === 'carried' ? (of?.weakest ?? 'carried') : from;
  return weakest === 'example' || weakest === 'page';
}

/** The filled entries of a box: one, none, or those of all its cells. */
export function filledIn(held: Held | undefined): readonly Entry[] {
  if (held === undefined) return [];
  const all = isRows(held) ? held.flatMap((row) => Object.values(row)) : [held];
  return all.filter((e) => e.text.trim() !== '');
}

const strength: readonly From[] = ['example', 'page', 'carried', 'usual', 'plate', 'own'];

/** The origin an answer made from these may claim: the weakest of them; `own` of none. */
export function weakestOf(entries: readonly Entry[]): From {
  return entries.reduce<From>((weakest, e) => {
    const from = isPencil(e) && e.from === 'carried' ? (e.of?.weakest ?? 'example') : e.from;
    return strength.indexOf(from) < strength.indexOf(weakest) ? from : weakest;
  }, 'own');
}
