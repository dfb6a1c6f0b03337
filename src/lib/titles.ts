/** Titles of pages named in front matter ("jobs/drive-belt-change"), in the reader's language where there is a twin. */
import { everyArticle, type Article } from './articles.ts';
import { collection } from './collection.ts';
import { once } from './once.ts';
import { allTrouble, troublePath } from './trouble.ts';
import { saidIn } from '../schemas/languages.ts';
import { first, type Lang } from '../words/index.ts';

export interface PageTitle {
  readonly path: string;
  readonly title: string;
  readonly lang: Lang;
}

/** In every language, by "jobs/drive-belt-change". Looked up on every page: a walk over all would grow with the square. */
const articlesByName = once('articles by name', async (): Promise<ReadonlyMap<string, readonly Article[]>> =>
  Map.groupBy(await everyArticle(), ({ folder, slug }) => `${folder}/${slug}`),
);

export async function titleOf(page: string, lang: Lang): Promise<PageTitle | undefined> {
  const [folder, slug] = page.split('/');
  if (folder === 'faults') {
    const fault = (await collection('faults')).find((f) => f.id === slug);
    return fault && { path: `/faults/${fault.id}/`, title: fault.data.title, lang: first };
  }
  if (folder === 'trouble') {
    const found = (await allTrouble()).find((t) => t.id === slug);
    return found && { path: troublePath(found.id, lang), title: saidIn(found.data, lang).title, lang };
  }
  const same = (await articlesByName()).get(page) ?? [];
  const best = same.find((a) => a.lang === lang) ?? same.find((a) => a.lang === first);
  return best && { path: best.path, title: best.entry.data.title, lang: best.lang };
}
