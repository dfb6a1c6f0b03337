/** Limits, required fields and choices, checked on SI inputs. The reader has already turned text into numbers. */
import type { Field, Inputs, InputValue, SingleField } from './field.ts';
import { fromUnit, toUnit } from '../quantity/units.ts';
import type { Problem } from './result.ts';

/** True when the field is asked for at all, given the other answers. */
export function isAsked(field: Field, inputs: Readonly<Record<string, unknown>>): boolean {
  if (!field.when) return true;
  return field.when.is.includes(inputs[field.when.field] as string | boolean);
}

/** Every problem at once, in the order of the fields. */
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
        : [{ field: key, code: 'not-a-choice', data: { got: String(value) } }];
    case 'yes-no':
      return typeof value === 'boolean' ? [] : [{ field: key, code: 'not-yes-no', data: { got: String(value) } }];
    case 'text':
      return checkText(field, value, key);
  }
}

function checkNumber(
  field: Extract<SingleField, { kind: 'quantity' | 'number' | 'count' | 'money' }>,
  value: InputValue,
  key: string,
): Problem[] {
  if (typeof value !== 'number' || !Number.isFinite(value))
    return [{ field: key, code: 'not-a-number', data: { got: String(value) } }];
  const unit = field.kind === 'quantity' ? field.units[0] : undefined;
  // Past this a product of a few such figures is no number any more.
  if (Math.abs(value) > 1e60)
    return [{ field: key, code: 'beyond-measure', data: { got: unit ? toUnit(value, unit) : value } }];
  if (field.kind === 'count' && !Number.isInteger(value))
    return [{ field: key, code: 'not-whole', data: { got: value } }];
  const limit = (n: number) => (unit ? fromUnit(n, unit) : n);
  // A limit is the number printed on the page: rounding in the unit change must not refuse it.
  const slack = 1e-12 * Math.max(1e-12, Math.abs(value));
  const got = unit ? toUnit(value, unit) : value;
  if (field.min !== undefined && (field.above ? value <= limit(field.min) : value < limit(field.min) - slack))
    return [{ field: key, code: field.above ? 'not-above' : 'too-small', data: { min: field.min, got } }];
  if (field.max !== undefined && value > limit(field.max) + slack)
    return [{ field: key, code: 'too-large', data: { max: field.max, got } }];
  return [];
}

function checkText(field: Extract<SingleField, { kind: 'text' }>, value: InputValue, key: string): Problem[] {
  if (typeof value !== 'string') return [{ field: key, code: 'not-text', data: { got: String(value) } }];
  if (field.maxLength !== undefined && value.length > field.maxLength)
    return [{ field: key, code: 'too-long', data: { max: field.maxLength, got: value.length } }];
  if (field.pattern && !new RegExp(`^(?:${field.pattern})$`).test(value))
    return [{ field: key, code: 'not-the-pattern', data: { got: value } }];
  return [];
}
