/** The numbered steps of an article's text, each with the cautions that stand before it. */

/** The part of a syntax tree that steps are read from. */
export interface TextNode {
  readonly type: string;
  readonly value?: string;
  readonly children?: readonly TextNode[];
  readonly depth?: number;
  readonly ordered?: boolean | null;
  readonly name?: string | null;
  readonly attributes?: readonly { readonly name?: string; readonly value?: unknown }[];
}

export interface Step {
  readonly text: string;
  /** Cautions right before it, by id. */
  readonly cautions: readonly string[];
}

export interface Section {
  readonly name: string;
  readonly steps: readonly Step[];
}

/** @param wordOf what a word of the glossary is called */
export function sectionsOf(tree: TextNode, wordOf: (id: string) => string): readonly Section[] {
  const sections: { name: string; steps: Step[] }[] = [];
  let cautions: string[] = [];
  const take = (node: TextNode): void => {
    if (node.type === 'heading' && node.depth === 2) {
      sections.push({ name: textOf(node, wordOf), steps: [] });
      cautions = [];
    } else if (node.name === 'Hazard') cautions.push(attribute(node, 'id'));
    else if (node.type === 'list' && node.ordered === true) {
      if (sections.length === 0) sections.push({ name: '', steps: [] });
      for (const item of node.children ?? []) {
        sections.at(-1)?.steps.push({ text: textOf(item, wordOf), cautions });
        cautions = [];
      }
    } else if (node.type === 'root') (node.children ?? []).forEach(take);
  };
  take(tree);
  return sections.filter((section) => section.steps.length > 0);
}

function attribute(node: TextNode, name: string): string {
  const value = node.attributes?.find((a) => a.name === name)?.value;
  return typeof value === 'string' ? value : ((value as { value?: string } | undefined)?.value ?? '');
}

/** Words alone: no source marks, no drawings. */
function textOf(node: TextNode, wordOf: (id: string) => string): string {
  const read = (one: TextNode): string => {
    if (one.name === 'Source' || one.name === 'Figure' || one.name === 'Hazard' || one.name === 'Calculator') return '';
    if (one.name === 'BothUnits') return `${attribute(one, 'mm')} mm`;
    const inside = (one.children ?? []).map(read).join(one.type === 'listItem' || one.type === 'list' ? ' ' : '');
    if (one.name === 'Term' && inside.trim() === '') return wordOf(attribute(one, 'id'));
    return (one.value ?? '') + inside;
  };
  return read(node)
    .replace(/\s+/g, ' ')
    .replace(/ ([.,;:])/g, '$1')
    .trim();
}

/** "45 minutes" and "1 hour" as ISO 8601; anything else says no time. */
export function durationOf(time: string): string | undefined {
  const [, figure, unit] = /^(\d+) (minute|minuto|hour|hora)s?$/.exec(time.trim()) ?? [];
  return figure === undefined ? undefined : `PT${figure}${unit?.startsWith('min') ? 'M' : 'H'}`;
}
