/**
 * A text as the words that are compared: small letters without accents or apostrophes, numbers apart from their units,
 * units under one name, the written-out ones of the language among them. Pages and questions go through the same reading. No browser parts in here.
 */
import { plain, type Speech } from '../../words/say/speech.ts';

const units: Speech['units'] = [
  [/(\d)\s*["″”]/g, '$1 in '],
  [/\blbs\b/g, 'lb'],
  // A number and its unit in one word, and sizes joined by x: 350mm, 25x52x15.
  [/(\d)(mm|cm|ml|gal|rpm|hz|psi|bar|nm|kw|hp|db|cc|in|l|m\/s)\b/g, '$1 $2'],
  [/(\d)\s*[x×]\s*(?=\d)/g, '$1 x '],
];

/** Small letters, without accents and apostrophes. */
export function fold(text: string): string {
  return text
    .normalize('NFD')
    .replace(/[\u0300-\u036f'’‘`´]/g, '')
    .toLowerCase();
}

/** The same, with numbers and units written one way; sizes and codes are looked for in this. */
export function normalized(text: string, speech: Speech = plain): string {
  // Inch marks are told from apostrophes before these go.
  const inches = text.replace(/(\d)\s*''/g, '$1"');
  return [...speech.units, ...units].reduce((said, [written, name]) => said.replace(written, name), fold(inches));
}

/** The words of a text in order. "50:1", "8.8", "3/16" and "m/s" are one word each. */
export function wordsOf(text: string, speech: Speech = plain): string[] {
  return normalized(text, speech).match(/m\/s\b|\d+(?:[.,:/]\d+)+|[\p{L}\p{N}]+/gu) ?? [];
}
