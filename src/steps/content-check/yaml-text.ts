/** YAML with the line of every field kept. */
import { isMap, isSeq, LineCounter, parseDocument, type Node } from 'yaml';
import type { Problem } from './problem.ts';

export type Path = readonly PropertyKey[];

export interface YamlText {
  readonly data: unknown;
  /** Line of a field, or of the nearest thing around it that exists. */
  readonly lineOf: (path: Path) => number;
  readonly problems: readonly Problem[];
}

/** `firstLine` is where the text starts in its file: 2 for front matter after "---". */
export function readYaml(file: string, text: string, firstLine: number): YamlText {
  const counter = new LineCounter();
  const document = parseDocument(text, { lineCounter: counter, prettyErrors: false });
  const line = (offset: number) => counter.linePos(offset).line + firstLine - 1;
  const problems = document.errors.map((error) => ({
    file,
    line: line(error.pos[0]),
    field: 'YAML',
    got: text.split('\n')[counter.linePos(error.pos[0]).line - 1]?.trim() ?? '',
    allowed: `readable YAML: ${error.message}. Put text that holds a colon or starts with a sign in "quotes".`,
  }));
  return {
    data: document.errors.length > 0 ? undefined : document.toJS(),
    lineOf: (path) => line(offsetOf(document.contents, path)),
    problems,
  };
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
