/**
 * What the reader has done to the boxes, as plain data. Three layers, the upper one winning:
 * `typed` (never rewritten), `base` (worked example, preset or link), the fields' own defaults.
 */
import type { Field, RawInputs, RawValue } from '../../../core/contract/field.ts';
import { pick, type UnitKey, type UnitSystem } from '../../../core/quantity/index.ts';
import { isBlank } from './shown-text.ts';

export interface Figures {
  readonly base: RawInputs;
  readonly baseIsExample: boolean;
  readonly typed: RawInputs;
  /** Unit system that stood beside the box when its text was begun. */
  readonly typedIn: Readonly<Record<string, UnitSystem>>;
  readonly system: UnitSystem;
  /** Boxes the reader has left after changing them; only these complain before the button is pressed. */
  readonly visited: ReadonlySet<string>;
  readonly pressed: boolean;
}

export type Change =
  | { readonly do: 'type'; readonly key: string; readonly value: RawValue }
  | { readonly do: 'leave'; readonly path: string }
  | { readonly do: 'units'; readonly system: UnitSystem }
  | { readonly do: 'press' }
  /** Everything is right again: later slips are only said where they happen. */
  | { readonly do: 'settle' }
  | { readonly do: 'start'; readonly base: RawInputs; readonly isExample: boolean };

export function startFigures(base: RawInputs, isExample: boolean, system: UnitSystem): Figures {
  return { base, baseIsExample: isExample, typed: {}, typedIn: {}, system, visited: new Set(), pressed: false };
}

export function changeFigures(now: Figures, change: Change): Figures {
  switch (change.do) {
    case 'type': {
      const begun = change.key in now.typed && !isBlank(now.typed[change.key]);
      const typedIn = begun ? now.typedIn : { ...now.typedIn, [change.key]: now.system };
      return { ...now, typed: { ...now.typed, [change.key]: change.value }, typedIn };
    }
    case 'leave': {
      const changed = (change.path.split('.')[0] ?? '') in now.typed;
      return changed && !now.visited.has(change.path)
        ? { ...now, visited: new Set([...now.visited, change.path]) }
        : now;
    }
    case 'units':
      return { ...now, system: change.system };
    case 'press':
      return { ...now, pressed: true };
    case 'settle':
      return now.pressed ? { ...now, pressed: false } : now;
    case 'start':
      return startFigures(change.base, change.isExample, now.system);
  }
}

export function rawOf(now: Figures): RawInputs {
  return { ...now.base, ...now.typed };
}

/** The system a box is read and shown in: its own once text stands in it, else the switch's. */
export function systemOf(now: Figures, key: string): UnitSystem {
  return key in now.typed && !isBlank(now.typed[key]) ? (now.typedIn[key] ?? now.system) : now.system;
}

/** Unit of a bare number for each quantity. Untouched figures were written for the metric unit, whatever is shown. */
export function unitsRead(now: Figures, fields: readonly Field[]): Record<string, UnitKey> {
  const units: Record<string, UnitKey> = {};
  for (const field of fields) {
    const system = field.key in now.typed ? systemOf(now, field.key) : 'metric';
    for (const f of field.kind === 'rows' ? field.columns : [field])
      if (f.kind === 'quantity') units[f.key] = pick(f.units, system);
  }
  return units;
}
