/** What stands in a box: typed text as it is, untouched figures written in the reader's unit. */
import type { Field, RawInputs, RawValue, RowsField, SingleField } from '../../../core/contract/field.ts';
import { fromUnit, pick, readQuantity, toUnit, type UnitSystem } from '../../../core/quantity/index.ts';
import { isAsked } from '../../../core/contract/check-inputs.ts';

export function isBlank(raw: RawValue): boolean {
  if (raw === undefined || raw === null) return true;
  if (Array.isArray(raw)) return (raw as readonly RawInputs[]).every((row) => Object.values(row).every(isBlank));
  return String(raw).trim() === '';
}

/** Text of an untouched box. A figure given in another unit is turned into the shown one, to six digits. */
export function untouchedText(field: SingleField, raw: RawValue, system: UnitSystem): string {
  if (raw === undefined || raw === null)
    return field.default === undefined ? '' : untouchedText(field, field.default, system);
  if (field.kind !== 'quantity') return String(raw);
  if (typeof raw === 'number') return inUnit(fromUnit(raw, field.units[0]), field, system);
  const read = readQuantity(String(raw), { dimension: field.dimension, unit: field.units[0] });
  return read.ok ? inUnit(read.si, field, system) : String(raw);
}

function inUnit(si: number, field: Extract<SingleField, { kind: 'quantity' }>, system: UnitSystem): string {
  return String(Number(toUnit(si, pick(field.units, system)).toPrecision(6)));
}

/** Rows as text, ready to be edited: given ones, the field's own, or as many empty ones as it must have. */
export function untouchedRows(field: RowsField, raw: RawValue, system: UnitSystem): RawInputs[] {
  const given = (Array.isArray(raw) ? raw : field.default) as readonly RawInputs[] | undefined;
  const rows: readonly RawInputs[] = given ?? Array.from({ length: Math.max(1, field.minRows) }, () => ({}));
  return rows.map((row) => Object.fromEntries(field.columns.map((c) => [c.key, untouchedText(c, row[c.key], system)])));
}

/** Figures with every usual box blank. Choices and seldom-needed boxes keep what the topic gives them. */
export function blankFigures(fields: readonly Field[]): RawInputs {
  const blanks = fields.filter((f) => !f.more && f.kind !== 'choice' && f.kind !== 'yes-no');
  return Object.fromEntries(
    blanks.map((f) => [f.key, f.kind === 'rows' ? Array.from({ length: f.minRows }, () => emptyRow(f)) : '']),
  );
}

export function emptyRow(field: RowsField): RawInputs {
  return Object.fromEntries(
    field.columns.map((c) => [c.key, c.kind === 'choice' || c.kind === 'yes-no' ? String(c.default ?? '') : '']),
  );
}

/** Fields asked for at this moment, judged on what the boxes hold. */
export function askedFields(fields: readonly Field[], raw: RawInputs): readonly Field[] {
  const held: Record<string, unknown> = {};
  // Fields others depend on come first, as when they are read.
  for (const f of [...fields.filter((x) => !x.when), ...fields.filter((x) => x.when)]) {
    if (isAsked(f, held)) held[f.key] = valueHeld(f, raw[f.key]);
  }
  return fields.filter((f) => f.key in held);
}

export function valueHeld(field: Field, raw: RawValue): unknown {
  const given = raw ?? ('default' in field ? field.default : undefined);
  if (field.kind !== 'yes-no') return given;
  return given === true || given === 'yes' || given === 'true'
    ? true
    : given === false || given === 'no' || given === 'false'
      ? false
      : undefined;
}
