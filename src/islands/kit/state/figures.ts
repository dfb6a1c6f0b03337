/** What stands in the boxes and what the reader did to them, as plain data: one entry a box, with where it comes from. */
import {
  filledIn,
  isRows,
  type Entries,
  type Entry,
  type EntryRow,
  type From,
  type Held,
  type Of,
} from '../../../core/contract/entry.ts';
import { askedFields } from '../../../core/contract/asked.ts';
import type { Field, RawInputs, RowsField, SingleField } from '../../../core/contract/field.ts';
import { normalise, pick, unitLabel, type UnitKey, type UnitSystem } from '../../../core/quantity/index.ts';
import { afterOwnAct, blankEntries, emptyRowEntries, laidOver, mayBeConfirmed } from './starts.ts';

export interface Figures {
  readonly entries: Entries;
  readonly system: UnitSystem;
  /** Boxes the reader has left after changing them; only these complain before the button is pressed. */
  readonly visited: ReadonlySet<string>;
  readonly pressed: boolean;
  /** Grows when the boxes are filled anew; an answer does not outlive its series. */
  readonly series: number;
  /** The boxes before each act, newest last; what "Undo" goes back to. */
  readonly past: readonly Entries[];
  /** Box of the last act, while it is still being typed in: a word is one act, not five. */
  readonly typing?: string | undefined;
}

export type Change =
  /** `whole` when the reader marked all of the old text first. */
  | { readonly do: 'type'; readonly path: string; readonly text: string; readonly whole?: boolean }
  | { readonly do: 'add-row'; readonly key: string }
  | { readonly do: 'remove-row'; readonly key: string; readonly at: number }
  /** Figures from elsewhere, a machine's plate or another answer; what the reader typed is not overwritten. */
  | { readonly do: 'fill'; readonly figures: RawInputs; readonly from: From; readonly of?: Of }
  /** The boxes hold what the reader means: defaults nobody touched become the reader's own. */
  | { readonly do: 'confirm'; readonly keys: readonly string[] }
  | { readonly do: 'leave'; readonly path: string }
  | { readonly do: 'units'; readonly system: UnitSystem }
  | { readonly do: 'press' }
  /** Everything is right again: later slips are only said where they happen. */
  | { readonly do: 'settle' }
  /** Other figures altogether: the example, none, a link's, a machine's. `fresh` has no way back. */
  | { readonly do: 'start'; readonly entries: Entries; readonly fresh?: boolean }
  | { readonly do: 'undo' };

/** Acts a reader can take back. */
const remembered = 50;

export function startFigures(entries: Entries, system: UnitSystem): Figures {
  return { entries, system, visited: new Set(), pressed: false, series: 0, past: [] };
}

/** The change of one form; it needs the fields to know what an own figure makes of the example's. */
export function changesOf(fields: readonly Field[]): (now: Figures, change: Change) => Figures {
  return (now, change) => {
    switch (change.do) {
      case 'type':
        return typed(fields, now, change.path, change.text, change.whole === true);
      case 'add-row':
      case 'remove-row':
        return rowsChanged(fields, now, change);
      case 'fill':
        return filled(fields, now, change);
      case 'confirm':
        return confirmed(fields, now, change.keys);
      case 'leave': {
        const own = entryAt(now.entries, change.path)?.from === 'own';
        const seen = now.visited.has(change.path);
        const visited = own && !seen ? new Set([...now.visited, change.path]) : now.visited;
        return { ...now, visited, typing: undefined };
      }
      case 'units':
        return { ...now, system: change.system, typing: undefined };
      case 'press':
        return { ...now, pressed: true };
      case 'settle':
        return now.pressed ? { ...now, pressed: false } : now;
      case 'start': {
        const start = { ...startFigures(change.entries, now.system), series: now.series + 1 };
        return change.fresh ? start : { ...start, past: pushed(now) };
      }
      case 'undo': {
        const before = now.past.at(-1);
        if (!before) return now;
        return { ...startFigures(before, now.system), series: now.series + 1, past: now.past.slice(0, -1) };
      }
    }
  };
}

