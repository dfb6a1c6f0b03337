/** Everything the almanac says about one kind of machine. */
import type { MachineKind } from '../schemas/machine-kinds.ts';
import { articlesIn, folders, type Article, type Folder } from './articles.ts';
import { allFaults } from './faults.ts';
import { onceFor } from './once.ts';

export interface PageOfKind {
  readonly path: string;
  readonly title: string;
}

export interface ForKind {
  readonly faults: readonly PageOfKind[];
  readonly articles: Readonly<Record<Folder, readonly PageOfKind[]>>;
}

export const pagesFor = onceFor('pages for', async (kind: MachineKind): Promise<ForKind> => {
  const page = ({ path, entry }: Article): PageOfKind => ({ path, title: entry.data.title });
  const articles: Partial<Record<Folder, readonly PageOfKind[]>> = {};
  for (const folder of folders)
    articles[folder] = (await articlesIn(folder)).filter((a) => a.entry.data.kinds.includes(kind)).map(page);
  const faults = (await allFaults()).filter((f) => f.data.kinds.includes(kind));
  return {
    faults: faults.map((f) => ({ path: `/faults/${f.id}/`, title: f.data.title })),
    articles: articles as Record<Folder, readonly PageOfKind[]>,
  };
});
