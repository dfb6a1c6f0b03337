/**
 * The same question in the almanac's own words: "carburettor" is asked again as "carburetor",
 * because the glossary lists the one under the other. The index itself forgives no spelling.
 */

/** Lower-case words people use -> the glossary's word. */
export type OtherWords = Readonly<Record<string, string>>;

export function inOurWords(question: string, otherWords: OtherWords): string | undefined {
  const words = question.trim().toLowerCase().split(/\s+/);
  const asked = words.join(' ');
  // Longest first, so that "pull cord starter" is not taken for "pull cord".
  const found = Object.keys(otherWords)
    .filter((other) => ` ${asked} `.includes(` ${other} `))
    .sort((a, b) => b.length - a.length)[0];
  if (found === undefined) return undefined;
  return ` ${asked} `.replace(` ${found} `, ` ${otherWords[found]} `).trim();
}
