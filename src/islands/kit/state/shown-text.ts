/** What stands in a box: the reader's text as it is, any other figure written in the reader's unit. */
import { textOf } from '../../../core/contract/text-of.ts';
import type { Entry } from '../../../core/contract/entry.ts';
import type { RawValue, SingleField } from '../../../core/contract/field.ts';
import { pick, readQuantity, toUnit, type UnitKey, type UnitSystem } from '../../../core/quantity/index.ts';

export function isBlank(raw: RawValue): boolean {
  return raw === undefined || raw === null || textOf(raw).trim() === '';
}

/** Text of a box, given the system of the switch. */
export function shownText(field: SingleField, entry: Entry | undefined, system: UnitSystem): string {
  if (!entry) return '';
  return entry.from === 'own' ? entry.text : untouchedText(field, entry, system);
}

/** A figure nobody typed, in the shown unit; turned into another unit it is rounded to what a gauge reads. */
export function untouchedText(field: SingleField, { text, unitIn }: Entry, system: UnitSystem): string {
  if (field.kind !== 'quantity' || text.trim() === '') return text;
  const read = readQuantity(text, { dimension: field.dimension, unit: pick(field.units, unitIn) });
  if (!read.ok) return text;
  const unit = pick(field.units, system);
  const value = toUnit(read.si, unit);
  if (read.unit === unit) return String(Number(value.toPrecision(6)));
  return gaugeText(value, unit, digitsIn(text));
}

/** Decimals a gauge in this unit is read to; coarse figures and fine ones of a length differ. */
const gauges: Readonly<Partial<Record<UnitKey, number>>> = { thou: 1, mm: 3, µm: 0, psi: 0, ft: 0, rpm: 0 };
/** Inch figures finer than this many metric digits come from a micrometer, not from a rule or a caliper. */
const micrometerDigits = 4;

function gaugeText(value: number, unit: UnitKey, digits: number): string {
  const decimals = unit === 'in' ? (digits >= micrometerDigits ? 4 : 3) : gauges[unit];
  if (decimals !== undefined && Math.abs(value) >= 10 ** (1 - decimals)) return String(Number(value.toFixed(decimals)));
  return String(Number(value.toPrecision(Math.max(3, Math.min(6, digits)))));
}

/** Figures that count in a text: "46.98 mm" has four. */
function digitsIn(text: string): number {
  const number = /[\d.,]+/.exec(text)?.[0] ?? '';
  return number.replace(/[.,]/g, '').replace(/^0+/, '').length;
}
