/** One JSON line in, one plain object out. Numbers come back in the metric unit, with SI beside them. */
import type { Field, Inputs, RawInputs } from '../../core/contract/field.ts';
import { describeProblem, sayer } from '../../core/contract/messages.ts';
import { toUnit, unitLabel } from '../../core/quantity/index.ts';
import { readSum } from '../../core/quantity/sum.ts';
import { readInputs } from '../../core/contract/read-inputs.ts';
import type { Problem, Result, Value } from '../../core/contract/result.ts';
import type { Words } from '../../core/contract/words.ts';

/** A topic, or a block with its topic's words. */
export interface Callable {
  readonly fields: readonly Field[];
  readonly words: Words;
  readonly compute: (inputs: Inputs) => Result;
}

export type AnswerLine =
  | { readonly broken: string; readonly out?: never }
  | { readonly broken?: never; readonly out: { ok: boolean; [key: string]: unknown } };

export function answerLine(line: string, callable: Callable): AnswerLine {
  let raw: unknown;
  try {
    // Some shells put a byte-order mark before the first line.
    raw = JSON.parse(line.replace(/^\uFEFF/, ''));
  } catch (error) {
    return { broken: (error as Error).message };
  }
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw))
    return { broken: `received ${JSON.stringify(raw)}` };
  const read = readInputs(callable.fields, raw as RawInputs, { sum: readSum });
  if (!read.ok) return { out: problemsOut('problems' in read ? read.problems : [], callable) };
  const result = callable.compute(read.inputs);
  return { out: result.ok ? answerOut(result, callable.words) : problemsOut(result.problems, callable) };
}

function problemsOut(problems: readonly Problem[], { fields, words }: Callable): { ok: false; problems: unknown[] } {
  return { ok: false, problems: problems.map((p) => ({ ...p, message: describeProblem(p, { fields, words }) })) };
}

function answerOut(result: Extract<Result, { ok: true }>, words: Words) {
  return {
    ok: true,
    values: Object.fromEntries(result.values.map((v) => [v.key, valueOut(v, words)])),
    working: result.working.map((s) => ({ ...s, put: s.put.map(termOut), gave: termOut(s.gave) })),
    cautions: result.cautions,
  };
}

function termOut<T extends { unit: Parameters<typeof unitLabel>[0] }>(term: T) {
  return { ...term, unit: unitLabel(term.unit) };
}

function valueOut(value: Value, words: Words): unknown {
  const { key: _key, ...rest } = value;
  if (rest.kind === 'verdict') return { ...rest, says: words.verdicts[rest.code]?.(rest.data ?? {}, sayer({})) };
  if (rest.kind !== 'quantity') return rest;
  const unit = rest.units[0];
  const scaled = (n: number | undefined) => (n === undefined ? {} : toUnit(n, unit));
  const { units: _units, decimals: _decimals, figures: _figures, value: si, low, high, ...named } = rest;
  return {
    ...named,
    value: toUnit(si, unit),
    ...(low === undefined ? {} : { low: scaled(low) }),
    ...(high === undefined ? {} : { high: scaled(high) }),
    unit: unitLabel(unit),
    si,
  };
}
