/** Pages that only the server for writing shows, since their article is a draft. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { places } from '../../schemas/places.ts';
import { isDraft } from '../support/drafts.ts';
import { listFiles } from '../support/files.ts';
import { pageOf } from './page-of.ts';

/** Path of each ("/jobs/x/") with its file ("content/shop/jobs/x.mdx"). */
export async function draftPages(project: string): Promise<Readonly<Record<string, string>>> {
  const drafts: Record<string, string> = {};
  for (const place of places)
    for (const name of await listFiles(join(project, place)).catch(() => [])) {
      const page = pageOf(name);
      if (page === undefined) continue;
      // What a later place holds stands in for it, draft or not.
      delete drafts[page];
      const file = `${place}/${name}`;
      if (isDraft(await readFile(join(project, file), 'utf8').catch(() => ''))) drafts[page] = file;
    }
  return drafts;
}
