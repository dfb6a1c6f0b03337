/** What every box needs to know and to say, handed down as one object. */
import type { ComponentType } from 'preact';
import { isPencil, type Entry } from '../../../core/contract/entry.ts';
import type { RawInputs, SingleField } from '../../../core/contract/field.ts';
import { pick, unitLabel, type UnitSystem } from '../../../core/quantity/index.ts';
import { entryAt, systemOf, type Figures } from './figures.ts';
import { shownText } from './shown-text.ts';

/** What may stand under a box: another way to get its figure. */
export interface UnderBoxProps {
  /** Id of the box. */
  readonly id: string;
  /** Puts text in the box, as if it had been typed. */
  readonly fill: (text: string) => void;
}

export type UnderBox = Readonly<Record<string, ComponentType<UnderBoxProps>>>;

export interface Form {
  readonly id: string;
  readonly figures: Figures;
  readonly raw: RawInputs;
  readonly currency: string;
  /** The sentence to show at a box, by path ("bore", "lines.2.price"). */
  readonly problemAt: Readonly<Record<string, string>>;
  /** Ways to read what stands in a box, where there are two; by path. */
  readonly readingsAt: Readonly<Record<string, readonly string[]>>;
  /** The figure of the machine on the bench where the reader has another, by field key. */
  readonly plateSaysAt: Readonly<Record<string, string>>;
  readonly said: Readonly<Record<string, string>>;
  /** Boxes where one of several readings was taken. */
  readonly chosen: readonly string[];
  /** `whole` when all of the old text was marked and written over. */
  readonly type: (path: string, text: string, whole?: boolean) => void;
  readonly addRow: (key: string) => void;
  readonly removeRow: (key: string, at: number) => void;
  readonly enter: (path: string) => void;
  readonly leave: (path: string) => void;
  /** By field key. */
  readonly underBox?: UnderBox | undefined;
}

/** The stable id of a box: "blade-speed-diameter", "repair-worth-lines-2-price". */
export function boxId(formId: string, path: string): string {
  return `${formId}-${path.replaceAll('.', '-')}`;
}

export function textIn(form: Form, field: SingleField, path: string = field.key): string {
  return shownText(field, entryAt(form.figures.entries, path), form.figures.system);
}

/** How a box is drawn: whose its figure is. */
export type Ink = 'pencil' | 'plate' | 'own';

export function inkOf(entry: Entry | undefined): Ink | undefined {
  if (!entry || entry.text.trim() === '') return undefined;
  if (isPencil(entry)) return 'pencil';
  return entry.from === 'own' ? 'own' : 'plate';
}

export function inkClass(form: Form, path: string): string {
  const ink = inkOf(entryAt(form.figures.entries, path));
  return ink ? ` calc-ink-${ink}` : '';
}

/** What is said back under a box: how a text was read that is more than a plain number, or could be read otherwise. */
export function saidAt(form: Form, field: SingleField, path: string = field.key): string | undefined {
  const entry = entryAt(form.figures.entries, path);
  if (entry?.from !== 'own') return undefined;
  const worth = form.chosen.includes(path) || (field.kind === 'quantity' && /[^\d.,\s-]/.test(entry.text));
  return worth ? form.said[path] : undefined;
}

/** Unit beside a box: the one a bare number in it is read in. */
export function unitBeside(field: SingleField, system: UnitSystem, currency: string): string {
  if (field.kind === 'money') return currency;
  return field.kind === 'quantity' ? unitLabel(pick(field.units, system)) : '';
}

export function unitOfBox(form: Form, field: SingleField, path: string = field.key): string {
  return unitBeside(field, systemOf(form.figures, path), form.currency);
}

/** True when the text brings its own unit, so that the one beside the box does not apply. */
export function bringsUnit(field: SingleField, text: string): boolean {
  return field.kind === 'quantity' && /[a-z°µμ%"'′″”]/i.test(text);
}

/** All that a box shows and says, as one text: the same as long as nothing about it has changed. */
export function shownAt(form: Form, path: string): string {
  return JSON.stringify([
    entryAt(form.figures.entries, path),
    form.figures.system,
    form.problemAt[path],
    form.readingsAt[path],
    form.plateSaysAt[path],
    form.said[path],
    form.chosen.includes(path),
  ]);
}
