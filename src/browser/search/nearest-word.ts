/**
 * The word that was probably meant by one that stands nowhere. Only words of titles, other words and headings are
 * offered: with all words of the text, "rebar" becomes "rear".
 */
import { editDistance } from '../language/distance.ts';

const shortest = 4;

/** @param howCommon decides between words equally near that sound the same */
export function nearestWord(
  word: string,
  known: readonly string[],
  howCommon: (word: string) => number,
): string | undefined {
  if (word.length < shortest || /\d/.test(word)) return undefined;
  const most = word.length <= 6 ? 1 : 2;
  const sound = soundOf(word);
  let best: Found | undefined;
  for (const other of known) {
    if (other.length < shortest || Math.abs(other.length - word.length) > most || /\d/.test(other)) continue;
    const distance = editDistance(word, other, most + 1);
    if (distance > most) continue;
    const same = soundOf(other) === sound;
    if (word.length <= 5 && !other.startsWith(word.slice(0, 1)) && !same) continue;
    if (word.length === 4 && !same) continue;
    const found = { word: other, distance, same, common: howCommon(other) };
    if (!best || before(found, best)) best = found;
  }
  return best?.word;
}

interface Found {
  readonly word: string;
  readonly distance: number;
  readonly same: boolean;
  readonly common: number;
}

function before(a: Found, b: Found): boolean {
  if (a.same !== b.same && Math.abs(a.distance - b.distance) <= 1) return a.same;
  if (a.distance !== b.distance) return a.distance < b.distance;
  if (a.common !== b.common) return a.common > b.common;
  return a.word < b.word;
}

/** How a word sounds, roughly, to an English and a Spanish ear: b is v, s is z, ll is y, h is silent. */
export function soundOf(word: string): string {
  return word
    .replace(/ph/g, 'f')
    .replace(/qu?|ck/g, 'k')
    .replace(/t(?=io)/g, 's')
    .replace(/c(?=[eiy])/g, 's')
    .replace(/ll/g, 'y')
    .replace(/(.)\1+/g, '$1')
    .replace(/[hx]/g, '')
    .replace(/c/g, 'k')
    .replace(/v/g, 'b')
    .replace(/z/g, 's')
    .replace(/(?<=.)i(?=[aeou])/g, 'y');
}
