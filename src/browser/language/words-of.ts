/**
 * A text as the words that are compared: small letters without accents or apostrophes, numbers apart from their units,
 * units under one name. Pages and questions go through the same reading. No browser parts in here.
 */

const units: readonly (readonly [written: RegExp, name: string])[] = [
  [/(\d)\s*(?:["″”]|''|inch(?:es)?\b|pulgadas?\b|-inch\b|-in\b)/g, '$1 in '],
  [/(\d)\s*(?:millimet(?:er|re)s?|milimetros?)\b/g, '$1 mm '],
  [/(\d)\s*(?:lit(?:er|re)s?|litros?)\b/g, '$1 l '],
  [/(\d)\s*(?:gallons?|galon(?:es)?)\b/g, '$1 gal '],
  [/(\d)\s*(?:meters?|metres?) per second\b/g, '$1 m/s '],
  [/\b(\d+) (?:to|a) 1\b/g, '$1:1'],
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
export function normalized(text: string): string {
  // Inch marks are told from apostrophes before these go.
  const inches = text.replace(/(\d)\s*''/g, '$1"');
  return units.reduce((said, [written, name]) => said.replace(written, name), fold(inches));
}

/** The words of a text in order. "50:1", "8.8", "3/16" and "m/s" are one word each. */
export function wordsOf(text: string): string[] {
  return normalized(text).match(/m\/s\b|\d+(?:[.,:/]\d+)+|[\p{L}\p{N}]+/gu) ?? [];
}
