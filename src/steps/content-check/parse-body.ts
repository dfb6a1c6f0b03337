/**
 * Parses an article's text with the parser the build uses, and goes on after a mistake so that
 * one run shows them all: the sign at fault is blanked and the text parsed again.
 */
import { mdxToMdast } from 'satteri';
import type { ContentFile } from './content-file.ts';
import type { Problem } from './problem.ts';

/** The part of a syntax tree the checks look at. */
export interface BodyNode {
  readonly type: string;
  readonly position?: { readonly start: { readonly line: number } };
  readonly children?: readonly BodyNode[];
  readonly value?: string;
  readonly url?: string;
  readonly alt?: string | null;
  /** Of a heading: 2 for "##". */
  readonly depth?: number;
  readonly name?: string | null;
  readonly attributes?: readonly { readonly name?: string; readonly value?: unknown }[];
}

export interface Body {
  readonly tree: BodyNode | undefined;
  readonly problems: readonly Problem[];
}

const tries = 25;

const parsed = new WeakMap<ContentFile, Body>();

/** A text is parsed once, however many rules look at it. */
export function parseBody(file: ContentFile): Body {
  const body = parsed.get(file) ?? parse(file);
  parsed.set(file, body);
  return body;
}

function parse(file: ContentFile): Body {
  const problems: Problem[] = [];
  let text = file.body;
  for (let i = 0; i < tries; i++) {
    try {
      return { tree: mdxToMdast(text) as BodyNode, problems };
    } catch (reason) {
      const mistake = read(String(reason instanceof Error ? reason.message : reason));
      const lines = text.split('\n');
      const at = findSign(lines[mistake.line - 1] ?? '', mistake.column);
      problems.push({
        file: file.path,
        line: mistake.line,
        field: 'text',
        got: (file.body.split('\n')[mistake.line - 1] ?? '').trim().slice(0, 90),
        allowed: advice(at.sign, mistake.said),
      });
      if (at.column < 0) break;
      const line = lines[mistake.line - 1] ?? '';
      lines[mistake.line - 1] = `${line.slice(0, at.column)} ${line.slice(at.column + 1)}`;
      text = lines.join('\n');
    }
  }
  return { tree: undefined, problems };
}

export function visit(node: BodyNode | undefined, look: (node: BodyNode) => void): void {
  if (!node) return;
  look(node);
  for (const child of node.children ?? []) visit(child, look);
}

/** "12:7: what is wrong (rule)" */
function read(message: string): { line: number; column: number; said: string } {
  const [, line = '1', column = '1', said = message] =
    /(\d+):(\d+): (.*?)(?: \([\w-]+:[\w-]+\))?$/s.exec(message) ?? [];
  return { line: Number(line), column: Number(column), said };
}

/** The parser points at the sign or just behind it. */
function findSign(line: string, column: number): { sign: string; column: number } {
  for (let at = Math.min(column, line.length) - 1; at >= 0; at--) {
    const sign = line[at] ?? '';
    if ('<{}'.includes(sign)) return { sign, column: at };
  }
  return { sign: '', column: line.search(/[<{}]/) };
}

function advice(sign: string, said: string): string {
  if (sign === '<')
    return 'no bare "<" before a figure or word: write "under 5", or \\< for the sign itself. A component starts with a capital and ends with "/>": <Hazard id="kickback" />';
  if (sign === '{' || sign === '}')
    return 'no bare curly bracket: write \\{ and \\} for the signs themselves, or round brackets';
  return `text the page builder can read; it says: ${said}`;
}
