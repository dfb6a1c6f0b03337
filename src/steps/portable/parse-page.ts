/**
 * Reads one built page into the few things the portable step needs. No tree is built of it: pages come from Astro,
 * which closes every element it opens. What Astro writes is read in leaps (plain-tags.ts); a page with anything else in
 * it is read sign by sign, as the HTML standard has it.
 */
import { TokenizerMode, type Token } from 'parse5';
import { readPlainTags, type RawText, type StartTag, type TagListener } from './plain-tags.ts';
import { tagTokenizer } from './tag-tokenizer.ts';

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
const rawText: Readonly<Record<string, RawText>> = {
  script: 'script',
  style: 'raw',
  title: 'title',
  textarea: 'title',
};

/** Elements without an end tag (HTML standard, 13.1.2). */
const empty = new Set('area base br col embed hr img input link meta source track wbr'.split(' '));

export function parsePage(file: string, html: string): Page {
  const quick = new Elements(html);
  return readPlainTags(html, quick) ? { file, html, elements: quick.all, ids: quick.ids } : parseByStandard(file, html);
}

/** The same, sign by sign. */
export function parseByStandard(file: string, html: string): Page {
  const elements = new Elements(html);
  const modes: Readonly<Record<RawText, number>> = {
    script: TokenizerMode.SCRIPT_DATA,
    raw: TokenizerMode.RAWTEXT,
    title: TokenizerMode.RCDATA,
  };
  const begin = ({ tagName, attrs, selfClosing, location }: Token.TagToken) => {
    if (!location) return;
    const mode = elements.begin({
      tag: tagName,
      attributes: Object.fromEntries(attrs.map(({ name, value }) => [name, value])),
      attributeAt: Object.fromEntries(
        Object.entries(location.attrs ?? {}).map(([name, at]) => [name, { start: at.startOffset, end: at.endOffset }]),
      ),
      start: location.startOffset,
      end: location.endOffset,
      selfClosing,
    });
    if (mode !== undefined) {
      tokenizer.state = modes[mode];
      tokenizer.lastStartTagName = tagName;
    }
    tokenizer.inForeignNode = elements.inDrawing;
  };
  const end = ({ tagName, location }: Token.TagToken) => {
    if (location) elements.end(tagName, location.startOffset, location.endOffset);
    tokenizer.inForeignNode = elements.inDrawing;
  };
  const tokenizer = tagTokenizer({ sourceCodeLocationInfo: true }, { onStartTag: begin, onEndTag: end });
  tokenizer.write(html, true);
  return { file, html, elements: elements.all, ids: elements.ids };
}

/** Puts the tags of a page together into its elements. */
class Elements implements TagListener {
  readonly all: Open[] = [];
  readonly ids = new Set<string>();
  readonly #html: string;
  readonly #open: Open[] = [];
  #drawings = 0;

  constructor(html: string) {
    this.#html = html;
  }

  get inDrawing(): boolean {
    return this.#drawings > 0;
  }

  begin({ tag, attributes, attributeAt, start, end, selfClosing }: StartTag): RawText | undefined {
    const element: Open = { tag, attributes, start, end, startTagEnd: end, attributeAt, text: '' };
    this.all.push(element);
    const id = attributes['id'];
    if (id !== undefined) this.ids.add(id);
    if (selfClosing || empty.has(tag)) return undefined;
    this.#open.push(element);
    if (isDrawing(tag)) this.#drawings += 1;
    // A <title> of a drawing is an element like any other.
    return this.#drawings > 0 || !Object.hasOwn(rawText, tag) ? undefined : rawText[tag];
  }

  end(tag: string, start: number, end: number): void {
    const at = this.#open.findLastIndex((element) => element.tag === tag);
    const element = this.#open[at];
    if (!element) return;
    // What was left open inside ends here too.
    for (const inside of this.#open.splice(at)) {
      inside.end = inside === element ? end : start;
      if (isDrawing(inside.tag)) this.#drawings -= 1;
    }
    if (tag === 'script' || tag === 'style') element.text = this.#html.slice(element.startTagEnd, start);
  }
}

const isDrawing = (tag: string): boolean => tag === 'svg' || tag === 'math';
