/**
 * Stylesheets a part of a page brings with it stand in the text, once for every such part. They move to the head, each
 * once, so that the page is painted in its own look from the start.
 */
import type { Edit } from './edits.ts';
import type { Page, PageElement } from './parse-page.ts';
import { fileFor, type FileSet } from './site-paths.ts';

export function isLateSheet(page: Page, e: PageElement): boolean {
  return e.tag === 'link' && e.attributes['rel'] === 'stylesheet' && e.start > headEnd(page);
}

export function headEnd(page: Page): number {
  return page.html.indexOf('</head>');
}

/** `address` turns a file of dist into what this page calls it. */
export function sheetEdits(page: Page, files: FileSet, address: (file: string) => string): Edit[] {
  const late = page.elements.filter((e) => isLateSheet(page, e));
  const links = [...new Set(late.map((e) => e.attributes['href'] ?? ''))].map((href) => {
    const file = fileFor(href, files);
    if (file === undefined) throw new Error(`${page.file} uses ${href}, and no such file was built.`);
    return `<link rel="stylesheet" href="${address(file)}">`;
  });
  const end = headEnd(page);
  return [
    ...late.map((e) => ({ start: e.start, end: e.end, text: '' })),
    ...(links.length > 0 ? [{ start: end, end, text: links.join('') }] : []),
  ];
}
