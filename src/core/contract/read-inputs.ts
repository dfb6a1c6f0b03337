/**
 * Turns what was typed in a form, or sent as JSON, into the SI inputs of a calculation.
 * All problems are found in one pass and nothing typed is changed.
 */
import { readDay } from '../calendar/index.ts';
import {
  fromUnit,
  normalise,
  pick,
  readNumber,
  readPartsToOne,
  readQuantity,
  sayNumber,
  type Read,
  type UnitKey,
  type UnitSystem,
  type Wanted,
} from '../quantity/index.ts';
import { checkInputs, checkNumber, inOrderOfNeed, isAsked } from './check-inputs.ts';
import { currencySigns } from './currency.ts';
import type { Field, Inputs, InputValue, RawInputs, RawValue, SingleField } from './field.ts';
import type { Problem } from './result.ts';
import { textOf } from './text-of.ts';

export interface ReadOptions {
  /** Which unit a bare typed number is in. JSON numbers are always in the metric unit. */
  readonly system?: UnitSystem;
  /** Overrides for single fields: the unit that stood beside the box when it was typed. */
  readonly units?: Readonly<Record<string, UnitKey>>;
  /** `readSum` from quantity/sum.ts, once it has been loaded. */
  readonly sum?: (text: string, wanted: Wanted) => Read;
  /** Language of the reader, "en" if not given: it says whether 3/4/2026 is in March or in April. */
  readonly lang?: string;
  /** Currency whose sign or code may stand beside an amount of money. */
  readonly currency?: string;
}

/** What was read from the boxes, to be said back. Cells in rows go by `rows.2.column`. */
export interface Said {
  /** How each typed text was read, in words: "1.1875 in = 30.1625 mm", "9500 rpm", "November 25, 2026". */
  readonly said: Readonly<Record<string, string>>;
  /** The boxes where one of several readings was taken, or a thousands mark passed over: say "Read as ..." there. */
  readonly chosen: readonly string[];
}

export type InputsRead =
  | ({ readonly ok: true; readonly inputs: Inputs } & Said)
  /** `inputs` holds what could be read [SI]. */
  | ({ readonly ok: false; readonly problems: readonly Problem[]; readonly inputs: Inputs } & Said)
  /** Somebody typed a sum and `options.sum` was not given. */
  | { readonly ok: false; readonly needsSum: true };

/** No figure is longer; what is longer was pasted by mistake. Text fields have their own limit. */
const longestFigure = 200;
/** More fields that do not exist are not named one by one. */
const mostUnknown = 10;

const needsSum = Symbol('needs the sum evaluator');
interface Got {
  readonly value: InputValue;
  readonly said?: string;
  readonly chosen?: true;
}
type Outcome =
  | Got
  | { readonly rows: readonly Inputs[]; readonly cells: Said }
  | { readonly problems: Problem[]; readonly cells?: Said }
  | typeof needsSum;

/**
 * Reads every field of a topic.
 * @param fields the topic's @param raw text as typed, or JSON values: numbers in the metric unit
 * @param options units, language, currency and the reader of sums
 * @returns the inputs [SI] and what was read; or every problem at once, in the order of the fields; or word that a
 * sum was typed and its reader is still to be loaded. Never throws, whatever `raw` holds.
 */
export function readInputs(fields: readonly Field[], raw: RawInputs, options: ReadOptions = {}): InputsRead {
  const problems: Problem[] = unknownKeys(fields, raw);
  const inputs: Record<string, InputValue> = {};
  const said: Record<string, string> = {};
  const chosen: string[] = [];
  const note = (cells: Said | undefined, key: string) => {
    for (const [cell, text] of Object.entries(cells?.said ?? {})) said[`${key}.${cell}`] = text;
    chosen.push(...(cells?.chosen ?? []).map((cell) => `${key}.${cell}`));
  };
  for (const field of inOrderOfNeed(fields)) {
    if (!isAsked(field, inputs)) continue;
    const outcome = readField(field, Object.hasOwn(raw, field.key) ? raw[field.key] : undefined, options);
    if (outcome === needsSum) return { ok: false, needsSum: true };
    if ('problems' in outcome) {
      problems.push(...outcome.problems);
      note(outcome.cells, field.key);
    } else if ('rows' in outcome) {
      inputs[field.key] = outcome.rows;
      note(outcome.cells, field.key);
    } else if (outcome.value !== undefined) {
      inputs[field.key] = outcome.value;
      if (outcome.said !== undefined) said[field.key] = outcome.said;
      if (outcome.chosen) chosen.push(field.key);
    }
  }
  if (problems.length === 0) return { ok: true, inputs, said, chosen };
  // What could be read is held against its limits too, so that nothing waits for another field to be mended.
  const beyond = checkInputs(fields, inputs).filter((p) => inputs[p.field.split('.')[0] ?? ''] !== undefined);
  return { ok: false, problems: inFieldOrder(fields, [...problems, ...beyond]), inputs, said, chosen };
}

