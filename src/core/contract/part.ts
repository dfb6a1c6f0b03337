/**
 * What of an answer can already be given while boxes it needs are still empty. A topic names which of its values hang on
 * which boxes; the sum is then done once, with figures standing in for the missing ones, and of the outcome only that is
 * kept which hangs on none of them. That what a topic names is true is held by a test, not found out at every key.
 */
import { inOrderOfNeed, isAsked } from './check-inputs.ts';
import type { Field, Inputs, InputValue, RawInputs, SingleField } from './field.ts';
import type { Decides } from './judged.ts';
import { readInputs } from './read-inputs.ts';
import { fromUnit } from '../quantity/index.ts';
import type { Answer, Problem, Result, Value } from './result.ts';

/** Values that can be given as soon as the boxes they hang on are filled. */
export interface Part {
  /** Keys of values. */
  readonly gives: readonly string[];
  /** Every field whose figure can change one of them; optional fields may be left out. */
  readonly from: readonly string[];
}

export interface Divided {
  readonly fields: readonly Field[];
  readonly example: RawInputs;
  readonly compute: (inputs: Inputs) => Result;
}

/** Figures that may stand in are tried in turn, for a topic may refuse some beside what was typed. */
const tries = 3;

/** The worked example as the sum takes it [SI]; read once for each topic. */
const examples = new WeakMap<Divided, Inputs>();

function exampleOf(topic: Divided): Inputs {
  const known = examples.get(topic);
  if (known) return known;
  const read = readInputs(topic.fields, topic.example);
  const inputs = read.ok ? read.inputs : {};
  examples.set(topic, inputs);
  return inputs;
}

/** The fields that are only missing; nothing as soon as something was entered that is wrong. */
export function onlyMissing(problems: readonly Problem[]): readonly string[] | undefined {
  if (problems.some((p) => p.code !== 'missing' && p.code !== 'too-few-rows')) return undefined;
  return [...new Set(problems.map((p) => p.field.split('.')[0] ?? ''))];
}

/**
 * The part of an answer that hangs on none of the missing boxes. Verdicts go by `decides`, other values by `parts`; what
 * neither names hangs on everything. Cautions stand as the stand-ins raise them: rather one too many. Working is not given.
 * @param topic fields, example and compute @param inputs what was read [SI], without the missing fields
 * @param missing their keys @param decides fields by verdict @param parts fields by value
 * @returns an answer without working, or nothing where no value stands
 */
export function partAnswer(
  topic: Divided,
  inputs: Inputs,
  missing: readonly string[],
  decides: Decides = {},
  parts: readonly Part[] = [],
): Answer | undefined {
  const hangsOn = (v: Value): readonly string[] | undefined =>
    v.kind === 'verdict' ? decides[v.key] : parts.find((p) => p.gives.includes(v.key))?.from;
  const isKnown = (from: readonly string[]) => !from.some((f) => missing.includes(f));
  const mayStand = [...Object.values(decides), ...parts.map((p) => p.from)];
  if (!mayStand.some((from) => from.length > 0 && isKnown(from))) return undefined;
  const example = exampleOf(topic);
  for (let n = 0; n < tries; n += 1) {
    const result = topic.compute(standIns(topic.fields, inputs, example, n));
    if (!result.ok) continue;
    const values = result.values.filter((v) => {
      const from = hangsOn(v);
      return from !== undefined && isKnown(from);
    });
    const says = values.some((v) => (hangsOn(v)?.length ?? 0) > 0);
    return says ? { ok: true, values, working: [], cautions: result.cautions } : undefined;
  }
  return undefined;
}

/** The inputs with every needed box filled; `n` makes other figures each time. */
function standIns(fields: readonly Field[], inputs: Inputs, example: Inputs, n: number): Inputs {
  const filled: Record<string, InputValue> = { ...inputs };
  for (const field of inOrderOfNeed(fields))
    if (filled[field.key] === undefined && !field.optional && isAsked(field, filled))
      filled[field.key] = field.kind === 'rows' ? rowsFor(field, example[field.key], n) : oneFor(field, example, n);
  return filled;
}

function rowsFor(field: Extract<Field, { kind: 'rows' }>, given: InputValue, n: number): readonly Inputs[] {
  const rows = Array.isArray(given) ? (given as readonly Inputs[]) : [{}];
  return rows.map((row) => {
    const shifted = Object.fromEntries(
      field.columns.flatMap((c) =>
        row[c.key] === undefined && c.optional ? [] : [[c.key, oneFor(c, row, n)] as const],
      ),
    );
    return { ...row, ...shifted };
  });
}

/** The example's figure or the default, and others near it; a choice goes through its options. */
function oneFor(field: SingleField, example: Inputs, n: number): InputValue {
  const given = example[field.key];
  switch (field.kind) {
    case 'choice': {
      const first = Math.max(
        0,
        field.options.findIndex((o) => o.value === (given ?? field.default)),
      );
      return field.options[(first + n) % field.options.length]?.value;
    }
    case 'yes-no':
      return ((given ?? field.default) === true) !== (n % 2 === 1);
    case 'text':
      return given ?? field.default ?? '';
    case 'quantity':
    case 'number':
    case 'count':
    case 'money': {
      const si = (v: number) => (field.kind === 'quantity' ? fromUnit(v, field.units[0]) : v);
      const low = si(field.min ?? 0);
      const high = field.max === undefined ? Infinity : si(field.max);
      const middle =
        typeof given === 'number' ? given : field.default === undefined ? middleOf(low, high) : si(field.default);
      const moved = middle * (1 + 0.07 * n) + (middle === 0 && high !== Infinity ? n * 0.01 * (high - low) : 0);
      const inside = Math.min(high, Math.max(low, moved));
      return field.kind === 'count' ? Math.round(middle) + (Math.round(middle) + n <= high ? n : -n) : inside;
    }
  }
}

function middleOf(low: number, high: number): number {
  if (high === Infinity) return low > 0 ? 2 * low : 10;
  return low > 0 ? Math.sqrt(low * high) : (low + high) / 2;
}
