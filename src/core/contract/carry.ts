/**
 * The way of one job from sum to sum: figures of one calculator that the next one asks for, so that nobody types
 * them twice. A topic lists its own in `carries`; whoever shows an answer makes links of them.
 */
import type { Condition, Inputs, InputValue } from './field.ts';
import type { Answer } from './result.ts';

/** Where a figure comes from: a field as filled in, a value of the answer (or an end of its range), or a fixed choice. */
export type CarryFrom =
  | { readonly field: string }
  | { readonly value: string; readonly end?: 'low' | 'high' }
  | { readonly is: string | boolean };

export interface Carry {
  /** Topic the figures go to, by its id in the registry. */
  readonly to: string;
  /** What is carried, in words for the link: "the housing fit". Told apart where two go to one topic. */
  readonly what: string;
  /** Offered only when this field holds one of these values. */
  readonly when?: Condition;
  /** Offered only when the answer holds this value: no warming of a seat that was refused. */
  readonly given?: string;
  /** Field of the other topic -> where its figure comes from here. */
  readonly with: Readonly<Record<string, CarryFrom>>;
}

/**
 * The inputs a carry fills in the other topic.
 * @param carry one of a topic's `carries` @param inputs the inputs the answer was computed from, SI @param answer that answer
 * @returns SI inputs of the other topic; undefined when it is not to be offered: its condition is not met, or a value is missing.
 * A field that was left empty is left empty there too.
 * For example: { to: 'warming', with: { interference: { value: 'interference', end: 'high' } } } and an interference of
 * 17.5 µm, -4 to 39 -> { interference: 39e-6 }. Source: arithmetic.
 */
export function carriedInputs(carry: Carry, inputs: Inputs, answer: Answer): Inputs | undefined {
  const { when, given } = carry;
  if (when && !(when.is as readonly unknown[]).includes(inputs[when.field])) return undefined;
  if (given !== undefined && !answer.values.some((v) => v.key === given)) return undefined;
  const pairs = Object.entries(carry.with).map(([key, from]) => [key, from, figureOf(from, inputs, answer)] as const);
  if (pairs.some(([, from, figure]) => 'value' in from && figure === undefined)) return undefined;
  return Object.fromEntries(pairs.flatMap(([key, , figure]) => (figure === undefined ? [] : [[key, figure]])));
}

function figureOf(from: CarryFrom, inputs: Inputs, answer: Answer): InputValue {
  if ('is' in from) return from.is;
  if ('field' in from) return inputs[from.field];
  const found = answer.values.find((v) => v.key === from.value);
  if (!found || found.kind === 'table' || found.kind === 'verdict') return undefined;
  if (found.kind === 'text') return found.value;
  return from.end === undefined ? found.value : (found[from.end] ?? found.value);
}
