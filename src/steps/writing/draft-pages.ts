/** Pages that only the server for writing shows, since their article is a draft. */
import type { ContentFile } from '../content-check/content-file.ts';
import { pageOf } from './page-of.ts';

/**
 * @param files place by place
 * @returns path of each ("/jobs/x/") with its file ("content/shop/jobs/x.mdx")
 */
export function draftPages(files: readonly ContentFile[]): Readonly<Record<string, string>> {
  const drafts: Record<string, string> = {};
  for (const { place, folder, id, ending, draft, path } of files) {
    const page = place === '' ? undefined : pageOf(`${folder}/${id}.${ending}`);
    if (page === undefined) continue;
    // What a later place holds stands in for it, draft or not.
    delete drafts[page];
    if (draft) drafts[page] = path;
  }
  return drafts;
}
