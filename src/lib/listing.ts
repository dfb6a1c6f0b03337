/** Rows for lists of pages. */
import { articlesIn, type Article, type Folder } from './articles.ts';
import { first, type Lang } from '../words/index.ts';

export interface Row {
  readonly path: string;
  readonly title: string;
  readonly summary: string;
  /** Shorter than the summary, where the page has one. */
  readonly line?: string;
}

export async function rowsIn(folder: Folder, lang: Lang = first): Promise<readonly Row[]> {
  const list = await articlesIn(folder, lang);
  // Guides stand in the order of use, everything else by title.
  const orderOf = (a: Article) => ('order' in a.entry.data ? a.entry.data.order : 0);
  return [...list]
    .sort((a, b) => orderOf(a) - orderOf(b))
    .map((a) => ({
      path: a.path,
      title: a.entry.data.title,
      summary: a.entry.data.summary,
      line: ('line' in a.entry.data ? a.entry.data.line : undefined) ?? a.entry.data.summary,
    }));
}
