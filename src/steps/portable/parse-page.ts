/**
 * Reads one built page into the few things the portable step needs. Its signs are read one after the other and no tree
 * is built of them: pages come from Astro, which closes every element it opens.
 */
import { Tokenizer, TokenizerMode, type Token } from 'parse5';

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

type Open = { -readonly [K in keyof PageElement]: PageElement[K] };

/** In these a "<" is no tag (HTML standard, 13.2.6: how the parser sets the reader of signs). */
const rawText: Readonly<Record<string, number>> = {
  script: TokenizerMode.SCRIPT_DATA,
  style: TokenizerMode.RAWTEXT,
  title: TokenizerMode.RCDATA,
  textarea: TokenizerMode.RCDATA,
};

/** Elements without an end tag (HTML standard, 13.1.2). */
const empty = new Set('area base br col embed hr img input link meta source track wbr'.split(' '));

export function parsePage(file: string, html: string): Page {
  const elements: Open[] = [];
  const ids = new Set<string>();
  const open: Open[] = [];
  let drawings = 0;

  const tokenizer = new Tokenizer({ sourceCodeLocationInfo: true }, { ...silent, onStartTag: begin, onEndTag: end });
  tokenizer.write(html, true);
  return { file, html, elements, ids };

  function begin(token: Token.TagToken): void {
    const place = token.location;
    if (!place) return;
    const tag = token.tagName;
    const element: Open = {
      tag,
      attributes: Object.fromEntries(token.attrs.map(({ name, value }) => [name, value])),
      start: place.startOffset,
      end: place.endOffset,
      startTagEnd: place.endOffset,
      attributeAt: Object.fromEntries(
        Object.entries(place.attrs ?? {}).map(([name, at]) => [name, { start: at.startOffset, end: at.endOffset }]),
      ),
      text: '',
    };
    elements.push(element);
    const id = element.attributes['id'];
    if (id !== undefined) ids.add(id);
    if (token.selfClosing || empty.has(tag)) return;
    open.push(element);
    if (tag === 'svg' || tag === 'math') drawings += 1;
    // A <title> of a drawing is an element like any other.
    const mode = rawText[tag];
    if (mode !== undefined && drawings === 0) {
      tokenizer.state = mode;
      tokenizer.lastStartTagName = tag;
    }
    tokenizer.inForeignNode = drawings > 0;
  }

  function end(token: Token.TagToken): void {
    const place = token.location;
    const at = open.findLastIndex((element) => element.tag === token.tagName);
    const element = open[at];
    if (!place || !element) return;
    // What was left open inside ends here too.
    for (const inside of open.splice(at)) {
      inside.end = inside === element ? place.endOffset : place.startOffset;
      if (inside.tag === 'svg' || inside.tag === 'math') drawings -= 1;
    }
    tokenizer.inForeignNode = drawings > 0;
    if (element.tag === 'script' || element.tag === 'style')
      element.text = html.slice(element.startTagEnd, place.startOffset);
  }
}

const nothing = () => undefined;
const silent = {
  onComment: nothing,
  onDoctype: nothing,
  onEof: nothing,
  onCharacter: nothing,
  onNullCharacter: nothing,
  onWhitespaceCharacter: nothing,
};
