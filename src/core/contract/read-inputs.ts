/**
 * Turns what was typed in a form, or sent as JSON, into the SI inputs of a calculation.
 * All problems are found in one pass and nothing typed is changed.
 */
import { checkInputs, isAsked } from './check-inputs.ts';
import type { Field, Inputs, InputValue, RawInputs, RawValue, SingleField } from './field.ts';
import {
  fromUnit,
  pick,
  readQuantity,
  type Read,
  type UnitKey,
  type UnitSystem,
  type Wanted,
} from '../quantity/index.ts';
import { normalise, readNumber } from '../quantity/number.ts';
import type { Problem } from './result.ts';

export interface ReadOptions {
  /** Which unit a bare typed number is in. JSON numbers are always in the metric unit. */
  readonly system?: UnitSystem;
  /** Overrides for single fields: the unit that stood beside the box when it was typed. */
  readonly units?: Readonly<Record<string, UnitKey>>;
  /** `readSum` from quantity/sum.ts, once it has been loaded. */
  readonly sum?: (text: string, wanted: Wanted) => Read;
}

export type InputsRead =
  | { readonly ok: true; readonly inputs: Inputs; readonly said: Readonly<Record<string, string>> }
  | { readonly ok: false; readonly problems: readonly Problem[] }
  /** Somebody typed a sum and `options.sum` was not given. */
  | { readonly ok: false; readonly needsSum: true };

const needsSum = Symbol('needs the sum evaluator');
type Outcome = { value: InputValue; said?: string } | { problems: Problem[] } | typeof needsSum;

export function readInputs(fields: readonly Field[], raw: RawInputs, options: ReadOptions = {}): InputsRead {
  const problems: Problem[] = unknownKeys(fields, raw);
  const inputs: Record<string, InputValue> = {};
  const said: Record<string, string> = {};
  for (const field of inOrderOfNeed(fields)) {
    if (!isAsked(field, inputs)) continue;
    const outcome = readField(field, raw[field.key], options);
    if (outcome === needsSum) return { ok: false, needsSum: true };
    if ('problems' in outcome) problems.push(...outcome.problems);
    else if (outcome.value !== undefined) {
      inputs[field.key] = outcome.value;
      if (outcome.said !== undefined) said[field.key] = outcome.said;
    }
  }
  if (problems.length === 0) return { ok: true, inputs, said };
  // What could be read is held against its limits too, so that nothing waits for another field to be mended.
  const beyond = checkInputs(fields, inputs).filter((p) => inputs[p.field.split('.')[0] ?? ''] !== undefined);
  return { ok: false, problems: inFieldOrder(fields, [...problems, ...beyond]) };
}

/** Fields others depend on are read first, so that conditions can be judged. */
function inOrderOfNeed(fields: readonly Field[]): readonly Field[] {
  return [...fields.filter((f) => !f.when), ...fields.filter((f) => f.when)];
}

function inFieldOrder(fields: readonly Field[], problems: Problem[]): Problem[] {
  const place = (p: Problem) => fields.findIndex((f) => f.key === p.field.split('.')[0]);
  return problems.sort((a, b) => place(a) - place(b));
}

function unknownKeys(fields: readonly Field[], raw: RawInputs): Problem[] {
  const known = new Set(fields.map((f) => f.key));
  return Object.keys(raw)
    .filter((k) => !known.has(k))
    .map((k) => ({ field: k, code: 'unknown-field', data: { allowed: [...known].join(', ') } }));
}

function readField(field: Field, raw: RawValue, options: ReadOptions): Outcome {
  if (field.kind === 'rows') return readRows(field, raw, options);
  return readSingle(field, raw, options);
}

function readRows(field: Extract<Field, { kind: 'rows' }>, raw: RawValue, options: ReadOptions): Outcome {
  const given = raw ?? field.default;
  if (given === undefined)
    return field.optional ? { value: undefined } : { problems: [{ field: field.key, code: 'missing' }] };
  if (!Array.isArray(given)) return { problems: [{ field: field.key, code: 'not-rows' }] };
  const rows: Inputs[] = [];
  const problems: Problem[] = [];
  for (const [i, row] of (given as readonly RawInputs[]).entries()) {
    if (typeof row !== 'object' || row === null || Array.isArray(row)) {
      problems.push({ field: field.key, code: 'not-a-row', data: { row: i + 1, got: String(JSON.stringify(row)) } });
      continue;
    }
    const read = readInputs(field.columns, row, options);
    if (read.ok) rows.push(read.inputs);
    else if ('needsSum' in read) return needsSum;
    else problems.push(...read.problems.map((p) => ({ ...p, field: `${field.key}.${i + 1}.${p.field}` })));
  }
  return problems.length > 0 ? { problems } : { value: rows };
}

function readSingle(field: SingleField, raw: RawValue, options: ReadOptions): Outcome {
  const bad = (code: string, data?: Problem['data']): Outcome => ({
    problems: [data ? { field: field.key, code, data } : { field: field.key, code }],
  });
  if (raw === undefined || raw === null) {
    if (field.default !== undefined)
      return { value: field.kind === 'quantity' ? fromUnit(field.default, field.units[0]) : field.default };
    return field.optional ? { value: undefined } : bad('missing');
  }
  if (typeof raw === 'string' && raw.trim() === '') return field.optional ? { value: undefined } : bad('missing');
  if (typeof raw === 'object') return bad('not-a-number', { got: JSON.stringify(raw) });
  switch (field.kind) {
    case 'quantity':
      if (typeof raw === 'number') return { value: fromUnit(raw, field.units[0]) };
      return typeof raw === 'string' ? readTyped(field, raw, options) : bad('not-a-number', { got: String(raw) });
    case 'number':
    case 'count':
    case 'money':
      if (typeof raw === 'number') return { value: raw };
      return typeof raw === 'string' ? readPlainNumber(field.key, raw) : bad('not-a-number', { got: String(raw) });
    case 'yes-no': {
      const yes = /^(true|yes|on|y|s[ií])$/i.test(String(raw).trim());
      return yes || /^(false|no|off|n)$/i.test(String(raw).trim())
        ? { value: yes }
        : bad('not-yes-no', { got: String(raw) });
    }
    case 'choice':
    case 'text':
      return { value: String(raw).trim() };
  }
}

function readTyped(field: Extract<SingleField, { kind: 'quantity' }>, raw: string, options: ReadOptions): Outcome {
  const wanted = {
    dimension: field.dimension,
    unit: options.units?.[field.key] ?? pick(field.units, options.system ?? 'metric'),
  };
  const read = readQuantity(raw, wanted);
  const done = 'sum' in read && options.sum ? options.sum(raw, wanted) : read;
  if (done.ok) return { value: done.si, said: done.said };
  return 'sum' in done ? needsSum : { problems: [{ field: field.key, ...done.problem }] };
}

/** A number without a unit; a currency sign or a percent sign in front or behind is not read as part of it. */
function readPlainNumber(field: string, raw: string): Outcome {
  const text = normalise(raw);
  const read = readNumber(text);
  if (!read.ok) return { problems: [{ field, code: read.code, data: { got: raw } }] };
  return read.rest.trim() === ''
    ? { value: read.value }
    : { problems: [{ field, code: 'no-unit-wanted', data: { got: raw } }] };
}