function inFieldOrder(fields: readonly Field[], problems: Problem[]): Problem[] {
  const place = (p: Problem) => fields.findIndex((f) => f.key === p.field.split('.')[0]);
  return problems.sort((a, b) => place(a) - place(b));
}

function unknownKeys(fields: readonly Field[], raw: RawInputs): Problem[] {
  const known = new Set(fields.map((f) => f.key));
  return Object.keys(raw)
    .filter((k) => !known.has(k))
    .slice(0, mostUnknown)
    .map((k) => ({ field: textOf(k), code: 'unknown-field', data: { allowed: [...known].join(', ') } }));
}

function readField(field: Field, raw: RawValue, options: ReadOptions): Outcome {
  return field.kind === 'rows' ? readRows(field, raw, options) : readSingle(field, raw, options);
}

function readRows(field: Extract<Field, { kind: 'rows' }>, raw: RawValue, options: ReadOptions): Outcome {
  const given = raw ?? field.default;
  if (given === undefined)
    return field.optional ? { value: undefined } : { problems: [{ field: field.key, code: 'missing' }] };
  if (!Array.isArray(given)) return { problems: [{ field: field.key, code: 'not-rows' }] };
  if (given.length > field.maxRows)
    return { problems: [{ field: field.key, code: 'too-many-rows', data: { max: field.maxRows, got: given.length } }] };
  const rows: Inputs[] = [];
  const problems: Problem[] = [];
  const said: Record<string, string> = {};
  const chosen: string[] = [];
  for (const [i, row] of (given as readonly RawInputs[]).entries()) {
    if (typeof row !== 'object' || row === null || Array.isArray(row)) {
      problems.push({
        field: field.key,
        code: 'not-a-row',
        data: { row: i + 1, got: typeof row === 'string' ? `"${textOf(row)}"` : textOf(row) },
      });
      continue;
    }
    const read = readInputs(field.columns, row, options);
    if ('needsSum' in read) return needsSum;
    for (const [cell, text] of Object.entries(read.said)) said[`${i + 1}.${cell}`] = text;
    chosen.push(...read.chosen.map((cell) => `${i + 1}.${cell}`));
    if (read.ok) rows.push(read.inputs);
    else problems.push(...read.problems.map((p) => ({ ...p, field: `${field.key}.${i + 1}.${p.field}` })));
  }
  return problems.length > 0 ? { problems, cells: { said, chosen } } : { rows, cells: { said, chosen } };
}

type NumberField = Extract<SingleField, { kind: 'number' | 'count' | 'money' }>;

function readSingle(field: SingleField, raw: RawValue, options: ReadOptions): Outcome {
  if (raw === undefined || raw === null) {
    if (field.default !== undefined)
      return { value: field.kind === 'quantity' ? fromUnit(field.default, field.units[0]) : field.default };
    return field.optional ? { value: undefined } : bad(field, 'missing');
  }
  if (typeof raw === 'string' && raw.trim() === '')
    return field.optional ? { value: undefined } : bad(field, 'missing');
  if (typeof raw === 'object') return bad(field, notOfKind[field.kind], { got: textOf(raw) });
  if (typeof raw === 'string' && field.kind !== 'text' && raw.length > longestFigure)
    return bad(field, 'too-long', { max: longestFigure, got: raw.length });
  switch (field.kind) {
    case 'quantity':
      if (typeof raw === 'number') return { value: fromUnit(raw, field.units[0]) };
      return typeof raw === 'string'
        ? readTyped(field, raw, options)
        : bad(field, 'not-a-number', { got: textOf(raw) });
    case 'number':
    case 'count':
    case 'money':
      if (typeof raw === 'number') return { value: raw };
      return typeof raw === 'string'
        ? readPlain(field, raw, options)
        : bad(field, 'not-a-number', { got: textOf(raw) });
    case 'yes-no': {
      const yes = /^(true|yes|on|y|s[ií])$/i.test(String(raw).trim());
      return yes || /^(false|no|off|n)$/i.test(String(raw).trim())
        ? { value: yes }
        : bad(field, 'not-yes-no', { got: textOf(raw) });
    }
    case 'choice':
      return { value: String(raw).trim() };
    case 'text':
      return field.day ? readDate(field, String(raw), options) : { value: String(raw).trim() };
  }
}

const notOfKind = {
  quantity: 'not-a-number',
  number: 'not-a-number',
  count: 'not-a-number',
  money: 'not-a-number',
  'yes-no': 'not-yes-no',
  choice: 'not-a-choice',
  text: 'not-text',
} as const;

