/**
 * An article's text as parts: pieces of finished HTML, and between them the calls of components. So no article is a
 * module of its own to be bundled, and thousands cost no more than their words. What may stand in a text is what the
 * content check lets pass; anything else stops the build.
 */
import Slugger from 'github-slugger';
import { mdxToHast, type HastNode } from 'satteri';
import { readLiteral } from '../../schemas/literal.ts';
import { articleFeatures } from './features.ts';

export type Part = string | Call;

/** A component by the name an author writes, or an element that a component stands in for ("table", "img"). */
export interface Call {
  readonly name: string;
  readonly props: Readonly<Record<string, unknown>>;
  readonly children: readonly Part[];
}

export interface Heading {
  readonly depth: number;
  readonly slug: string;
  readonly text: string;
}

export interface ArticleBody {
  readonly parts: readonly Part[];
  readonly headings: readonly Heading[];
}

/** @param standIns elements that a component stands in for */
export function articleBody(text: string, standIns: ReadonlySet<string>): ArticleBody {
  const slugger = new Slugger();
  const headings: Heading[] = [];
  const parts: Part[] = [];
  write(mdxToHast(text, { features: articleFeatures }), parts);
  return { parts, headings };

  function write(node: HastNode, out: Part[]): void {
    switch (node.type) {
      case 'root':
        return writeAll(node.children, out);
      case 'text':
        return add(out, escaped(node.value));
      case 'element':
        return writeElement(node, out);
      case 'mdxJsxFlowElement':
      case 'mdxJsxTextElement': {
        const name = node.name ?? '';
        // The few plain tags that Markdown has no sign for: <br>, <sub>, <sup>, <kbd>.
        if (/^[a-z]/.test(name)) return writeTag(name, {}, node.children, out);
        const props = Object.fromEntries(node.attributes.map((attribute) => propOf(name, attribute)));
        return void out.push({ name, props, children: partsOf(node.children) });
      }
      case 'comment':
      case 'mdxFlowExpression':
      case 'mdxTextExpression':
        // The content check lets comments pass, and no other expression.
        return;
      default:
        throw new Error(`An article holds a ${node.type}, which nothing here can show.`);
    }
  }

  function writeElement(node: Extract<HastNode, { type: 'element' }>, out: Part[]): void {
    const { tagName, properties, children } = node;
    if (standIns.has(tagName))
      return void out.push({ name: tagName, props: { ...properties }, children: partsOf(children) });
    const level = /^h([1-6])$/.exec(tagName)?.[1];
    if (level === undefined) return writeTag(tagName, properties, children, out);
    const said = textOf(node);
    const slug = typeof properties.id === 'string' ? properties.id : slugger.slug(said);
    headings.push({ depth: Number(level), slug, text: said });
    writeTag(tagName, { ...properties, id: slug }, children, out);
  }

  function writeTag(name: string, properties: Properties, children: readonly HastNode[], out: Part[]): void {
    add(out, `<${name}${attributesOf(properties)}>`);
    if (empty.has(name)) return;
    writeAll(children, out);
    add(out, `</${name}>`);
  }

  function writeAll(nodes: readonly HastNode[], out: Part[]): void {
    for (const node of nodes) write(node, out);
  }

  function partsOf(nodes: readonly HastNode[]): Part[] {
    const inside: Part[] = [];
    writeAll(nodes, inside);
    return inside;
  }
}

type Properties = Readonly<Record<string, unknown>>;
type Attribute = Extract<HastNode, { type: 'mdxJsxFlowElement' }>['attributes'][number];

/** Elements without an end. */
const empty = new Set(['br', 'hr', 'img', 'input']);

/** Neighboring pieces of HTML are one. */
function add(out: Part[], html: string): void {
  const last = out.at(-1);
  if (typeof last === 'string') out[out.length - 1] = last + html;
  else out.push(html);
}

function propOf(component: string, attribute: Attribute): [string, unknown] {
  if (attribute.type !== 'mdxJsxAttribute')
    throw new Error(`<${component}> has an attribute that is no name and value.`);
  const { name, value } = attribute;
  if (value === null || value === undefined) return [name, true];
  if (typeof value === 'string') return [name, value];
  const literal = readLiteral(value.value);
  if (!literal)
    throw new Error(`<${component} ${name}> holds {${value.value}}, which is no figure and no quoted text.`);
  return [name, literal.data];
}

function textOf(node: HastNode): string {
  if ('value' in node && typeof node.value === 'string') return node.value;
  return 'children' in node ? node.children.map(textOf).join('') : '';
}

function attributesOf(properties: Properties): string {
  return Object.entries(properties)
    .map(([name, value]) => {
      const written = attributeName(name);
      if (value === true) return ` ${written}`;
      if (value === false || value === null || value === undefined) return '';
      const text = Array.isArray(value) ? value.join(' ') : typeof value === 'string' ? value : JSON.stringify(value);
      return ` ${written}="${text.replaceAll('&', '&#38;').replaceAll('"', '&#34;')}"`;
    })
    .join('');
}

/** "className" -> "class", "ariaLabel" -> "aria-label", "dataFootnoteRef" -> "data-footnote-ref" */
function attributeName(name: string): string {
  if (name === 'className') return 'class';
  if (name.startsWith('aria')) return `aria-${name.slice(4).toLowerCase()}`;
  if (name.startsWith('data')) return name.replaceAll(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
  return name.toLowerCase();
}

const signs: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' };

function escaped(text: string): string {
  return text.replaceAll(/[&<>"']/g, (sign) => signs[sign] ?? sign);
}
