/**
 * What a calculator gives back. Either named values with their working and cautions,
 * or a list of problems a person can act on. Never an exception, never NaN.
 */
import type { WorkingStep } from './formula.ts';
import type { UnitKey } from '../quantity/units.ts';

interface Named {
  readonly key: string;
  readonly label: string;
  /** Source id of the constant the value leans on most, where it is not already in the working. */
  readonly source?: string;
  /** Shown first and large. */
  readonly main?: boolean;
  /** One plain sentence beside the value. */
  readonly note?: string;
}

export interface QuantityValue extends Named {
  readonly kind: 'quantity';
  /** SI. */
  readonly value: number;
  /** Range where the physics or the tolerance gives one, SI. */
  readonly low?: number;
  readonly high?: number;
  /** Shown in: [metric, inch]. */
  readonly units: readonly [UnitKey, UnitKey];
  readonly decimals?: readonly [number, number];
  /** Significant figures to show, where the sum is surer of its digits than the physics: 2 for a life in hours. */
  readonly figures?: number;
}

export interface NumberValue extends Named {
  /** Money is in currency units and already rounded to the cent. */
  readonly kind: 'number' | 'count' | 'money';
  readonly value: number;
  readonly low?: number;
  readonly high?: number;
  readonly decimals?: number;
}

/** A finding in words. The words stand in the topic's `words.ts`, found by `code`. */
export interface VerdictValue extends Named {
  readonly kind: 'verdict';
  readonly code: string;
  /** How it is marked: `good` and `note` are quiet, the rest are not. */
  readonly level: 'good' | 'note' | 'caution' | 'stop';
  readonly data?: Readonly<Record<string, number | string>>;
}

export interface TextValue extends Named {
  /** A name or designation, such as a tolerance zone. */
  readonly kind: 'text';
  readonly value: string;
}

export interface TableColumn {
  readonly key: string;
  readonly label: string;
  /** Present for quantities: cells are SI and shown in these units. */
  readonly units?: readonly [UnitKey, UnitKey];
  readonly money?: boolean;
  readonly decimals?: number | readonly [number, number];
}

export interface TableValue extends Named {
  readonly kind: 'table';
  readonly columns: readonly TableColumn[];
  readonly rows: readonly (readonly (number | string | null)[])[];
}

export type Value = QuantityValue | NumberValue | VerdictValue | TextValue | TableValue;

export type CautionLevel = 'danger' | 'warning' | 'caution' | 'notice';

export interface Caution {
  /** Id in content/hazards/. */
  readonly hazard: string;
  /** ANSI Z535 sense: danger, warning, caution for injury; notice for damage. */
  readonly level: CautionLevel;
}

export interface Problem {
  /** Field key; `lines.2.cost` for a cell in rows (counted from 1); '' when it is about the whole. */
  readonly field: string;
  readonly code: string;
  readonly data?: Readonly<Record<string, number | string>>;
  /** The typed text written again, once for each way it can be read: offered to the reader, one press each. */
  readonly readings?: readonly string[];
}

export interface Answer {
  readonly ok: true;
  readonly values: readonly Value[];
  readonly working: readonly WorkingStep[];
  readonly cautions: readonly Caution[];
}

export interface Refusal {
  readonly ok: false;
  readonly problems: readonly Problem[];
}

export type Result = Answer | Refusal;

/**
 * A refusal with one problem.
 * @param field key of the field, '' for the whole @param code found in the words @param data what the sentence needs [SI]
 * @returns the refusal
 */
export function refuse(field: string, code: string, data?: Problem['data']): Refusal {
  return { ok: false, problems: [data ? { field, code, data } : { field, code }] };
}

/** The value type of a kind; plain numbers, counts and money share one. */
export type ValueOfKind<K extends Value['kind']> = K extends NumberValue['kind']
  ? NumberValue
  : Extract<Value, { kind: K }>;

/** Finds a value by key; for tests and for drawings, which know what they asked for. */
export function valueOf<K extends Value['kind']>(answer: Answer, key: string, kind: K): ValueOfKind<K> {
  const found = answer.values.find((v) => v.key === key);
  if (found?.kind !== kind) throw new Error(`The answer has no ${kind} called "${key}".`);
  return found as ValueOfKind<K>;
}
