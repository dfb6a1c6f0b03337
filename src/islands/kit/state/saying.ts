/** How much of a verdict may stand on the page, and what the head of the answer says about whose figures it rests on. */
import { filledIn, isPencil, type Entry, type From } from '../../../core/contract/entry.ts';
import type { Answer, VerdictValue } from '../../../core/contract/result.ts';
import { hasOwn } from './figures.ts';
import type { Worked } from './use-calculation.ts';
import { say } from '../../../words/index.ts';

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
export function markOf({ figures, asked, pencil }: Worked): Mark {
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
  const text = parts.flatMap(([n, words]) => (n > 0 ? [words(n)] : [])).join(', ');
  return { text, ink: 'own', example: false };
}

function strongest(entries: readonly Entry[]): From | undefined {
  return entries.find((e) => !isPencil(e) && e.from !== 'usual')?.from ?? entries[0]?.from;
}
