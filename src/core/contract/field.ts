/**
 * What a calculator asks for. One list of fields drives the form, the terminal,
 * the static example and the tests, so a field is described once and in full.
 * Defaults and limits are written in `units[0]` (the metric unit), because that
 * is how a person reads them; everything handed to `compute` is SI.
 */
import type { Dimension, UnitKey } from '../quantity/units.ts';

export interface Condition {
  /** The field is only asked for when this other field holds one of these values. */
  readonly field: string;
  readonly is: readonly (string | boolean)[];
}

interface Common {
  readonly key: string;
  /** Plain words; the unit is added by whoever shows it. */
  readonly label: string;
  readonly help?: string;
  /** Heading the field stands under in a form. Fields without one come first. */
  readonly group?: string;
  /** Seldom needed: shown under "More" and never in the short form. */
  readonly more?: boolean;
  readonly optional?: boolean;
  readonly when?: Condition;
  /**
   * Where the limits come from: a source id, or a few words such as "arithmetic".
   * Left out, they only catch a slip of the decimal point and say nothing about the trade.
   */
  readonly limitFrom?: string;
  /**
   * Why the default may stand in a verdict though nobody typed it, in a few words ("most saws' flanges are clean").
   * Left out, the default is an example until the reader confirms it.
   */
  readonly usual?: string;
  /** A reading somebody took. The example's goes with the first figure the reader enters, required or not. */
  readonly measured?: boolean;
}

export interface QuantityField extends Common {
  readonly kind: 'quantity';
  readonly dimension: Dimension;
  /** Unit meant by a bare number: [metric, inch]. */
  readonly units: readonly [UnitKey, UnitKey];
  readonly default?: number;
  readonly min?: number;
  readonly max?: number;
  /** True when `min` itself is refused (a diameter of exactly 0, say). */
  readonly above?: boolean;
}

export interface NumberField extends Common {
  /** `number`: any decimal without a unit. `count`: whole numbers. `money`: in the shop's currency, kept to the cent. */
  readonly kind: 'number' | 'count' | 'money';
  readonly default?: number;
  readonly min?: number;
  readonly max?: number;
  readonly above?: boolean;
  /**
   * For `number`: so many parts to one, such as fuel to oil. Read as well from "50:1", "1:50", "50 to 1" and "2 %",
   * whichever way round; a bare number stands as it is.
   */
  readonly partsToOne?: boolean;
}

export interface Option {
  readonly value: string;
  readonly label: string;
  readonly help?: string;
}

export interface ChoiceField extends Common {
  readonly kind: 'choice';
  readonly options: readonly Option[];
  readonly default?: string;
}

export interface YesNoField extends Common {
  readonly kind: 'yes-no';
  readonly default?: boolean;
}

export interface TextField extends Common {
  readonly kind: 'text';
  /** What is accepted, as a regular expression source, and the words that say so. */
  readonly pattern?: string;
  readonly patternSays?: string;
  readonly default?: string;
  readonly maxLength?: number;
  /**
   * The text is a day. It may be typed as the reader's language writes it; `compute` gets it as YYYY-MM-DD, and
   * only days that exist get there.
   */
  readonly day?: boolean;
}

export interface RowsField extends Common {
  /** A short table the reader fills in: quote lines, micrometer readings. */
  readonly kind: 'rows';
  readonly columns: readonly SingleField[];
  readonly minRows: number;
  readonly maxRows: number;
  readonly default?: readonly RawInputs[];
}

export type SingleField = QuantityField | NumberField | ChoiceField | YesNoField | TextField;
export type Field = SingleField | RowsField;

/** As typed or as written in JSON: text, a number in the field's unit, yes/no, or rows of those. */
export type RawValue = string | number | boolean | null | undefined | readonly RawInputs[];
export type RawInputs = Readonly<Record<string, RawValue>>;

/** As `compute` receives it: SI numbers, choices as their value, rows as lists. */
export type InputValue = number | string | boolean | undefined | readonly Inputs[];
export type Inputs = Readonly<Record<string, InputValue>>;

/**
 * Keeps literal keys so that `InputsOf` can name them; does nothing at run time.
 * @param fields the list @returns the same list
 */
export function defineFields<const T extends readonly Field[]>(fields: T): T {
  return fields;
}

type ValueOf<F> = F extends { kind: 'quantity' | 'number' | 'count' | 'money' }
  ? number
  : F extends { kind: 'choice'; options: readonly { value: infer V }[] }
    ? V
    : F extends { kind: 'yes-no' }
      ? boolean
      : F extends { kind: 'rows'; columns: infer C extends readonly Field[] }
        ? readonly InputsOf<C>[]
        : string;

type MayBeAbsent = { readonly optional: true } | { readonly when: Condition };

/** The typed inputs of a list of fields; optional and conditional ones may be undefined. */
export type InputsOf<T extends readonly Field[]> = {
  readonly [F in T[number] as F['key']]: F extends MayBeAbsent ? ValueOf<F> | undefined : ValueOf<F>;
};
