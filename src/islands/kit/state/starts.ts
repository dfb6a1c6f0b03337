/** What the boxes start from: the worked example, an article's own figures, or nothing; and what an own figure leaves of it. */
import { textOf } from '../../../core/contract/text-of.ts';
import {
  isRows,
  type Entries,
  type Entry,
  type EntryRow,
  type From,
  type Held,
  type Of,
} from '../../../core/contract/entry.ts';
import { askedFields } from '../../../core/contract/asked.ts';
import type { Field, RawInputs, RawValue, RowsField, SingleField } from '../../../core/contract/field.ts';

/** Text of a figure written as at the terminal. */
function typedText(raw: RawValue): string {
  if (raw === true) return 'yes';
  if (raw === false) return 'no';
  return raw === undefined || raw === null ? '' : textOf(raw, Infinity);
}

function entryOf(raw: RawValue, from: From, of?: Of): Entry {
  return { text: typedText(raw), from, unitIn: 'metric', ...(of ? { of } : {}) };
}

function rowsOf(field: RowsField, raw: RawValue, from: From, of?: Of): readonly EntryRow[] {
  if (!Array.isArray(raw)) return [];
  return (raw as readonly RawInputs[]).map((row) =>
    Object.fromEntries(
      field.columns.flatMap((c) => {
        const given = row[c.key] ?? undefined;
        if (given !== undefined) return [[c.key, entryOf(given, from, of)]];
        const standing = defaultOf(c);
        return standing ? [[c.key, standing]] : [];
      }),
    ),
  );
}

/** The field's own default as it stands in an untouched box: usual where the field says why, else an example. */
function defaultOf(field: SingleField): Entry | undefined {
  return field.default === undefined ? undefined : entryOf(field.default, field.usual ? 'usual' : 'example');
}

/** True for boxes that keep their default when the others are empty: choices, seldom-needed ones, and usual figures. */
function standsByItself(field: SingleField): boolean {
  return field.kind === 'choice' || field.kind === 'yes-no' || field.more === true || field.usual !== undefined;
}

/** A default that the reader may take over as it stands, without typing it again. A shown figure is typed. */
export function mayBeConfirmed(field: Field): boolean {
  return field.kind !== 'rows' && (field.kind === 'choice' || field.kind === 'yes-no' || field.more === true);
}

export function emptyRowEntries(field: RowsField, above?: EntryRow): EntryRow {
  return Object.fromEntries(
    field.columns.flatMap((c) => {
      // A choice that held for the row above most likely holds for the next one; a figure does not.
      const choice = c.kind === 'choice' || c.kind === 'yes-no';
      const entry = choice ? (above?.[c.key] ?? defaultOf(c)) : undefined;
      return entry ? [[c.key, entry]] : [];
    }),
  );
}

/** No figures: what stands by itself keeps its default, all else is empty. */
export function blankEntries(fields: readonly Field[]): Entries {
  return Object.fromEntries(
    fields.flatMap((f): readonly (readonly [string, Held])[] => {
      if (f.kind === 'rows') return f.optional ? [] : [[f.key, startRows(f)]];
      const entry = standsByItself(f) ? defaultOf(f) : undefined;
      return entry ? [[f.key, entry]] : [];
    }),
  );
}

function startRows(field: RowsField): readonly EntryRow[] {
  return Array.from({ length: Math.max(1, field.minRows) }, () => emptyRowEntries(field));
}

/** Figures laid over a start, all of one origin. */
export function laidOver(fields: readonly Field[], start: Entries, figures: RawInputs, from: From, of?: Of): Entries {
  const entries: Record<string, Held> = { ...start };
  for (const f of fields) {
    const raw = figures[f.key];
    if (raw === undefined || raw === null) continue;
    entries[f.key] = f.kind === 'rows' ? rowsOf(f, raw, from, of) : entryOf(raw, from, of);
  }
  return entries;
}

/** The worked example, complete: where it is silent the fields' defaults are part of it. */
export function exampleEntries(fields: readonly Field[], example: RawInputs): Entries {
  const defaults: Record<string, Held> = {};
  for (const f of fields) {
    if (f.kind === 'rows') {
      if (f.default) defaults[f.key] = rowsOf(f, f.default, 'example');
      continue;
    }
    const entry = defaultOf(f);
    if (entry) defaults[f.key] = entry;
  }
  return laidOver(fields, defaults, example, 'example');
}

/** An article's own figures on empty boxes: nothing of the example. */
export function pageEntries(fields: readonly Field[], preset: RawInputs): Entries {
  return laidOver(fields, blankEntries(fields), preset, 'page');
}

/**
 * What the first own figure leaves of the example. Optional, folded and measured figures go, and choices go back to
 * their default, which takes the boxes they open with them; what must be filled in stays, in pencil, so that the form
 * is not torn apart under the hand. The box being written and the choices that opened it stay as they are.
 */
export function afterOwnAct(fields: readonly Field[], entries: Entries, path: string): Entries {
  const at = path.split('.')[0] ?? '';
  const kept = new Set<string>();
  for (let key: string | undefined = at; key !== undefined && !kept.has(key);) {
    kept.add(key);
    key = fields.find((f) => f.key === key)?.when?.field;
  }
  const next: Record<string, Held> = { ...entries };
  const drop = (which: (f: Field) => boolean) => {
    for (const f of fields) {
      const held = next[f.key];
      if (held === undefined || kept.has(f.key) || !isExample(held) || !which(f)) continue;
      const standing = f.kind !== 'rows' && standsByItself(f) ? defaultOf(f) : undefined;
      if (standing) next[f.key] = standing;
      else delete next[f.key];
    }
  };
  drop(goes);
  const asked = new Set(askedFields(fields, plainTexts(next)).map((f) => f.key));
  // What no box asks for now must not come out of its drawer later as if it had been measured.
  drop((f) => !asked.has(f.key));
  return next;
}

/** The texts of single boxes: all that a condition looks at. */
function plainTexts(entries: Entries): RawInputs {
  return Object.fromEntries(Object.entries(entries).flatMap(([key, held]) => (isRows(held) ? [] : [[key, held.text]])));
}

function isExample(held: Held): boolean {
  return isRows(held)
    ? held.every((row) => Object.values(row).every((e) => e.from === 'example'))
    : held.from === 'example';
}

function goes(field: Field): boolean {
  if (field.optional || field.more || field.measured) return true;
  return (field.kind === 'choice' || field.kind === 'yes-no') && field.default !== undefined;
}
