/**
 * Figures in the address: ?calc=blade-speed&f.diameter=350+mm&own=diameter&units=inch. Bare numbers are written with
 * their unit, so that a link means the same to everyone; whose they are goes along, and a figure a link says nothing
 * about is nobody's.
 */
import {
  isPencil,
  isRows,
  type Entries,
  type Entry,
  type EntryRow,
  type From,
  type Held,
} from '../../../core/contract/entry.ts';
import type { Field, RawInputs, RowsField, SingleField } from '../../../core/contract/field.ts';
import type { UnitSystem } from '../../../core/quantity/index.ts';
import { askedOf, withUnit, type Figures } from './figures.ts';
import { blankEntries, laidOver } from './starts.ts';

/** Stands for a list without rows. */
const noRows = 'none';
/** Origins a link vouches for; all others arrive as an article's figures do. */
const vouched: readonly From[] = ['own', 'plate', 'usual', 'carried'];
const longest = 200;

/** `said` is what was read in each box; a sum of bare numbers is sent as its outcome. */
export function linkQuery(
  now: Figures,
  fields: readonly Field[],
  id: string,
  said: Readonly<Record<string, string>> = {},
): string {
  const query = new URLSearchParams({ calc: id });
  const whose: Partial<Record<From, string[]>> = {};
  const put = (path: string, text: string, entry: Entry) => {
    if (text === '') return;
    query.set(`f.${path}`, text);
    if (vouched.includes(entry.from) && !isPencil(entry)) (whose[entry.from] ??= []).push(path);
  };
  for (const field of askedOf(now, fields)) {
    const held = now.entries[field.key];
    if (field.kind !== 'rows') {
      if (held && !isRows(held)) put(field.key, sent(field, held, said[field.key]), held);
      continue;
    }
    // Rows taken out on purpose must not come back as the ones the field starts with.
    if (isRows(held) && held.length === 0) query.set(`f.${field.key}`, noRows);
    if (isRows(held))
      held.forEach((row, i) => {
        for (const c of field.columns) {
          const entry = row[c.key];
          const path = `${field.key}.${i + 1}.${c.key}`;
          if (entry) put(path, sent(c, entry, said[path]), entry);
        }
      });
  }
  for (const from of vouched) if (whose[from]) query.set(from, whose[from].join('~'));
  const machine = Object.values(now.entries).flatMap((h) => (isRows(h) ? [] : (h.of?.machine ?? [])))[0];
  if (machine !== undefined) query.set('of', machine);
  query.set('units', now.system);
  return query.toString();
}

/** A sum of bare numbers goes as its outcome: one unit behind it would not be that of each. */
function sent(field: SingleField, entry: Entry, said: string | undefined): string {
  const { text } = entry;
  const sum = /[+*×÷(]/.test(text.slice(1)) && !/[a-z°µμ%"'′″]/i.test(text);
  return sum && said !== undefined ? said : withUnit(field, entry);
}

export interface Linked {
  readonly entries: Entries;
  readonly system: UnitSystem | undefined;
}

/**
 * Figures from an address, laid over `start`, or nothing when it holds none of this topic's. Unknown keys are passed over.
 */
export function readLink(
  search: string,
  fields: readonly Field[],
  id: string,
  start: Entries = blankEntries(fields),
): Linked | undefined {
  const query = new URLSearchParams(search);
  // Two calculators on one page may ask for boxes of the same name.
  if ((query.get('calc') ?? id) !== id) return undefined;
  const texts: Record<string, RawInputs[string]> = {};
  for (const field of fields) {
    if (field.kind === 'rows') {
      const rows = linkedRows(query, field);
      if (rows.length > 0 || query.get(`f.${field.key}`) === noRows) texts[field.key] = rows;
    } else {
      const text = query.get(`f.${field.key}`);
      if (text !== null) texts[field.key] = text.slice(0, longest);
    }
  }
  if (Object.keys(texts).length === 0) return undefined;
  const whose = new Map(
    vouched.flatMap((from) => (query.get(from) ?? '').split('~').map((path) => [path, from] as const)),
  );
  const machine = query.get('of')?.slice(0, longest);
  const claimed = (path: string, entry: Entry): Entry => {
    const from = whose.get(path);
    if (!from) return entry;
    return { ...entry, from, ...(from === 'plate' && machine ? { of: { machine } } : {}) };
  };
  const laid = laidOver(fields, start, texts, 'page');
  const entries: Record<string, Held> = {};
  for (const [key, held] of Object.entries(laid))
    entries[key] = isRows(held)
      ? held.map((row, i): EntryRow =>
          Object.fromEntries(Object.entries(row).map(([c, e]) => [c, claimed(`${key}.${i + 1}.${c}`, e)])),
        )
      : claimed(key, held);
  const units = query.get('units');
  return { entries, system: units === 'metric' || units === 'inch' ? units : undefined };
}

function linkedRows(query: URLSearchParams, field: RowsField): RawInputs[] {
  const rows: RawInputs[] = [];
  for (let n = 1; n <= field.maxRows; n += 1) {
    const row = Object.fromEntries(
      field.columns.flatMap((c) => {
        const text = query.get(`f.${field.key}.${n}.${c.key}`);
        return text === null ? [] : [[c.key, text.slice(0, longest)]];
      }),
    );
    if (Object.keys(row).length === 0) break;
    rows.push(row);
  }
  return rows;
}
