/** What every box needs to know and to say, handed down as one object. */
import type { ComponentType } from 'preact';
import type { RawInputs, RawValue, SingleField } from '../../../core/contract/field.ts';
import { pick, unitLabel, type UnitSystem } from '../../../core/quantity/index.ts';
import { systemOf, type Figures } from './figures.ts';
import { untouchedText } from './shown-text.ts';

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
  readonly said: Readonly<Record<string, string>>;
  readonly type: (key: string, value: RawValue) => void;
  readonly enter: (path: string) => void;
  readonly leave: (path: string) => void;
  /** By field key. */
  readonly underBox?: UnderBox | undefined;
}

/** The stable id of a box: "blade-speed-diameter", "repair-worth-lines-2-price". */
export function boxId(formId: string, path: string): string {
  return `${formId}-${path.replaceAll('.', '-')}`;
}

export function textIn(form: Form, field: SingleField): string {
  const { typed, base, system } = form.figures;
  return field.key in typed ? String(typed[field.key] ?? '') : untouchedText(field, base[field.key], system);
}

/** Unit beside a box: the one a bare number in it is read in. */
export function unitBeside(field: SingleField, system: UnitSystem, currency: string): string {
  if (field.kind === 'money') return currency;
  return field.kind === 'quantity' ? unitLabel(pick(field.units, system)) : '';
}

export function unitOfBox(form: Form, field: SingleField): string {
  return unitBeside(field, systemOf(form.figures, field.key), form.currency);
}

/** True when the text brings its own unit, so that the one beside the box does not apply. */
export function bringsUnit(field: SingleField, text: string): boolean {
  return field.kind === 'quantity' && /[a-z°µμ%"'′″”]/i.test(text);
}
