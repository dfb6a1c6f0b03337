/** The text of every indexed page, with its number and the file it is in, as Pagefind has written them. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import { listFiles } from '../support/files.ts';

/** Where a page is in the full text. */
export interface PagePlace {
  readonly address: string;
  /** Pagefind's number of the page: "en_e59dc23". */
  readonly page: string;
  /** The file it is in, without ending: "0/en_e59dc23" of part 0. */
  readonly file: string;
}

export interface PageText extends PagePlace {
  readonly content: string;
}

/** Each file begins with these twelve letters. */
const mark = 'pagefind_dcd';

/** @param part number of the part that lies there */
export async function readFragments(pagefindFolder: string, part: number): Promise<PageText[]> {
  const folder = join(pagefindFolder, 'fragment');
  const found: PageText[] = [];
  for (const name of await listFiles(folder)) {
    const text = gunzipSync(await readFile(join(folder, name))).toString('utf8');
    const own = name.replace(/\.pf_fragment$/, '');
    const file = `${part}/${own}`;
    const read = JSON.parse(text.slice(mark.length)) as Fragment | Record<string, Fragment>;
    const pages = isOne(read) ? [[own, read] as const] : Object.entries(read);
    for (const [page, { url, content }] of pages) found.push({ address: url, page, file, content });
  }
  return found;
}

interface Fragment {
  readonly url: string;
  readonly content: string;
}

const isOne = (read: Fragment | Record<string, Fragment>): read is Fragment => typeof read.content === 'string';
