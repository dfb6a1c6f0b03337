/** What an article's text names: components, ids, figures, calculators and links. */
import type { ContentFile } from './content-file.ts';
import { hasAddress, type Library } from './library.ts';
import { parseBody, type BodyNode } from './parse-body.ts';
import { namedInArticles } from '../support/browser-sources.ts';
import { didYouMean, type Problem } from './problem.ts';

/** Component -> the attribute that names something, and where that something is listed. */
const naming: Readonly<
  Record<string, { attribute: string; where: string; names: (l: Library) => ReadonlySet<string> }>
> = {
  Hazard: { attribute: 'id', where: 'hazards/', names: (l) => l.ids['hazards'] ?? new Set() },
  Source: { attribute: 'id', where: 'sources/', names: (l) => l.ids['sources'] ?? new Set() },
  Term: { attribute: 'id', where: 'glossary/', names: (l) => l.ids['glossary'] ?? new Set() },
  Figure: { attribute: 'name', where: `${namedInArticles.figures}/`, names: (l) => l.figures },
  Calculator: {
    attribute: 'topic',
    where: 'the list of calculators (npm run -s calc -- --list)',
    names: (l) => l.topics,
  },
};

export function bodyProblems(file: ContentFile, library: Library): Problem[] {
  const { tree, problems } = parseBody(file);
  const found = [...problems];
  const add = (node: BodyNode, field: string, got: string, allowed: string) =>
    found.push({ file: file.path, line: node.position?.start.line ?? 1, field, got, allowed });
  visit(tree, (node) => {
    if (node.type === 'mdxJsxFlowElement' || node.type === 'mdxJsxTextElement') checkComponent(node, library, add);
    else if (
      (node.type === 'mdxTextExpression' || node.type === 'mdxFlowExpression') &&
      !/^\s*\/\*[\s\S]*\*\/\s*$/.test(node.value ?? '')
    )
      add(
        node,
        'text',
        `{${node.value ?? ''}}`,
        'no curly brackets in the text: write \\{ and \\} for the signs themselves',
      );
    else if (node.type === 'mdxjsEsm')
      add(
        node,
        'text',
        (node.value ?? '').split('\n')[0] ?? '',
        'no import or export: every component may be used without',
      );
    else if (node.url !== undefined && node.type !== 'image') checkLink(node, library, add);
  });
  return found;
}

type Add = (node: BodyNode, field: string, got: string, allowed: string) => void;

function checkComponent(node: BodyNode, library: Library, add: Add): void {
  const name = node.name ?? '';
  // A small letter means plain HTML, which the browser knows.
  if (!/^[A-Z]/.test(name)) return;
  if (!library.components.has(name))
    return add(
      node,
      `<${name}>`,
      'a component that does not exist',
      `one of ${[...library.components].sort().join(', ')}.${didYouMean(name, library.components)}`,
    );
  const rule = naming[name];
  if (!rule) return;
  const value = node.attributes?.find((a) => a.name === rule.attribute)?.value;
  const names = rule.names(library);
  if (typeof value !== 'string')
    add(node, `<${name}>`, `no ${rule.attribute}="..."`, `${rule.attribute}="..." with a name from ${rule.where}`);
  else if (!names.has(value))
    add(node, `<${name} ${rule.attribute}>`, `"${value}"`, `a name from ${rule.where}.${didYouMean(value, names)}`);
}

function checkLink(node: BodyNode, library: Library, add: Add): void {
  const link = node.url ?? '';
  if (/^(?:[a-z][a-z0-9+.-]*:|#)/i.test(link)) return;
  if (!link.startsWith('/')) add(node, 'link', link, 'an address from the top, like /jobs/drive-belt-change/');
  else if (!hasAddress(library, link))
    add(node, 'link', link, `a page that exists.${didYouMean(link, library.addresses)}`);
}

function visit(node: BodyNode | undefined, look: (node: BodyNode) => void): void {
  if (!node) return;
  look(node);
  for (const child of node.children ?? []) visit(child, look);
}
