/** Figures an article hands to a calculator. */
import { describeProblem } from '../../core/contract/messages.ts';
import type { RawInputs } from '../../core/contract/field.ts';
import { readInputs } from '../../core/contract/read-inputs.ts';
import type { Topic } from '../../core/contract/topic.ts';
import { readLiteral } from '../../schemas/literal.ts';
import type { ContentFile } from './content-file.ts';
import { isExpression, parseBody, valueOf, type Piece } from './parse-body.ts';
import { didYouMean, shown, type Problem } from './problem.ts';
import { sayOf, type Say } from './say.ts';

type Topics = Readonly<Record<string, Topic>>;

/** @param files articles that can be read; one that was in order before is passed over: no other file can change that */
export async function presetProblems(files: readonly ContentFile[]): Promise<readonly Problem[]> {
  const presets = files.flatMap((file) => {
    const { pieces, known } = parseBody(file);
    return known ? [] : pieces.filter(handsFigures).map((node) => ({ file, node }));
  });
  if (presets.length === 0) return [];
  // All calculators: the most there is to load, and most builds that follow another never ask for them.
  const { topics } = await import('../../core/registry.ts');
  const problems: Problem[] = [];
  for (const { file, node } of presets) problemsOf(node, topics, sayOf(file, problems));
  return problems;
}

const handsFigures = (node: Piece): boolean => node.name === 'Calculator' && isExpression(presetOf(node));

const presetOf = (node: Piece): unknown => node.attributes?.find((a) => a.name === 'preset')?.value;

/** Figures handed to a calculator are read as if they had been typed there. */
function problemsOf(node: Piece, topics: Topics, say: Say): void {
  const name = valueOf(node, 'topic');
  const topic = typeof name === 'string' ? topics[name] : undefined;
  const value = presetOf(node);
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
