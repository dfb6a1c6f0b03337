/**
 * A published check case: what to call, what to put in, what the outside source says comes out.
 * Inputs are raw, as at the terminal: numbers in the metric unit, or text with a unit.
 * Expected values are in the metric unit of the output unless `unit` says otherwise.
 */
import type { RawInputs } from '../../src/core/contract/field.ts';
import type { UnitKey } from '../../src/core/quantity/index.ts';

export interface Expected {
  readonly value: number | string;
  readonly unit?: UnitKey;
  /** Allowed difference; one of the two, with its reason in the case's `why`. Text and exact tables need neither. */
  readonly abs?: number;
  readonly rel?: number;
}

export interface PublishedCase {
  readonly id: string;
  /** `topic` or `topic/block`. */
  readonly call: string;
  readonly inputs: RawInputs;
  readonly expected?: Readonly<Record<string, Expected>>;
  /** Problem code the source's own words imply: an undefined zone, say. */
  readonly problem?: string;
  /** Work, edition, table or example number. */
  readonly source: string;
  /** published: read in the source. derived: arithmetic on published figures. memory: not seen, said so. */
  readonly basis: 'published' | 'derived' | 'memory';
  /** Why the tolerance is what it is. */
  readonly why: string;
}

export interface CaseFile {
  /** How many cases this file must hold; raising it is part of adding one. */
  readonly count: number;
  readonly cases: readonly PublishedCase[];
}
