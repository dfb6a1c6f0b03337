/** The line under the box: how many pages, and what was put in place of a word or left out. */
import type { SearchWords } from '../../words/search.ts';
import type { Found, Stage } from './use-search.ts';

export function sayWhatHappened(stage: Stage, found: Found | undefined, words: SearchWords): string {
  if (stage === 'broken') return words.broken;
  if (stage === 'waking') return words.waking;
  if (!found || stage !== 'done') return '';
  const { total, term, replaced, left } = found;
  if (total === 0 && found.offers.length === 0) return words.none(term);
  return [
    words.found(total, term),
    ...replaced.map(({ typed, used }) => words.replaced(typed, used)),
    ...(left.length > 0 ? [words.left(left.join(' '))] : []),
  ].join(' ');
}
