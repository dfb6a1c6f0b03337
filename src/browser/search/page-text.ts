/** The summary and headings of a page that only its own phrases found, read from Pagefind's file of it. */
import type { Fragment } from 'almanac:pagefind';
import { hostFetch } from './index-files.ts';

/** Each file begins with these twelve letters. */
const mark = 12;
const read = new Map<string, Promise<Readonly<Record<string, Fragment>>>>();

export async function pageText(file: string, page: string): Promise<Fragment | undefined> {
  let pages = read.get(file);
  if (!pages) read.set(file, (pages = readFile(file, page)));
  return (await pages)[page];
}

async function readFile(file: string, page: string): Promise<Readonly<Record<string, Fragment>>> {
  const [part = '', own = ''] = file.split('/');
  const bytes = await (await hostFetch(`/pagefind/${part}/fragment/${own}.pf_fragment`)).arrayBuffer();
  const text = new TextDecoder().decode(bytes);
  const pages = JSON.parse(text.slice(mark)) as Fragment | Record<string, Fragment>;
  return own === page ? { [page]: pages as Fragment } : (pages as Record<string, Fragment>);
}
