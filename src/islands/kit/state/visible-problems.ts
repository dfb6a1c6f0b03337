/** Which problems are worth saying now: nobody is told off for a box not reached yet, or while still typing in it. */
import type { Problem } from '../../../core/contract/result.ts';
import type { Figures } from './figures.ts';

export function visibleProblems(
  problems: readonly Problem[],
  figures: Figures,
  active: string | undefined,
): readonly Problem[] {
  if (figures.pressed) return problems;
  return problems.filter((p) => figures.visited.has(p.field) || (p.code !== 'missing' && p.field !== active));
}
