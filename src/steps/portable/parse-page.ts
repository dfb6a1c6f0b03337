/** Reads one built page into the few things the portable step needs; the parse tree is dropped again. */
import { parse, type DefaultTreeAdapterTypes } from 'parse5';

type Node = DefaultTreeAdapterTypes.Node;
export type Element = DefaultTreeAdapterTypes.Element;

export interface Page {
  /** Path inside dist, with forward slashes: "jobs/drive-belt-change.html". */
  readonly file: string;
  readonly html: string;
  readonly elements: readonly PageElement[];
  /** Every id on the page, for checking #links. */
  readonly ids: ReadonlySet<string>;
}

export interface PageElement {
  readonly tag: string;
  readonly attributes: Readonly<Record<string, string>>;
  /** Where the element stands in the source; `attributeAt` gives the same for one attribute. */
  readonly start: number;
  readonly end: number;
  readonly startTagEnd: number;
  readonly attributeAt: Readonly<Record<string, { readonly start: number; readonly end: number }>>;
  /** Text inside <script> and <style>; empty for others. */
  readonly text: string;
}

export function parsePage(file: string, html: string): Page {
  const elements: PageElement[] = [];
  const ids = new Set<string>();
  walk(parse(html, { sourceCodeLocationInfo: true }), (element) => {
    const read = readElement(element);
    if (!read) return;
    if (read.attributes['id'] !== undefined) ids.add(read.attributes['id']);
    elements.push(read);
  });
  return { file, html, elements, ids };
}

function walk(node: Node, visit: (element: Element) => void): void {
  if ('tagName' in node) visit(node);
  if ('content' in node) walk(node.content, visit);
  if ('childNodes' in node) for (const child of node.childNodes) walk(child, visit);
}

/** Elements the parser made up (a missing <tbody>) have no place in the source and need no change. */
function readElement(element: Element): PageElement | undefined {
  const place = element.sourceCodeLocation;
  if (!place?.startTag) return undefined;
  const attributes: Record<string, string> = {};
  const attributeAt: Record<string, { start: number; end: number }> = {};
  for (const { name, prefix, value } of element.attrs) {
    const full = prefix ? `${prefix}:${name}` : name;
    attributes[full] = value;
    // parse5 files places under the lower-cased name, also where it restores viewBox and the like.
    const at = place.attrs?.[full.toLowerCase()];
    if (at) attributeAt[full] = { start: at.startOffset, end: at.endOffset };
  }
  const raw = element.tagName === 'script' || element.tagName === 'style';
  const text = raw ? element.childNodes.map((c) => ('value' in c ? c.value : '')).join('') : '';
  return {
    tag: element.tagName,
    attributes,
    start: place.startOffset,
    end: place.endOffset,
    startTagEnd: place.startTag.endOffset,
    attributeAt,
    text,
  };
}
