/** One order from what the full text, the pages' own phrases and the sizes in a question say. */
import type { ResultKind } from '../language/packed-list.ts';
import type { OwnHit } from './by-phrases.ts';
import type { List } from './list.ts';
import type { Question } from './question.ts';
import type { Pin } from './sizes.ts';

type Bonus = Partial<Record<ResultKind, number>>;

export interface Ranked {
  readonly row: number;
  readonly score: number;
}

/** What the page's own phrases count beside the full text, whose best page counts 1. */
const ownCounts = 1.8;

/** A question in words is a user's more often than not; one with figures asks for a figure. */
const inWords: Bonus = { guide: 1.15, trouble: 1.2, fault: 1.1 };
const inFigures: Bonus = { calculator: 1.06, table: 1.04 };
/** Short entries win by being short; a page that tells what to do comes before them. */
const forMeanings: Bonus = { word: 1.6 };
const always: Bonus = { word: 0.75, caution: 0.7, explainer: 0.9, page: 0.7 };

export function rank(
  list: List,
  fullText: ReadonlyMap<number, number>,
  own: ReadonlyMap<number, OwnHit>,
  pins: readonly Pin[],
  { hasNumber, forMeaning }: Pick<Question, 'hasNumber' | 'forMeaning'>,
): Ranked[] {
  const best = Math.max(...fullText.values(), 1e-9);
  const pinned = new Map(pins.map((pin) => [pin.page, pin.weight]));
  const scores = new Map<number, number>();
  const add = (row: number, score: number) => scores.set(row, (scores.get(row) ?? 0) + score);
  for (const [row, score] of fullText) add(row, score / best);
  for (const [row, { score }] of own) add(row, score * ownCounts);
  if (pinned.size > 0)
    list.rows.forEach((row, at) => {
      const weight = pinned.get(row.address);
      if (weight !== undefined) add(at, weight);
    });
  const bonus: Bonus = { ...always, ...(hasNumber ? inFigures : inWords), ...(forMeaning && forMeanings) };
  return [...scores]
    .map(([row, score]) => ({ row, score: score * (bonus[list.rows[row]?.kind ?? 'page'] ?? 1) }))
    .sort((a, b) => b.score - a.score || a.row - b.row);
}
