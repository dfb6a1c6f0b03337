/** Reads every built page into a Pagefind index, one per language of <html lang>. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { close, createIndex } from 'pagefind';
import { partsOf, type Row } from './page-parts.ts';

const atOnce = 32;

/** Files the text is kept in: few for a small site to keep offline; for a big one, more, so that a hit reads little. */
const leastFiles = 64;
const pagesInAFile = 12;

/** Only pages with `data-pagefind-body` are indexed. Gives what was. */
export async function indexPages(dist: string, pages: readonly string[], outputPath: string): Promise<Row[]> {
  const rows: Row[] = [];
  try {
    const { index, errors } = await createIndex({
      maxFragments: Math.max(leastFiles, Math.ceil(pages.length / pagesInAFile)),
      keepIndexUrl: true,
    });
    if (!index) throw new Error(`The search index could not be started: ${errors.join('; ')}`);
    const given: Promise<void>[] = [];
    for (const page of pages)
      for (const { row, html } of partsOf(page, readFileSync(join(dist, page), 'utf8'))) {
        given.push(
          index.addHTMLFile({ url: row.address, content: html }).then(({ errors }) => report(row.address, errors)),
        );
        rows.push(row);
        // Several at a time: the index is made by a program of its own, on another core.
        if (given.length >= atOnce) await Promise.all(given.splice(0));
      }
    await Promise.all(given);
    report('index', (await index.writeFiles({ outputPath })).errors);
  } finally {
    await close();
  }
  return rows;
}

function report(what: string, errors: readonly string[]): void {
  if (errors.length > 0) throw new Error(`Search index, ${what}: ${errors.join('; ')}`);
}
