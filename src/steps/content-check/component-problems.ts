/** Components in an article: which exist, what they take, and whether what they name exists. */
import { describeProblem } from '../../core/contract/messages.ts';
import type { RawInputs } from '../../core/contract/field.ts';
import { readInputs } from '../../core/contract/read-inputs.ts';
import { topics } from '../../core/registry.ts';
import { namedInArticles } from '../support/browser-sources.ts';
import type { Library } from './library.ts';
import { readLiteral } from '../../schemas/literal.ts';
import type { BodyNode } from './parse-body.ts';
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

export function componentProblems(node: BodyNode, library: Library, say: Say): void {
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
  if (name === 'Calculator') presetProblems(node, say);
  if (name === 'BothUnits') lengthProblems(node, say);
}

/** Text is written in Markdown; tags would let code, forms and foreign pages in. A few have no Markdown of their own. */
const harmless = new Set(['br', 'sub', 'sup', 'kbd']);

function plainTag(node: BodyNode, name: string, library: Library, say: Say): void {
  const attributes = node.attributes ?? [];
  if (harmless.has(name) && attributes.length === 0) return;
  const meant = [...library.components.keys()].find((c) => c.toLowerCase() === name.toLowerCase());
  if (meant) say(node, `<${name}>`, 'a component in small letters', `<${meant} ... />, with its capital`);
  else if (harmless.has(name)) say(node, `<${name}>`, `the attribute ${attributes[0]?.name ?? ''}`, 'no attributes');
  else say(node, `<${name}>`, 'an HTML tag', `Markdown, a component, or one of ${[...harmless].join(', ')}`);
}

type Attribute = NonNullable<BodyNode['attributes']>[number];

function attributeProblems(node: BodyNode, attribute: Attribute, takes: ReadonlySet<string>, say: Say): void {
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

function nameProblems(node: BodyNode, rule: Naming, library: Library, say: Say): void {
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

/** Figures handed to a calculator are read as if they had been typed there. */
function presetProblems(node: BodyNode, say: Say): void {
  const name = valueOf(node, 'topic');
  const topic = typeof name === 'string' ? topics[name] : undefined;
  const value = node.attributes?.find((a) => a.name === 'preset')?.value;
  if (!topic || !isExpression(value)) return;
  const preset = readLiteral(value.value)?.data;
  if (preset === undefined) return;
  if (typeof preset !== 'object' || preset === null || Array.isArray(preset))
    return say(node, '<Calculator preset>', shown(preset), "{{ field: 'figure', ... }}");
  const keys = topic.fields.map((f) => f.key);
  const unknown = Object.keys(preset).filter((key) => !keys.includes(key));
  for (const key of unknown)
    say(
      node,
      `<Calculator preset>`,
      `the field ${key}`,
      `one of the fields of ${String(name)}: ${keys.join(', ')}.${didYouMean(key, keys)}`,
    );
  const read = readInputs(topic.fields, preset as RawInputs);
  if (read.ok || !('problems' in read)) return;
  // What the author leaves out is for the reader to fill in.
  const given = (problem: { field: string }) => (problem.field.split('.')[0] ?? '') in preset;
  for (const problem of read.problems.filter((p) => given(p) && !unknown.includes(p.field)))
    say(
      node,
      `<Calculator preset>`,
      shown((preset as Record<string, unknown>)[problem.field.split('.')[0] ?? '']),
      describeProblem(problem, { fields: topic.fields, words: topic.words }),
    );
}

function lengthProblems(node: BodyNode, say: Say): void {
  const value = node.attributes?.find((a) => a.name === 'mm')?.value;
  const mm = isExpression(value) ? readLiteral(value.value)?.data : undefined;
  if (typeof mm !== 'number') say(node, '<BothUnits mm>', shown(valueOf(node, 'mm')), 'a number, like mm={25.4}');
}

function valueOf(node: BodyNode, attribute: string): unknown {
  const value = node.attributes?.find((a) => a.name === attribute)?.value;
  return isExpression(value) ? `{${value.value}}` : value;
}

function text(attribute: Attribute): string {
  return typeof attribute.value === 'string' ? attribute.value : '';
}

function isExpression(value: unknown): value is { readonly value: string } {
  return typeof value === 'object' && value !== null && 'value' in value && typeof value.value === 'string';
}
