/** One JSON line in, one plain object out. */
import type { Field, Inputs, RawInputs } from '../../core/contract/field.ts';
import type { PutIn } from '../../core/contract/formula.ts';
import { describeProblem } from '../../core/contract/messages.ts';
import { readInputs } from '../../core/contract/read-inputs.ts';
import type { Problem, Result } from '../../core/contract/result.ts';
import { textOf } from '../../core/contract/text-of.ts';
import type { Words } from '../../core/contract/words.ts';
import { toUnit, unitLabel } from '../../core/quantity/index.ts';
import { readSum } from '../../core/quantity/sum.ts';
import { clean, valueOut } from './metric.ts';
import type { Options } from './options.ts';

/** A topic, or a block with its topic's words. */
export interface Callable {
  readonly fields: readonly Field[];
  readonly words: Words;
  readonly compute: (inputs: Inputs) => Result;
}

export type AnswerLine =
  | { readonly broken: string; readonly out?: never }
  | { readonly broken?: never; readonly out: { ok: boolean; [key: string]: unknown } };

/**
 * The answer to one line.
 * @param line JSON text @param callable topic or block @param options the currency of its money
 * @returns values or problems, ready for JSON; or why the line is no JSON object. Never throws.
 */
export function answerLine(line: string, callable: Callable, options: Options = { currency: 'USD' }): AnswerLine {
  let raw: unknown;
  try {
    // Some shells put a byte-order mark before the first line.
    raw = JSON.parse(line.replace(/^\uFEFF/, ''));
  } catch (error) {
    return { broken: textOf((error as Error).message) };
  }
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw)) return { broken: `received ${textOf(raw)}` };
  try {
    return { out: answer(raw as RawInputs, callable, options) };
  } catch (error) {
    // A fault of the core must not take the other lines with it.
    const message = `This line could not be worked out, which is a fault of the almanac: ${textOf((error as Error).message)}`;
    return { out: { ok: false, problems: [{ field: '', code: 'fault', message }] } };
  }
}

function answer(raw: RawInputs, callable: Callable, options: Options): { ok: boolean; [key: string]: unknown } {
  const read = readInputs(callable.fields, raw, { sum: readSum, currency: options.currency });
  if (!read.ok) return problemsOut('problems' in read ? read.problems : [], callable, options);
  const result = callable.compute(read.inputs);
  return result.ok
    ? { ...answerOut(result, callable.words, options), taken: takenOut(raw, read.inputs, callable.fields, options) }
    : problemsOut(result.problems, callable, options);
}

function problemsOut(
  problems: readonly Problem[],
  { fields, words }: Callable,
  { currency }: Options,
): { ok: false; problems: unknown[] } {
  return {
    ok: false,
    problems: problems.map((p) => ({ ...p, message: describeProblem(p, { fields, words, currency }) })),
  };
}

function answerOut(result: Extract<Result, { ok: true }>, words: Words, { currency }: Options) {
  return {
    ok: true,
    values: Object.fromEntries(
      result.values.map((v) => [v.key, valueOut(v, { words, currency, values: result.values })]),
    ),
    working: result.working.map((s) => ({ ...s, put: s.put.map(termOut), gave: termOut(s.gave) })),
    cautions: result.cautions,
  };
}

/** The boxes the line left out, by what stands in them: no answer rests on a default without a word. */
function takenOut(raw: RawInputs, inputs: Inputs, fields: readonly Field[], { currency }: Options) {
  const left = fields.flatMap((field): [string, unknown][] => {
    const typed = raw[field.key];
    const value = inputs[field.key];
    if ((typed !== undefined && typed !== null && typed !== '') || value === undefined) return [];
    if (field.kind === 'rows') return [];
    if (field.kind === 'quantity' && typeof value === 'number')
      return [[field.key, { value: clean(toUnit(value, field.units[0])), unit: unitLabel(field.units[0]) }]];
    return [[field.key, field.kind === 'money' ? { value, currency } : { value }]];
  });
  return Object.fromEntries(left);
}

function termOut(term: PutIn) {
  return { ...term, value: clean(term.value), unit: unitLabel(term.unit) };
}
