/**
 * Reads the tags of a page that is written as Astro writes: values in double quotes, no markup that is broken. From tag
 * to tag it leaps, which is several times quicker than reading every sign, and gives up at whatever it does not know for
 * certain: the page is then read as the standard has it.
 */
import { tagTokenizer } from './tag-tokenizer.ts';

interface Place {
  readonly start: number;
  readonly end: number;
}

/** A start tag and where it stands in the source. */
export interface StartTag extends Place {
  readonly tag: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly attributeAt: Readonly<Record<string, Place>>;
  readonly selfClosing: boolean;
}

/** What stands inside an element whose text holds no tags. */
export type RawText = 'script' | 'raw' | 'title';

/** Told of a page's tags one after the other. */
export interface TagListener {
  /** Gives how the text after it is read, where that is not plain. */
  begin: (tag: StartTag) => RawText | undefined;
  end: (tag: string, start: number, end: number) => void;
}

const tagName = /[a-zA-Z][a-zA-Z0-9:-]*/y;
const attributeName = /[a-zA-Z@:][-a-zA-Z0-9:@._]*/y;
const space = /[ \t\n\f]*/y;
const endTag = /<\/([a-zA-Z][a-zA-Z0-9:-]*)[ \t\n\f]*>/y;
/** A comment that ends where it seems to, or the kind of document. */
const comment = /<!--(?!-?>)/y;
const doctype = /<!doctype html>/iy;

/** A return is turned and a zero replaced before tags are looked for; neither stands in what Astro writes. */
const altered = /[\r\0]/;

/** False where the page is not plain; what the listener was told by then is worth nothing. */
export function readPlainTags(html: string, listener: TagListener): boolean {
  if (altered.test(html) || html.startsWith('\uFEFF')) return false;
  const after = (pattern: RegExp, at: number): number => {
    pattern.lastIndex = at;
    return pattern.test(html) ? pattern.lastIndex : -1;
  };

  /** Reads a start tag; gives where it ends, or -1. */
  const begin = (start: number): number => {
    let at = after(tagName, start + 1);
    const tag = html.slice(start + 1, at).toLowerCase();
    const attributes: Record<string, string> = {};
    const attributeAt: Record<string, Place> = {};
    let selfClosing = false;
    for (;;) {
      const next = after(space, at);
      const sign = html[next];
      if (sign === '>') {
        at = next + 1;
        break;
      }
      if (sign === '/' && html[next + 1] === '>') {
        at = next + 2;
        selfClosing = true;
        break;
      }
      // Two attributes, or the name of the tag and one, without a space between them.
      if (next === at) return -1;
      at = after(attributeName, next);
      if (at < 0) return -1;
      const name = html.slice(next, at).toLowerCase();
      let value = '';
      if (html[at] === '=') {
        if (html[at + 1] !== '"') return -1;
        const end = html.indexOf('"', at + 2);
        if (end < 0) return -1;
        value = html.slice(at + 2, end);
        if (value.includes('&')) value = decoded(value);
        at = end + 1;
      }
      // The first of two counts.
      if (Object.hasOwn(attributes, name)) return -1;
      attributes[name] = value;
      attributeAt[name] = { start: next, end: at };
    }
    const raw = listener.begin({ tag, attributes, attributeAt, start, end: at, selfClosing });
    return raw === undefined ? at : endOfText(html, tag, raw, at);
  };

  for (let at = html.indexOf('<'); at >= 0; at = html.indexOf('<', at)) {
    const code = html.charCodeAt(at + 1);
    if (isLetter(code)) at = begin(at);
    else if (code === slash) {
      endTag.lastIndex = at;
      const found = endTag.exec(html);
      if (!found) return false;
      listener.end((found[1] ?? '').toLowerCase(), at, endTag.lastIndex);
      at = endTag.lastIndex;
    } else if (code === exclamation) {
      const inside = after(comment, at);
      const end = inside < 0 ? -1 : html.indexOf('--', inside);
      // "--!>" and "-- >" are matters for the standard.
      if (inside >= 0) at = html[end + 2] === '>' && end >= 0 ? end + 3 : -1;
      else at = after(doctype, at);
    } else if (code === question) return false;
    // A sign of the text.
    else at += 1;
    if (at < 0) return false;
  }
  return true;
}

const slash = 0x2f;
const exclamation = 0x21;
const question = 0x3f;
const isLetter = (code: number): boolean => (code >= 0x61 && code <= 0x7a) || (code >= 0x41 && code <= 0x5a);

/** Where the text of such an element ends and its end tag begins, or -1. */
function endOfText(html: string, tag: string, raw: RawText, from: number): number {
  const end = html.indexOf(`</${tag}>`, from);
  if (end < 0) return -1;
  const text = html.slice(from, end);
  // Another end tag of it, written otherwise; a script with "<!--" has rules of its own.
  if (new RegExp(`</${tag}[\\s/>]`, 'i').test(text) || (raw === 'script' && text.includes('<!--'))) return -1;
  return end;
}

const usual: Readonly<Record<string, string>> = {
  '&amp;': '&',
  '&lt;': '<',
  '&gt;': '>',
  '&quot;': '"',
  '&#34;': '"',
  '&#38;': '&',
  '&#39;': "'",
};
const known = new Map<string, string>();

/** The value of an attribute. */
function decoded(value: string): string {
  let plain = true;
  const made = value.replace(/&(?:[#\w]*;)?/g, (whole) => {
    const sign = usual[whole];
    plain &&= sign !== undefined;
    return sign ?? whole;
  });
  if (plain) return made;
  const before = known.get(value);
  if (before !== undefined) return before;
  let read = value;
  const tokenizer = tagTokenizer({}, { onStartTag: ({ attrs }) => (read = attrs[0]?.value ?? value) });
  tokenizer.write(`<a b="${value}">`, true);
  known.set(value, read);
  return read;
}
