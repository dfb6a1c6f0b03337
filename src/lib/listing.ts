/** Rows for lists of pages. */
import { articlesIn, type Folder } from './articles.ts';
import type { Lang } from '../words/index.ts';

export interface Row {
  readonly path: string;
  readonly title: string;
  readonly summary: string;
}

export async function rowsIn(folder: Folder, lang: Lang = 'en'): Promise<readonly Row[]> {
  return (await articlesIn(folder, lang)).map((a) => ({
    path: a.path,
    title: a.entry.data.title,
    summary: a.entry.data.summary,
  }));
}