function bad(field: Field, code: string, data?: Problem['data']): Outcome {
  return { problems: [data ? { field: field.key, code, data } : { field: field.key, code }] };
}

function readTyped(field: Extract<SingleField, { kind: 'quantity' }>, raw: string, options: ReadOptions): Outcome {
  const wanted: Wanted = {
    dimension: field.dimension,
    unit: options.units?.[field.key] ?? pick(field.units, options.system ?? 'metric'),
    fits: (si) => checkNumber(field, si).length === 0,
  };
  const read = readQuantity(raw, wanted);
  const done = 'sum' in read && options.sum ? options.sum(raw, wanted) : read;
  if (done.ok) return got(done.si, done.said, done.chosen);
  if ('sum' in done) return needsSum;
  const { data, ...rest } = done.problem;
  return {
    problems: [{ field: field.key, ...rest, data: 'got' in data ? { ...data, got: short(data['got']) } : data }],
  };
}

function short(value: string | number | undefined): string | number {
  return typeof value === 'number' ? value : textOf(value);
}

function got(value: InputValue, said: string | undefined, chosen?: true): Got {
  return { value, ...(said === undefined ? {} : { said }), ...(chosen ? { chosen } : {}) };
}

/** A number without a unit. The sign of the currency may stand beside money, a colon or "to" in a ratio to one. */
function readPlain(field: NumberField, raw: string, options: ReadOptions): Outcome {
  const text = field.kind === 'money' ? withoutCurrency(normalise(raw), options.currency) : normalise(raw);
  if (field.partsToOne) {
    const ratio = readPartsToOne(text);
    if (ratio) return got(ratio.value, ratio.said, true);
  }
  const read = readNumber(text);
  if (!read.ok && 'readings' in read) return chooseNumber(field, raw, read.readings);
  if (!read.ok) return bad(field, read.code, { got: textOf(raw) });
  if (!isOwnWord(read.rest, field)) return bad(field, 'no-unit-wanted', { got: textOf(raw) });
  return got(read.value, read.grouped && sayNumber(read.value), read.grouped);
}

/** What may be typed behind a number whose box counts in it. */
const counted: Readonly<Record<string, RegExp>> = {
  hour: /^(?:h|hrs?|hours?|horas?)\.?$/i,
  year: /^(?:yrs?|years?|años?)\.?$/i,
  minute: /^(?:mins?|minutes?|minutos?)\.?$/i,
  day: /^(?:d|days?|días?)\.?$/i,
};

/** Nothing behind the number, or the word the label counts in: "3 years" in "Years of service". */
function isOwnWord(rest: string, { kind, label }: NumberField): boolean {
  const word = rest.trim();
  if (word === '') return true;
  const unit = /\b(hour|year|minute|day)s\b/i.exec(label)?.[1]?.toLowerCase();
  return kind !== 'money' && unit !== undefined && counted[unit]?.test(word) === true;
}

/** "1,450": money has no thousandths and a count no fractions; for the rest the limits of the box decide. */
function chooseNumber(field: NumberField, raw: string, readings: readonly string[]): Outcome {
  const values: number[] = [];
  for (const text of readings) {
    const read = readNumber(text);
    if (!read.ok) return bad(field, read.code, { got: textOf(raw) });
    if (!isOwnWord(read.rest, field)) return bad(field, 'no-unit-wanted', { got: textOf(raw) });
    values.push(read.value);
  }
  const [pointed, grouped] = values as [number, number];
  const possible = field.kind === 'number' ? [pointed, grouped] : [grouped];
  const fitting = possible.filter((v) => checkNumber(field, v).length === 0);
  const [only, second] = fitting.length === 0 && possible.length === 1 ? possible : fitting;
  if (only !== undefined && second === undefined) return got(only, sayNumber(only), true);
  const code = fitting.length === 0 ? 'no-reading-fits' : 'two-readings';
  return { problems: [{ field: field.key, code, data: { got: textOf(raw) }, readings }] };
}

function withoutCurrency(text: string, currency: string | undefined): string {
  if (currency === undefined) return text;
  for (const sign of currencySigns(currency)) {
    if (text.startsWith(sign)) return text.slice(sign.length).trim();
    if (text.endsWith(sign)) return text.slice(0, -sign.length).trim();
  }
  return text;
}

function readDate(field: Extract<SingleField, { kind: 'text' }>, raw: string, options: ReadOptions): Outcome {
  const read = readDay(raw, options.lang);
  if (!read.ok) return bad(field, read.code, { got: textOf(raw.trim()) });
  return got(read.date, read.said, read.said === undefined ? undefined : true);
}
