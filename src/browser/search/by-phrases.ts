/**
 * How well each page's title, other words and headings answer a question, by shares: the part of the phrase that was
 * asked for, and the part of the question that the phrase answers, both counted by how much each word says.
 */
import type { PhraseKind } from '../language/packed-list.ts';
import type { List } from './list.ts';

export interface OwnHit {
  readonly score: number;
  /** The heading that says it best, when one does. */
  readonly anchor: string | undefined;
}

/** A title says what a page is about; a heading, what a part of it is about. */
const weights: Readonly<Record<PhraseKind, number>> = { title: 1, clause: 0.95, alias: 1, heading: 0.7 };
/** Whether half a phrase counts as half: another word for the page is meant whole. */
const powers: Readonly<Record<PhraseKind, number>> = { title: 1, clause: 0.95, alias: 2, heading: 1 };

/** A question that is a title, word for word. */
const exactly = 1.2;

/** "It shuts off" and "it will not shut off" share every word but one, and are opposites. */
const opposite = 0.8;

/** A clause of one word ("mask" of "Dust, water and mask") is one subject among several. */
const oneWord = 0.8;

/** Row -> its best phrase. Between 0 and 1, and above for a title asked for word for word. */
export function byPhrases(families: readonly (readonly string[])[], list: List): ReadonlyMap<number, OwnHit> {
  const matched = new Map<number, number>();
  let whole = 0;
  for (const choices of families) {
    // Several readings of one word count once, by the one that says most in each phrase.
    const best = new Map<number, number>();
    let most = 0;
    for (const family of choices) {
      const phrases = list.standsIn(family);
      if (!phrases) continue;
      const weight = list.weightOf(family);
      most = Math.max(most, weight);
      for (const p of phrases) best.set(p, Math.max(best.get(p) ?? 0, weight));
    }
    whole += most;
    for (const [p, weight] of best) matched.set(p, (matched.get(p) ?? 0) + weight);
  }
  const denied = families.some((choices) => choices.includes('no'));
  const hits = new Map<number, { score: number; anchor: string | undefined }>();
  if (whole === 0) return hits;
  for (const [p, weight] of matched) {
    const phrase = list.phrase(p);
    const share = Math.min(1, weight / phrase.total);
    const cover = Math.min(1, weight / whole);
    const exact = share * cover > 0.999 && phrase.kind === 'title' ? exactly : 1;
    const single = phrase.kind === 'clause' && phrase.length === 1 ? oneWord : 1;
    const turned = phrase.denies === denied ? 1 : opposite;
    const score = exact * single * turned * weights[phrase.kind] * share ** powers[phrase.kind] * cover;
    const known = hits.get(phrase.row);
    if (!known || score > known.score) hits.set(phrase.row, { score, anchor: phrase.anchor });
  }
  return hits;
}
