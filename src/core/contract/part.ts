/**
 * What of an answer can already be given while boxes it needs are still empty. A topic names which of its values hang on
 * which boxes; the sum is then done with figures standing in for the missing ones, more than once and each time with
 * others, and of the outcome only that is kept which hangs on none of them.
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

/** Times the sum is done, each with other figures in the empty boxes. */
const tries = 3;

/** The fields that are only missing; nothing as soon as something was entered that is wrong. */
export function onlyMissing(problems: readonly Problem[]): readonly string[] | undefined {
  if (problems.some((p) => p.code !== 'missing' && p.code !== 'too-few-rows')) return undefined;
  return [...new Set(problems.map((p) => p.field.split('.')[0] ?? ''))];
}

/**
 * The part of an answer that hangs on none of the missing boxes. Verdicts go by `decides`, other values by `parts`; what
 * neither names hangs on everything. Cautions stay where they are raised whatever stands in; working is not given.
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
  const example = readInputs(topic.fields, topic.example);
  const answers: Answer[] = [];
  for (let n = 0; n < tries; n += 1) {
    const result = topic.compute(standIns(topic.fields, inputs, example.ok ? example.inputs : {}, n));
    if (result.ok) answers.push(result);
  }
  const [first, ...others] = answers;
  // One outcome alone cannot show what it hangs on.
  if (!first || others.length === 0) return undefined;
  const same = (at: unknown, find: (a: Answer) => unknown) =>
    others.every((a) => JSON.stringify(find(a)) === JSON.stringify(at));
  const values = first.values.filter((v) => {
    const from = hangsOn(v);
    return from && isKnown(from) && same(v, (a) => a.values.find((w) => w.key === v.key));
  });
  if (!values.some((v) => (hangsOn(v)?.length ?? 0) > 0)) return undefined;
  const cautions = first.cautions.filter((c) => same(c, (a) => a.cautions.find((d) => d.hazard === c.hazard)));
  return { ok: true, values, working: [], cautions };
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
