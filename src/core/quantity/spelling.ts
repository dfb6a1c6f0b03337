/** Finds which unit a piece of text begins with, preferring the dimension that was asked for. */
import { units, unitLabel, unitOf, type Dimension, type UnitKey } from './units.ts';

interface Spelling {
  readonly text: string;
  readonly key: UnitKey;
}

const spellings: readonly Spelling[] = (Object.keys(units) as UnitKey[])
  .filter((key) => key !== '1')
  .flatMap((key) => [...new Set([key, unitLabel(key), ...(unitOf(key).also ?? [])])].map((text) => ({ text, key })))
  .sort((a, b) => b.text.length - a.text.length);

const byDimension = new Map<Dimension, readonly Spelling[]>();
function spellingsOf(dimension: Dimension): readonly Spelling[] {
  const known = byDimension.get(dimension) ?? spellings.filter((s) => unitOf(s.key).dimension === dimension);
  byDimension.set(dimension, known);
  return known;
}

export interface FoundUnit {
  readonly key: UnitKey;
  readonly length: number;
}

/** The longest spelling `text` starts with: in the wanted dimension if there is one, else in any. */
export function unitAt(text: string, wanted: Dimension): FoundUnit | undefined {
  return (
    longest(text, spellingsOf(wanted), false) ??
    longest(text, spellingsOf(wanted), true) ??
    longest(text, spellings, false)
  );
}

function longest(text: string, among: readonly Spelling[], foldCase: boolean): FoundUnit | undefined {
  const shown = foldCase ? text.toLowerCase() : text;
  const hit = among.find((s) => shown.startsWith(foldCase ? s.text.toLowerCase() : s.text) && endsWell(text, s.text));
  return hit && { key: hit.key, length: hit.text.length + (stopFollows(text, hit.text) ? 1 : 0) };
}

/** The full stop of an abbreviation, "14 in.", belongs to the unit. */
function stopFollows(text: string, spelling: string): boolean {
  return /^\.(?:[\s)]|$)/.test(text.slice(spelling.length));
}

/** A unit ends where a letter no longer follows: "in" must not be found in "inches", nor "m" in "mm2". */
function endsWell(text: string, spelling: string): boolean {
  const next = text.slice(spelling.length, spelling.length + 1);
  return (
    next === '' ||
    stopFollows(text, spelling) ||
    /[\s)]/.test(next) ||
    (/['"′″’”]$/.test(spelling) && !/['"′″]/.test(next)) ||
    (/[+*×-]/.test(next) && !/^[a-zµ]/i.test(text.slice(spelling.length + 1)))
  );
}
