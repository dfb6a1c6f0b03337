/** Titles of pages named in front matter ("jobs/drive-belt-change"), in the reader's language where there is a twin. */
import { articleIn, isFolder } from './articles.ts';
import { entryOf } from './collection.ts';
import { troublePath } from './trouble.ts';
import { saidIn } from '../schemas/languages.ts';
import { first, type Lang } from '../words/index.ts';

export interface PageTitle {
  readonly path: string;
  readonly title: string;
  readonly lang: Lang;
}

export async function titleOf(page: string, lang: Lang): Promise<PageTitle | undefined> {
  const [folder = '', slug = ''] = page.split('/');
  if (folder === 'faults') {
    const fault = await entryOf('faults', slug);
    return fault && { path: `/faults/${fault.id}/`, title: fault.data.title, lang: first };
  }
  if (folder === 'trouble') {
    const found = await entryOf('trouble', slug);
    return found && { path: troublePath(found.id, lang), title: saidIn(found.data, lang).title, lang };
  }
  if (!isFolder(folder)) return undefined;
  const best = (await articleIn(folder, slug, lang)) ?? (await articleIn(folder, slug, first));
  return best && { path: best.path, title: best.entry.data.title, lang: best.lang };
}
