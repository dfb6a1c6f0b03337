/** How much of a verdict may stand on the page, and what the head of the answer says about whose figures it rests on. */
import type { Field } from '../../../core/contract/field.ts';
import { filledIn, isPencil, isRows, type Entry, type From, type Held } from '../../../core/contract/entry.ts';
import type { Answer, VerdictValue } from '../../../core/contract/result.ts';
import { hasOwn } from './figures.ts';
import { mayBeConfirmed } from './starts.ts';
import type { Worked } from './use-calculation.ts';
import { say } from '../../../words/kit.ts';

/** `said` in its colour, `example` as a plain sentence under the example's mark, `held-back` not at all. */
export type Saying = (verdict: VerdictValue) => 'said' | 'example' | 'held-back';

export function sayingOf(worked: Worked): Saying {
  const example = !hasOwn(worked.figures.entries);
  return (verdict) => (worked.judged.heldBack[verdict.key] === undefined ? 'said' : example ? 'example' : 'held-back');
}

/** The answer as a drawing may have it: a verdict that is not said colours nothing. */
export function answerToDraw({ answer, judged }: Worked): Answer {
  return {
    ...answer,
    values: answer.values.map((v) =>
      v.kind === 'verdict' && judged.heldBack[v.key] !== undefined ? { ...v, level: 'note' } : v,
    ),
  };
}

export interface Mark {
  readonly text: string;
  readonly ink: 'pencil' | 'own';
  /** No figure of the reader's in it: a thing to look at. */
  readonly example: boolean;
}

/** "Example figures", "3 of 8 are the example's", "6 yours, 3 from the plate". */
export function markOf({ figures, asked, pencil, missing }: Worked): Mark {
  const filled = asked.map((f) => filledIn(figures.entries[f.key])).filter((entries) => entries.length > 0);
  if (!hasOwn(figures.entries)) {
    const page = filled.flat().some((e) => e.from === 'page');
    return { text: page ? say.pageFigures : say.exampleFigures, ink: 'pencil', example: true };
  }
  if (pencil > 0) return { text: say.examplesOf(pencil, filled.length), ink: 'pencil', example: false };
  const count = (from: From) => filled.filter((entries) => strongest(entries) === from).length;
  const parts = [
    [count('own'), say.yours] as const,
    [count('plate'), say.fromPlate] as const,
    [count('carried'), say.carriedOver] as const,
  ];
  const still = [missing.length, say.missing] as const;
  const text = [...parts, still].flatMap(([n, words]) => (n > 0 ? [words(n)] : [])).join(', ');
  return { text, ink: 'own', example: false };
}

/** Figures of an answer that are nobody's and that no one leaves standing as they are: typed boxes, not folded defaults. */
export interface Foreign {
  readonly count: number;
  readonly of: number;
  /** No figure of the reader's at all. */
  readonly example: boolean;
}

/** What a paper or file for somebody else must say about its figures; nothing when they are all of this job. */
export function foreignIn({ figures, asked }: Worked): Foreign | undefined {
  const typed = asked.filter((f) => !mayBeConfirmed(f) && filledIn(figures.entries[f.key]).length > 0);
  const count = typed.filter((f) => typedEntries(f, figures.entries[f.key]).some(isPencil)).length;
  return count > 0 ? { count, of: typed.length, example: !hasOwn(figures.entries) } : undefined;
}

function typedEntries(field: Field, held: Held | undefined): readonly Entry[] {
  if (field.kind !== 'rows' || !isRows(held)) return filledIn(held);
  const standing = new Set(field.columns.filter(mayBeConfirmed).map((c) => c.key));
  return held.flatMap((row) => Object.entries(row).flatMap(([key, e]) => (standing.has(key) ? [] : filledIn(e))));
}

function strongest(entries: readonly Entry[]): From | undefined {
  return entries.find((e) => !isPencil(e) && e.from !== 'usual')?.from ?? entries[0]?.from;
}
