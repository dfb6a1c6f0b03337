/** Components in an article: which exist, what they take, and whether what they name exists. */
import { namedInArticles } from '../support/browser-sources.ts';
import type { Library } from './library.ts';
import { readLiteral } from '../../schemas/literal.ts';
import { isExpression, valueOf, type Attribute, type Piece } from './parse-body.ts';
import { didYouMean, listed, shown } from './problem.ts';
import type { Say } from './say.ts';

interface Naming {
  readonly attribute: string;
  readonly where: string;
  readonly names: (library: Library) => ReadonlySet<string>;
}

/** Component -> the attribute that names something, and where that something is listed. */
const naming: Readonly<Record<string, Naming>> = {
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

export function componentProblems(node: Piece, library: Library, say: Say): void {
  const name = node.name ?? '';
  if (!/^[A-Z]/.test(name)) return plainTag(node, name, library, say);
  const takes = library.components.get(name);
  if (!takes) {
    const known = [...library.components.keys()].sort();
    const meant = didYouMean(name, known).trim();
    const all = known.join(', ');
    // The list is long: what was most likely meant stands before it.
    const allowed = meant === '' ? `one of ${all}.` : `${meant} There are ${all}.`;
    return say(node, `<${name}>`, 'a component that does not exist', allowed);
  }
  for (const attribute of node.attributes ?? []) attributeProblems(node, attribute, takes, say);
  const rule = naming[name];
  if (rule) nameProblems(node, rule, library, say);
  if (name === 'BothUnits') lengthProblems(node, say);
}

/** Text is written in Markdown; tags would let code, forms and foreign pages in. A few have no Markdown of their own. */
const harmless = new Set(['br', 'sub', 'sup', 'kbd']);

function plainTag(node: Piece, name: string, library: Library, say: Say): void {
  const attributes = node.attributes ?? [];
  if (harmless.has(name) && attributes.length === 0) return;
  const meant = [...library.components.keys()].find((c) => c.toLowerCase() === name.toLowerCase());
  if (meant) say(node, `<${name}>`, 'a component in small letters', `<${meant} ... />, with its capital`);
  else if (harmless.has(name)) say(node, `<${name}>`, `the attribute ${attributes[0]?.name ?? ''}`, 'no attributes');
  else say(node, `<${name}>`, 'an HTML tag', `Markdown, a component, or one of ${[...harmless].join(', ')}`);
}

function attributeProblems(node: Piece, attribute: Attribute, takes: ReadonlySet<string>, say: Say): void {
  const tag = `<${node.name ?? ''}>`;
  if (attribute.name === undefined) return say(node, tag, `{${text(attribute)}}`, 'attributes written out one by one');
  if (!takes.has(attribute.name))
    return say(
      node,
      tag,
      `the attribute ${attribute.name}`,
      `${takes.size > 0 ? listed([...takes].sort()) : 'no attribute'}.${didYouMean(attribute.name, takes)}`,
    );
  if (isExpression(attribute.value) && !readLiteral(attribute.value.value))
    say(
      node,
      `${tag.slice(0, -1)} ${attribute.name}>`,
      `{${attribute.value.value}}`,
      "figures and quoted text only, like {25.4} or {{ diameter: '350 mm' }}",
    );
}

function nameProblems(node: Piece, rule: Naming, library: Library, say: Say): void {
  const value = valueOf(node, rule.attribute);
  const names = rule.names(library);
  if (typeof value !== 'string')
    say(
      node,
      `<${node.name ?? ''}>`,
      `no ${rule.attribute}="..."`,
      `${rule.attribute}="..." with a name from ${rule.where}`,
    );
  else if (!names.has(value))
    say(
      node,
      `<${node.name ?? ''} ${rule.attribute}>`,
      `"${value}"`,
      `a name from ${rule.where}.${didYouMean(value, names)}`,
    );
}

function lengthProblems(node: Piece, say: Say): void {
  const value = node.attributes?.find((a) => a.name === 'mm')?.value;
  const mm = isExpression(value) ? readLiteral(value.value)?.data : undefined;
  if (typeof mm !== 'number') say(node, '<BothUnits mm>', shown(valueOf(node, 'mm')), 'a number, like mm={25.4}');
}

function text(attribute: Attribute): string {
  return typeof attribute.value === 'string' ? attribute.value : '';
}
