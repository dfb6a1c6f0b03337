/** YAML with the line of every field kept. */
import { isMap, isSeq, LineCounter, parseDocument, visit, type Node, type YAMLParseError } from 'yaml';
import type { KnownTexts } from './known-texts.ts';
import type { Problem } from './problem.ts';

export type Path = readonly PropertyKey[];

export interface YamlText {
  readonly data: unknown;
  /** Line of a field, or of the nearest thing around it that exists. */
  readonly lineOf: (path: Path) => number;
  readonly problems: readonly Problem[];
}

/**
 * @param firstLine where the text starts in its file: 2 for front matter after "---"
 * @param known what was read before and was in order; what is read now and is, is put there
 */
export function readYaml(file: string, text: string, firstLine: number, known?: KnownTexts): YamlText {
  const before = known?.of('fields', text);
  if (before) {
    let read: YamlText | undefined;
    // Asked for where something else is wrong with the file.
    const lineOf = (path: Path) => (read ??= readAnew(file, text, firstLine)).lineOf(path);
    return { data: before.data, lineOf, problems: [] };
  }
  const read = readAnew(file, text, firstLine);
  if (read.problems.length === 0) known?.put('fields', text, read.data);
  return read;
}

function readAnew(file: string, text: string, firstLine: number): YamlText {
  const counter = new LineCounter();
  const document = parseDocument(text, { lineCounter: counter, prettyErrors: false });
  const line = (offset: number) => counter.linePos(offset).line + firstLine - 1;
  const lines = text.split('\n');
  const problem = (offset: number, allowed: string): Problem => ({
    file,
    line: line(offset),
    field: 'YAML',
    got: shownLine(lines[counter.linePos(offset).line - 1]),
    allowed,
  });
  const problems = document.errors.map((error) => problem(error.pos[0], inPlainWords(error)));
  // "*word" stands for something marked "&word" elsewhere; no file here has a use for it.
  visit(document, {
    Alias: (_, node) => void problems.push(problem(node.range?.[0] ?? 0, `${inQuotes}: "*${node.source}"`)),
    Scalar: (_, { type, value, range }) => {
      if (type !== 'PLAIN' || typeof value !== 'string' || !range) return;
      const wanted = readOtherwise(value, text.slice(range[1]));
      if (wanted !== undefined) problems.push(problem(range[0], wanted));
    },
  });
  return {
    data: problems.length > 0 ? undefined : document.toJS(),
    lineOf: (path) => line(offsetOf(document.contents, path)),
    // One mistake is often told twice, for the key and for the value.
    problems: problems.filter((p, i) => problems.findIndex((o) => o.line === p.line && o.allowed === p.allowed) === i),
  };
}

/** What YAML reads without a word, and otherwise than whoever wrote it: what to write instead. */
function readOtherwise(value: string, behind: string): string | undefined {
  // "The yard #2" would be "The yard"; "9100 rpm # its plate" is meant so.
  if (/^[ \t]+#[^\s#]/.test(behind)) return 'text that holds a # in "quotes"; in front of a remark, "# " with a blank';
  if (/^[“”„«][^“”„«»]*[“”»]$/.test(value)) return 'straight "quotes", or none: these would stand on the page';
  return undefined;
}

const inQuotes = 'text that starts with a sign in "quotes"';

function inPlainWords({ code, message }: YAMLParseError): string {
  switch (code) {
    case 'DUPLICATE_KEY':
      return 'each field once';
    case 'MULTIPLE_DOCS':
      return 'one "---" above the fields and one below them';
    case 'BLOCK_AS_IMPLICIT_KEY':
      return 'text that holds a colon in "quotes"';
    case 'TAB_AS_INDENT':
      return 'spaces in front of the field, no tab';
    case 'BAD_INDENT':
      return 'the same number of spaces in front of fields that belong together';
    case 'MISSING_CHAR':
      return `the closing sign; the reader says: ${message}`;
    default:
      return `readable YAML: ${message}. Put text that holds a colon or starts with a sign in "quotes".`;
  }
}

function offsetOf(node: Node | null, path: Path): number {
  let at = node?.range?.[0] ?? 0;
  let here: unknown = node;
  for (const step of path) {
    if (isMap(here)) {
      const pair = here.items.find((p) => (p.key as { value?: unknown }).value === step);
      if (!pair) return at;
      at = (pair.key as Node).range?.[0] ?? at;
      here = pair.value;
    } else if (isSeq(here) && typeof step === 'number') {
      here = here.items[step];
      at = (here as Node | undefined)?.range?.[0] ?? at;
    } else return at;
  }
  return at;
}

function shownLine(line = ''): string {
  return line.trim() === '' ? 'the end of the fields' : line.trim().slice(0, 90);
}
