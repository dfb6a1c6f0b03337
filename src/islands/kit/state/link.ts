/** Figures in the address: ?calc=blade-speed&f.diameter=350+mm&units=inch. Bare numbers are written with their unit, so that a link means the same to everyone. */
import type { Field, RawInputs, RawValue, SingleField } from '../../../core/contract/field.ts';
import { pick, type UnitSystem } from '../../../core/quantity/index.ts';
import { rawOf, systemOf, type Figures } from './figures.ts';
import { askedFields, isBlank } from './shown-text.ts';

/** Stands for a list without rows. */
const noRows = 'none';

/** `said` is what was read in each box; a sum of bare numbers is sent as its outcome. */
export function linkQuery(
  now: Figures,
  fields: readonly Field[],
  id: string,
  said: Readonly<Record<string, string>> = {},
): string {
  const query = new URLSearchParams({ calc: id });
  const raw = rawOf(now);
  for (const field of askedFields(fields, raw)) {
    const system = field.key in now.typed ? systemOf(now, field.key) : 'metric';
    const value = raw[field.key];
    // Rows taken out on purpose must not come back as the ones the field starts with.
    if (field.kind === 'rows' && Array.isArray(value) && value.length === 0) query.set(`f.${field.key}`, noRows);
    if (isBlank(value)) continue;
    if (field.kind !== 'rows') query.set(`f.${field.key}`, withUnit(field, value, system, said[field.key]));
    else
      (value as readonly RawInputs[]).forEach((row, i) => {
        for (const c of field.columns)
          if (!isBlank(row[c.key])) query.set(`f.${field.key}.${i + 1}.${c.key}`, withUnit(c, row[c.key], system));
      });
  }
  query.set('units', now.system);
  return query.toString();
}

function withUnit(field: SingleField, value: RawValue, system: UnitSystem, said?: string): string {
  const text = String(value).trim();
  if (field.kind !== 'quantity' || /[a-z°µμ%"'′″]/i.test(text)) return text;
  if (said !== undefined && /[+*×÷(]/.test(text.slice(1))) return said;
  const unit = pick(field.units, typeof value === 'number' ? 'metric' : system).replace(' diff', '');
  return unit === '1' ? text : `${text} ${unit}`;
}

export interface Linked {
  readonly base: RawInputs;
  readonly system: UnitSystem | undefined;
}

/** Figures from an address, or nothing when it holds none of this topic's. Unknown keys are passed over. */
export function readLink(search: string, fields: readonly Field[], id: string): Linked | undefined {
  const query = new URLSearchParams(search);
  // Two calculators on one page may ask for boxes of the same name.
  if ((query.get('calc') ?? id) !== id) return undefined;
  const base: Record<string, RawValue> = {};
  for (const field of fields) {
    if (field.kind === 'rows') {
      const rows = linkedRows(query, field);
      if (rows.length > 0 || query.get(`f.${field.key}`) === noRows) base[field.key] = rows;
    } else {
      const text = query.get(`f.${field.key}`);
      if (text !== null) base[field.key] = text.slice(0, 200);
    }
  }
  const units = query.get('units');
  return Object.keys(base).length === 0
    ? undefined
    : { base, system: units === 'metric' || units === 'inch' ? units : undefined };
}

function linkedRows(query: URLSearchParams, field: Extract<Field, { kind: 'rows' }>): RawInputs[] {
  const rows: RawInputs[] = [];
  for (let n = 1; n <= field.maxRows; n += 1) {
    const row = Object.fromEntries(
      field.columns.flatMap((c) => {
        const text = query.get(`f.${field.key}.${n}.${c.key}`);
        return text === null ? [] : [[c.key, text.slice(0, 200)]];
      }),
    );
    if (Object.keys(row).length === 0) break;
    rows.push(row);
  }
  return rows;
}
