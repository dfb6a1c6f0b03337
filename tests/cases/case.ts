/**
 * A check case: what to call, what to put in, what comes out according to somebody outside this project.
 * Inputs are raw, as at the terminal: numbers in the metric unit, or text with a unit.
 * Expected values are in the metric unit of the output unless `unit` says otherwise.
 *
 * The folder says where the figures come from:
 * - `tests/published/`: read in print or in law, as it stands there;
 * - `tests/derived/`: worked out from a published rule or figure; the script of the topic beside them does it again;
 * - `tests/memory/`: a figure of a published work that nobody here has seen, to be looked up.
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

export interface Case {
  readonly id: string;
  /** `topic` or `topic/block`. */
  readonly call: string;
  readonly inputs: RawInputs;
  readonly expected?: Readonly<Record<string, Expected>>;
  /** Problem code the source's own words imply: an undefined zone, say. */
  readonly problem?: string;
  /** Id of a source in content/knowledge/sources/. */
  readonly source: string;
  /** Where in it: edition, table or example number, and what was done with the figures. */
  readonly where: string;
  /** Why the tolerance is what it is. */
  readonly why: string;
}

export interface CaseFile {
  /** How many cases this file must hold; raising it is part of adding one. */
  readonly count: number;
  readonly cases: readonly Case[];
}
