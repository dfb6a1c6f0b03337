/**
 * The typed words no page found carries. The engine shortens a word until something matches;
 * the reader should be told when that happened.
 */
export function missingWords(typed: string, pages: readonly string[]): readonly string[] {
  const said = pages.join(' ').toLowerCase();
  return typed.split(/\s+/).filter((word) => word.length > 2 && !said.includes(stem(word)));
}

/** Short enough that "bearings" is at home in "bearing", long enough to be the same word. */
function stem(word: string): string {
  return word.toLowerCase().slice(0, Math.max(3, word.length - 3));
}
