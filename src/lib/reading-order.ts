/** The numbers of a page's sources: in the order the text first names them. */

/**
 * The sources of a page, those the text names first, in the order in which it does; the rest behind, as listed.
 * @param sources ids of the front matter
 * @param body text of the article, as written
 * Example: `[a, b, c]` and a text that names c, then a: c, a, b.
 */
export function inReadingOrder(sources: readonly string[], body: string): readonly string[] {
  const named = [...body.matchAll(/<Source id="([^"]+)"/g)].flatMap(([, id]) =>
    id !== undefined && sources.includes(id) ? [id] : [],
  );
  return [...new Set([...named, ...sources])];
}
