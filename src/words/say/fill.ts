/** Sentences with room for what is known only when they are said. Plain text, so that a page can hand them to a script. */

/** A sentence by the number it speaks of, in the classes of its language's plural (CLDR): "1 page", "3 pages". */
export type Counted = Readonly<Partial<Record<Intl.LDMLPluralRule, string>> & { other: string }>;

/** "{n} pages" with n 3 is "3 pages"; what has no name in `said` stays. */
export function fill(text: string, said: Readonly<Record<string, string | number>>): string {
  return text.replace(/\{(\w+)\}/g, (whole, name: string) => String(said[name] ?? whole));
}

/** The sentence for a number, filled in. */
export function count(
  sentence: Counted,
  n: number,
  lang: string,
  said: Readonly<Record<string, string | number>> = {},
): string {
  return fill(sentence[new Intl.PluralRules(lang).select(n)] ?? sentence.other, { n, ...said });
}
