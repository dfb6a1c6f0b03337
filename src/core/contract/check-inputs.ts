/** Limits, required fields and choices, checked on SI inputs. The reader has already turned text into numbers. */
import type { Field, Inputs, InputValue, SingleField } from './field.ts';
import { fromUnit, toUnit } from '../quantity/index.ts';
import { isOver, isUnder } from '../thresholds/index.ts';
import type { Problem } from './result.ts';
import { textOf } from './text-of.ts';

/**
 * True when the field is asked for at all, given the other answers.
 * @param field the field @param inputs answers to the fields that are asked for, in any unit
 * @returns false where the field it hangs on is missing or says otherwise
 */
export function isAsked(field: Field, inputs: Readonly<Record<string, unknown>>): boolean {
  if (!field.when) return true;
  return field.when.is.includes(inputs[field.when.field] as string | boolean);
}

/**
 * The fields so that each stands behind the one its `when` names: in this order every condition can be judged.
 * @param fields in the order of the form @returns the same fields; a ring of conditions keeps the order of the form
 */
export function inOrderOfNeed<F extends Field>(fields: readonly F[]): readonly F[] {
  const placed = new Set<F>();
  const place = (field: F, above: readonly F[]): void => {
    if (placed.has(field) || above.includes(field)) return;
    const needed = field.when && fields.find((f) => f.key === field.when?.field);
    if (needed) place(needed, [...above, field]);
    placed.add(field);
  };
  fields.forEach((f) => place(f, []));
  return [...placed];
}

/**
 * Inputs without those nobody asked for. A field that hangs on one that is itself not asked for is not asked for.
 * @param fields the topic's @param inputs [SI] @returns the asked ones [SI], figures a last bit past a limit put on it
 */
export function askedInputs(fields: readonly Field[], inputs: Inputs): Inputs {
  const asked: Record<string, InputValue> = {};
  for (const field of inOrderOfNeed(fields))
    if (isAsked(field, asked)) asked[field.key] = onLimit(field, inputs[field.key]);
  return asked;
}

/** What lies past a limit by rounding alone is put on it, so that no calculation meets a figure outside its range. */
function onLimit(field: Field, value: InputValue): InputValue {
  if (field.kind === 'rows')
    return Array.isArray(value)
      ? (value as readonly Inputs[]).map((row) => ({ ...row, ...askedInputs(field.columns, row) }))
      : value;
  if (typeof value !== 'number' || !hasLimits(field)) return value;
  const [min, max] = [field.min, field.max].map((n) => (n === undefined ? undefined : inSi(field, n)));
  if (max !== undefined && value > max && !isOver(value, max)) return max;
  if (min !== undefined && value < min && !isUnder(value, min)) return min;
  return value;
}

type Limited = Extract<SingleField, { kind: 'quantity' | 'number' | 'count' | 'money' }>;

function hasLimits(field: SingleField): field is Limited {
  return field.kind === 'quantity' || field.kind === 'number' || field.kind === 'count' || field.kind === 'money';
}

function inSi(field: Limited, value: number): number {
  return field.kind === 'quantity' ? fromUnit(value, field.units[0]) : value;
}

/**
 * Every problem at once, in the order of the fields.
 * @param fields the topic's @param inputs [SI] @returns none where `compute` may run
 */
export function checkInputs(fields: readonly Field[], inputs: Inputs): Problem[] {
  const problems: Problem[] = [];
  for (const field of fields) {
    if (!isAsked(field, inputs)) continue;
    const value = inputs[field.key];
    if (value === undefined) {
      if (!field.optional) problems.push({ field: field.key, code: 'missing' });
      continue;
    }
    if (field.kind === 'rows') problems.push(...checkRows(field, value));
    else problems.push(...checkOne(field, value, field.key));
  }
  return problems;
}

function checkRows(field: Extract<Field, { kind: 'rows' }>, value: InputValue): Problem[] {
  if (!Array.isArray(value)) return [{ field: field.key, code: 'not-rows' }];
  const rows = value as readonly Inputs[];
  if (rows.length < field.minRows)
    return [{ field: field.key, code: 'too-few-rows', data: { min: field.minRows, got: rows.length } }];
  if (rows.length > field.maxRows)
    return [{ field: field.key, code: 'too-many-rows', data: { max: field.maxRows, got: rows.length } }];
  return rows.flatMap((row, i) =>
    checkInputs(field.columns, row).map((p) => ({ ...p, field: `${field.key}.${i + 1}.${p.field}` })),
  );
}

function checkOne(field: SingleField, value: InputValue, key: string): Problem[] {
  switch (field.kind) {
    case 'quantity':
    case 'number':
    case 'count':
    case 'money':
      return checkNumber(field, value, key);
    case 'choice':
      return field.options.some((o) => o.value === value)
        ? []
        : [{ field: key, code: 'not-a-choice', data: { got: textOf(value) } }];
    case 'yes-no':
      return typeof value === 'boolean' ? [] : [{ field: key, code: 'not-yes-no', data: { got: textOf(value) } }];
    case 'text':
      return checkText(field, value, key);
  }
}

/** Past this a product of a few such figures is no number any more. */
const mostInAnyUnit = 1e60;

/**
 * What is wrong with one figure: no number, no whole number, or outside its limits. A limit itself is let through,
 * also where a change of unit moved it by a last bit.
 * @param field the box @param value [SI] @param key how the problem names the box @returns no problem, or one
 */
export function checkNumber(field: Limited, value: InputValue, key: string = field.key): Problem[] {
  if (typeof value !== 'number' || !Number.isFinite(value))
    return [{ field: key, code: 'not-a-number', data: { got: textOf(value) } }];
  const unit = field.kind === 'quantity' ? field.units[0] : undefined;
  if (Math.abs(value) > mostInAnyUnit)
    return [{ field: key, code: 'beyond-measure', data: { got: unit ? toUnit(value, unit) : value } }];
  if (field.kind === 'count' && !Number.isInteger(value))
    return [{ field: key, code: 'not-whole', data: { got: value } }];
  const got = unit ? toUnit(value, unit) : value;
  if (
    field.min !== undefined &&
    (field.above ? !isOver(value, inSi(field, field.min)) : isUnder(value, inSi(field, field.min)))
  )
    return [{ field: key, code: field.above ? 'not-above' : 'too-small', data: { min: field.min, got } }];
  if (field.max !== undefined && isOver(value, inSi(field, field.max)))
    return [{ field: key, code: 'too-large', data: { max: field.max, got } }];
  return [];
}

function checkText(field: Extract<SingleField, { kind: 'text' }>, value: InputValue, key: string): Problem[] {
  if (typeof value !== 'string') return [{ field: key, code: 'not-text', data: { got: textOf(value) } }];
  if (field.maxLength !== undefined && value.length > field.maxLength)
    return [{ field: key, code: 'too-long', data: { max: field.maxLength, got: value.length } }];
  if (field.pattern && !new RegExp(`^(?:${field.pattern})$`).test(value))
    return [{ field: key, code: 'not-the-pattern', data: { got: textOf(value) } }];
  return [];
}
