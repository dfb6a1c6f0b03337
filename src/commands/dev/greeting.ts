/** What the server for writing says when it is there. */
import { readFile, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { shopFolder, shopNamed } from '../../schemas/places.ts';
import { isDraft } from '../../steps/support/drafts.ts';
import { listFiles } from '../../steps/support/files.ts';
import { demoShopShown } from '../support/shop.ts';
import { pageOf } from '../../steps/writing/page-of.ts';

export interface ChangedLast {
  /** "/jobs/recoil-cord/" */
  readonly page: string;
  readonly draft: boolean;
}

/** The shop's own article that was saved last: most likely the one somebody is about to go on with. */
export async function changedLast(projectFolder: string): Promise<ChangedLast | undefined> {
  const folder = join(projectFolder, shopFolder);
  let last: { page: string; path: string; saved: number } | undefined;
  for (const file of await listFiles(folder)) {
    const page = pageOf(file);
    if (page === undefined) continue;
    const path = join(folder, file);
    const saved = (await stat(path)).mtimeMs;
    if (saved > (last?.saved ?? 0)) last = { page, path, saved };
  }
  return last && { page: last.page, draft: isDraft(await readFile(last.path, 'utf8')) };
}

export function greeting(address: string, last: ChangedLast | undefined): string {
  const lines = [`The pages of ${shopNamed} are at ${address}  (stop with Ctrl+C)`];
  if (!process.env['SHOP']) lines.push(demoShopShown);
  if (last) lines.push(`Saved last: ${address}${last.page.slice(1)}${last.draft ? '  (a draft)' : ''}`);
  lines.push('What you save shows there at once. What is wrong with it stands at the foot of every page, and here.');
  return lines.join('\n');
}