function pushed(now: Figures): readonly Entries[] {
  return [...now.past, now.entries].slice(-remembered);
}

function typed(fields: readonly Field[], now: Figures, path: string, text: string, whole: boolean): Figures {
  const before = entryAt(now.entries, path);
  const begun = before?.from === 'own' && before.text.trim() !== '' && !whole && isEditOf(before.text, text);
  const entry: Entry = { text, from: 'own', unitIn: begun ? before.unitIn : now.system };
  const going = now.typing === path;
  const entries = withEntry(afterOwnAct(fields, now.entries, path), path, entry);
  return { ...now, entries, past: going ? now.past : pushed(now), typing: path };
}

/** False when nothing of the old text is left at either end: then the box was written anew, in the unit of the switch. */
export function isEditOf(before: string, after: string): boolean {
  return after === '' || after.startsWith(before.charAt(0)) || before.at(-1) === after.at(-1);
}

function rowsChanged(
  fields: readonly Field[],
  now: Figures,
  change: Extract<Change, { do: 'add-row' | 'remove-row' }>,
): Figures {
  const field = fields.find((f): f is RowsField => f.kind === 'rows' && f.key === change.key);
  if (!field) return now;
  const start = afterOwnAct(fields, now.entries, change.key);
  const rows = rowsAt(start, field);
  const next =
    change.do === 'add-row' ? [...rows, emptyRowEntries(field, rows.at(-1))] : rows.filter((_, i) => i !== change.at);
  return { ...now, entries: { ...start, [change.key]: next }, past: pushed(now), typing: undefined };
}

function filled(
  fields: readonly Field[],
  now: Figures,
  { figures, from, of }: Extract<Change, { do: 'fill' }>,
): Figures {
  const before = Object.values(now.entries).flatMap(filledIn);
  if (Object.keys(figures).length === 0 && !before.some((e) => e.from === from)) return now;
  // Another machine takes the figures of the one before it away.
  const start = from === 'plate' ? withoutPlate(fields, now.entries) : afterOwnAct(fields, now.entries, '');
  const free = Object.fromEntries(Object.entries(figures).filter(([key]) => !isOwn(now.entries[key])));
  const entries = laidOver(fields, start, free, from, of);
  return { ...now, entries, past: pushed(now), typing: undefined };
}

function withoutPlate(fields: readonly Field[], entries: Entries): Entries {
  const rest = afterOwnAct(fields, entries, '');
  const blank = blankEntries(fields);
  return Object.fromEntries(
    Object.entries(rest).flatMap(([key, held]): readonly (readonly [string, Held])[] => {
      if (!filledIn(held).some((e) => e.from === 'plate')) return [[key, held]];
      const standing = blank[key];
      return standing ? [[key, standing]] : [];
    }),
  );
}

function isOwn(held: Held | undefined): boolean {
  return filledIn(held).some((e) => e.from === 'own');
}

function confirmed(fields: readonly Field[], now: Figures, keys: readonly string[]): Figures {
  const entries: Record<string, Held> = { ...now.entries };
  for (const field of fields) {
    const held = entries[field.key];
    if (keys.includes(field.key) && held && !isRows(held) && mayBeConfirmed(field))
      entries[field.key] = { ...held, from: 'own' };
  }
  return { ...now, entries, past: pushed(now), typing: undefined };
}

/** The entry of a box, "bore", or of a cell, "lines.2.price" (rows count from 1). */
export function entryAt(entries: Entries, path: string): Entry | undefined {
  const [key = '', row, column = ''] = path.split('.');
  const held = entries[key];
  if (row === undefined) return isRows(held) ? undefined : held;
  return isRows(held) ? held[Number(row) - 1]?.[column] : undefined;
}

