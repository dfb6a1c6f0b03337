/** Links to pages the shop leaves out: each becomes its words, and goes with its row where a list holds nothing else there. */
import type { Edit } from './edits.ts';
import type { Page, PageElement } from './parse-page.ts';

export interface Unlinked {
  readonly edits: readonly Edit[];
  /** Whether an element is gone or written anew, so that nobody else changes it. */
  readonly covers: (element: PageElement) => boolean;
}

const within = (inner: PageElement, outer: PageElement): boolean =>
  inner.start >= outer.start && inner.end <= outer.end;

export function unlink(page: Page, leadsOut: (link: string) => boolean): Unlinked {
  const links = page.elements.filter((e) => e.tag === 'a' && leadsOut(e.attributes['href'] ?? ''));
  if (links.length === 0) return { edits: [], covers: () => false };
  const rows = new Set(links.flatMap((link) => rowOf(page, link, links) ?? []));
  const words = links.filter((link) => ![...rows].some((row) => within(link, row)));
  return {
    edits: [
      ...[...rows].map(({ start, end }) => ({ start, end, text: '' })),
      ...words.flatMap((link) => asWords(page, link)),
    ],
    covers: (element) => words.includes(element) || [...rows].some((row) => within(element, row)),
  };
}

/** The row of an unnumbered list that holds such links and nothing besides; numbered rows keep their places. */
function rowOf(page: Page, link: PageElement, links: readonly PageElement[]): PageElement | undefined {
  const around = page.elements.filter((e) => e !== link && within(link, e));
  // A live part draws its own rows again; what it links is for the part itself to leave out.
  if (around.some((e) => e.tag === 'astro-island')) return undefined;
  const row = around.findLast((e) => e.tag === 'li');
  const list = row && around.slice(0, around.indexOf(row)).findLast((e) => e.tag === 'ul' || e.tag === 'ol');
  if (!row || list?.tag !== 'ul') return undefined;
  let rest = '';
  let at = row.start;
  for (const inside of links.filter((l) => within(l, row))) {
    rest += page.html.slice(at, inside.start);
    at = inside.end;
  }
  rest += page.html.slice(at, row.end);
  return rest.replace(/<[^>]*>/g, '').trim() === '' ? row : undefined;
}

/** Drawings have links of their own kind, which may stand where a <span> may not. */
function asWords(page: Page, link: PageElement): Edit[] {
  const drawn = page.elements.some((e) => e.tag === 'svg' && within(link, e));
  const tag = drawn ? 'g' : 'span';
  const endTag = page.html.lastIndexOf('<', link.end - 1);
  return [
    { start: link.start, end: link.startTagEnd, text: `<${tag}>` },
    { start: endTag, end: link.end, text: `</${tag}>` },
  ];
}
