/** The line under the box: how many pages, and what was put in place of a word or left out. */
import { count, fill } from '../../words/say/fill.ts';
import type { SearchWords } from '../../words/search.ts';
import type { Found, Stage } from './use-search.ts';

export function sayWhatHappened(stage: Stage, found: Found | undefined, words: SearchWords, lang: string): string {
  if (stage === 'broken') return words.broken;
  if (stage === 'waking') return words.waking;
  if (!found || stage !== 'done') return '';
  const { total, term, replaced, left } = found;
  if (total === 0 && found.offers.length === 0) return fill(words.none, { term });
  return [
    count(words.found, total, lang, { term }),
    ...replaced.map(({ typed, used }) => fill(words.replaced, { typed, used })),
    ...(left.length > 0 ? [fill(words.left, { words: left.join(' ') })] : []),
  ].join(' ');
}