function withEntry(entries: Entries, path: string, entry: Entry): Entries {
  const [key = '', row, column = ''] = path.split('.');
  if (row === undefined) return { ...entries, [key]: entry };
  const held = entries[key];
  const rows: EntryRow[] = isRows(held) ? [...held] : [];
  while (rows.length < Number(row)) rows.push({});
  rows[Number(row) - 1] = { ...rows[Number(row) - 1], [column]: entry };
  return { ...entries, [key]: rows };
}

/** The rows of a list; as many empty ones as it must have where it holds none. */
export function rowsAt(entries: Entries, field: RowsField): readonly EntryRow[] {
  const held = entries[field.key];
  if (isRows(held)) return held;
  return Array.from({ length: field.optional ? field.minRows : Math.max(1, field.minRows) }, () =>
    emptyRowEntries(field),
  );
}

/** What the boxes hold, for reading. An empty box is sent as empty: a default must not slip in behind it. */
export function rawOf({ entries, system }: Figures, fields: readonly Field[]): RawInputs {
  return Object.fromEntries(
    fields.map((f): [string, RawInputs[string]] => {
      const held = entries[f.key];
      if (f.kind !== 'rows') return [f.key, isRows(held) ? '' : (held?.text ?? '')];
      if (f.optional && !isRows(held)) return [f.key, f.default ? [] : undefined];
      return [f.key, rowsAt(entries, f).map((row) => rawRow(f, row, system))];
    }),
  );
}

function rawRow(field: RowsField, row: EntryRow, system: UnitSystem): RawInputs {
  return Object.fromEntries(
    field.columns.map((c) => {
      const entry = row[c.key];
      // All cells of a column are read in one unit; a bare number begun in the other system brings its own.
      const foreign = entry !== undefined && entry.unitIn !== system && isBare(entry.text);
      return [c.key, entry === undefined ? '' : foreign ? withUnit(c, entry) : entry.text];
    }),
  );
}

/** A number or fraction without a unit, whichever of its signs it is written with, or a sum of such. */
export function isBare(text: string): boolean {
  const plain = normalise(text).replace(/(\d)e(?=[+-]?\d)/i, '$1');
  return /\d/.test(plain) && /^[\d.,/\s+'’-]+$/.test(plain);
}

/** The text with the unit a bare number in it has, as a person would write it. */
export function withUnit(field: SingleField, { text, unitIn }: Entry): string {
  if (field.kind !== 'quantity' || !isBare(text)) return text.trim();
  const unit = unitLabel(pick(field.units, unitIn));
  return unit ? `${text.trim()} ${unit}` : text.trim();
}

/** Unit of a bare number for each quantity. */
export function unitsRead({ entries, system }: Figures, fields: readonly Field[]): Record<string, UnitKey> {
  const units: Record<string, UnitKey> = {};
  for (const field of fields) {
    if (field.kind === 'rows') {
      for (const c of field.columns) if (c.kind === 'quantity') units[c.key] = pick(c.units, system);
    } else if (field.kind === 'quantity') {
      units[field.key] = pick(field.units, entryAt(entries, field.key)?.unitIn ?? system);
    }
  }
  return units;
}

/** The system a box is read and shown in: its own once the reader's text stands in it, else the switch's. */
export function systemOf(now: Figures, path: string): UnitSystem {
  const entry = entryAt(now.entries, path);
  return entry?.from === 'own' && entry.text.trim() !== '' ? entry.unitIn : now.system;
}

/** Fields asked for now. */
export function askedOf(now: Figures, fields: readonly Field[]): readonly Field[] {
  return askedFields(fields, rawOf(now, fields));
}

export function hasOwn(entries: Entries): boolean {
  return Object.values(entries).some((held) =>
    (isRows(held) ? held.flatMap((row) => Object.values(row)) : [held]).some((e) => ownish.includes(e.from)),
  );
}

const ownish: readonly From[] = ['own', 'plate', 'carried'];
