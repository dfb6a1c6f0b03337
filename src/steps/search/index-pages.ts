/** Reads every built page into a Pagefind index, one per language of <html lang>. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { close, createIndex } from 'pagefind';

/**
 * Only pages with `data-pagefind-body` are indexed. The page's description becomes the hit's
 * summary; words for searching alone stand in <p class="index-only" hidden>.
 */
export async function indexPages(dist: string, pages: readonly string[], outputPath: string): Promise<void> {
  try {
    const { index, errors } = await createIndex({ maxFragments: 64, keepIndexUrl: true });
    if (!index) throw new Error(`The search index could not be started: ${errors.join('; ')}`);
    for (const url of pages) {
      const content = await readFile(join(dist, url), 'utf8');
      if (!content.includes('data-pagefind-body')) continue;
      report(url, (await index.addHTMLFile({ url, content: wordsApart(withSummary(content)) })).errors);
    }
    report('index', (await index.writeFiles({ outputPath })).errors);
  } finally {
    await close();
  }
}

function withSummary(html: string): string {
  return html.replace('name="description"', 'data-pagefind-meta="summary[content]" name="description"');
}

/** Pagefind joins the text of neighboring cells and list items unless a space stands between them. */
function wordsApart(html: string): string {
  return html.replace(/<\/(?:caption|td|th|li|dt|dd|p|h\d|figcaption|summary)>/g, '$& ');
}

function report(what: string, errors: readonly string[]): void {
  if (errors.length > 0) throw new Error(`Search index, ${what}: ${errors.join('; ')}`);
}
