/**
 * Parses an article's text with the parser the build uses, and goes on after a mistake so that
 * one run shows them all: the sign at fault is blanked and the text parsed again.
 */
import { mdxToMdast } from 'satteri';
import type { ContentFile } from './content-file.ts';
import type { Problem } from './problem.ts';

/** The part of a syntax tree the checks look at. */
interface BodyNode {
  readonly type: string;
  readonly position?: { readonly start: { readonly line: number } };
  readonly children?: readonly BodyNode[];
  readonly value?: string;
  readonly url?: string;
  readonly alt?: string | null;
  /** Of a heading: 2 for "##". */
  readonly depth?: number;
  readonly name?: string | null;
  readonly attributes?: readonly Attribute[];
}

export interface Attribute {
  readonly name?: string;
  /** Text, or an expression. */
  readonly value?: string | { readonly value: string } | null;
}

/** Something in a text that a rule looks at: a component, a heading, a link, a picture, ... */
export interface Piece {
  readonly type: string;
  readonly line: number;
  /** Of a heading, what it says. */
  readonly value?: string;
  readonly url?: string;
  readonly alt?: string;
  readonly depth?: number;
  readonly name?: string;
  readonly attributes?: readonly Attribute[];
}

export interface Body {
  /** In the order of the text. */
  readonly pieces: readonly Piece[];
  readonly problems: readonly Problem[];
  /** An earlier build has found it in order. */
  readonly known: boolean;
}

const tries = 25;

const parsed = new WeakMap<ContentFile, Body>();

/** A text is parsed once, however many rules look at it. */
export function parseBody(file: ContentFile): Body {
  const body = parsed.get(file) ?? knownBody(file) ?? parse(file);
  parsed.set(file, body);
  return body;
}

function knownBody(file: ContentFile): Body | undefined {
  const before = file.known?.of('pieces', file.body);
  return before && { pieces: before.data as readonly Piece[], problems: [], known: true };
}

function parse(file: ContentFile): Body {
  const problems: Problem[] = [];
  let text = file.body;
  for (let i = 0; i < tries; i++) {
    try {
      const pieces: Piece[] = [];
      gather(mdxToMdast(text) as BodyNode, pieces);
      // Of a whole build that finds something wrong nothing is kept.
      if (problems.length === 0) file.known?.put('pieces', file.body, pieces);
      return { pieces, problems, known: false };
    } catch (reason) {
      const mistake = read(String(reason instanceof Error ? reason.message : reason));
      const lines = text.split('\n');
      const line = lines[mistake.line - 1] ?? '';
      const at = findSign(line, mistake.column);
      problems.push({
        file: file.path,
        line: mistake.line,
        field: 'text',
        got: (file.body.split('\n')[mistake.line - 1] ?? '').trim().slice(0, 90),
        allowed: advice(at < 0 ? '' : line.slice(at), mistake.said),
      });
      if (at < 0) break;
      lines[mistake.line - 1] = `${line.slice(0, at)} ${line.slice(at + 1)}`;
      text = lines.join('\n');
    }
  }
  return { pieces: [], problems, known: false };
}

/** A node and those inside it. */
function gather(node: BodyNode, into: Piece[]): void {
  if (isLookedAt(node)) into.push(pieceOf(node));
  for (const child of node.children ?? []) gather(child, into);
}

const kinds = new Set([
  'mdxJsxFlowElement',
  'mdxJsxTextElement',
  'mdxTextExpression',
  'mdxFlowExpression',
  'mdxjsEsm',
  'heading',
  'image',
]);

const isLookedAt = ({ type, url, value }: BodyNode): boolean =>
  kinds.has(type) || url !== undefined || (type === 'text' && (value ?? '').includes(']['));

function pieceOf(node: BodyNode): Piece {
  const { type, position, url, alt, depth, name, attributes } = node;
  const value = type === 'heading' ? textOf(node) : node.value;
  const piece = {
    type,
    line: position?.start.line ?? 1,
    value,
    url,
    alt: alt ?? undefined,
    depth,
    name: name ?? undefined,
  };
  const plain = attributes?.map((attribute) => ({ name: attribute.name, value: plainValue(attribute.value) }));
  return JSON.parse(JSON.stringify({ ...piece, attributes: plain })) as Piece;
}

const plainValue = (value: Attribute['value']): Attribute['value'] =>
  typeof value === 'object' && value !== null ? { value: value.value } : value;

function textOf(node: BodyNode): string {
  return node.value ?? (node.children ?? []).map(textOf).join('');
}

/** What an attribute says: its text, or an expression in its brackets. */
export function valueOf(node: Piece, attribute: string): unknown {
  const value = node.attributes?.find((a) => a.name === attribute)?.value;
  return isExpression(value) ? `{${value.value}}` : value;
}

export function isExpression(value: unknown): value is { readonly value: string } {
  return typeof value === 'object' && value !== null && 'value' in value && typeof value.value === 'string';
}

/** "12:7: what is wrong (rule)" */
function read(message: string): { line: number; column: number; said: string } {
  const [, line = '1', column = '1', said = message] =
    /(\d+):(\d+): (.*?)(?: \([\w-]+:[\w-]+\))?$/s.exec(message) ?? [];
  return { line: Number(line), column: Number(column), said };
}

/** The parser points at the sign or just behind it. */
function findSign(line: string, column: number): number {
  for (let at = Math.min(column, line.length) - 1; at >= 0; at--) if ('<{}'.includes(line[at] ?? '')) return at;
  return line.search(/[<{}]/);
}

/** @param from the line from the sign at fault on */
function advice(from: string, said: string): string {
  const asLetter = 'write "under 5", or \\< for the sign itself';
  if (from.startsWith('<!--')) return 'a remark nobody reads on the page between {/* and */}';
  if (/^<(?:https?|mailto|tel):/i.test(from)) return 'words for the link: [the page](https://example.org/)';
  if (/^<img\b/i.test(from)) return 'a picture beside the article: ![What it shows](./name.jpg)';
  if (/^<[A-Za-z]\w*\s[^>]*=\s*[^"'{\s]/.test(from))
    return 'straight "quotes" round what stands behind "=": <Hazard id="kickback" />';
  if (/^<[A-Za-z]\w*[\s>]/.test(from)) return 'a component that ends with "/>": <Hazard id="kickback" />';
  if (from.startsWith('<'))
    return `no bare "<" before a figure or word: ${asLetter}. A component starts with a capital and ends with "/>": <Hazard id="kickback" />`;
  if (/^[{}]/.test(from)) return 'no bare curly bracket: write \\{ and \\} for the signs themselves, or round brackets';
  return `text the page builder can read; it says: ${said}`;
}
