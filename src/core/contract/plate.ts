/** What a topic takes from a machine: which fact fills which box. The facts themselves stand in `core/machine`. */
import type { RawInputs, RawValue } from './field.ts';

/** A fact by its key; with `only`, where other facts of the machine are known to be so. */
export type PlateFact = string | { readonly fact: string; readonly only: Readonly<Record<string, string | boolean>> };

/** By the key of the field. */
export type PlateMap = Readonly<Record<string, PlateFact>>;

/** One box to fill, with the unit a bare number of its fact has. */
export interface Fill {
  readonly box: string;
  readonly fact: string;
  readonly only: Readonly<Record<string, string | boolean>>;
  readonly unit: string;
}

/** A machine's facts as written, by key. */
type Known = Readonly<Partial<Record<string, { readonly value: RawValue }>>>;

/**
 * The figures a machine has for one form. A bare number gets the unit of the fact: the box may read bare numbers in
 * another.
 * @param fills which fact fills which box; one with `only` is left out unless the machine's other facts are so
 * @param known the machine's facts, as written
 * @returns raw figures by the key of the box; boxes the machine knows nothing for are left out
 * Example: plateFigures([{ box: 'a', fact: 'b', only: {}, unit: 'mm' }], { b: { value: 350 } }) -> { a: '350 mm' }.
 * Source: arithmetic.
 */
export function plateFigures(fills: readonly Fill[], known: Known): RawInputs {
  return Object.fromEntries(
    fills.flatMap(({ box, fact, only, unit }) => {
      const holds = Object.entries(only).every(([key, is]) => known[key]?.value === is);
      const value = holds ? known[fact]?.value : undefined;
      return value === undefined ? [] : [[box, withUnit(value, unit)] as const];
    }),
  );
}

function withUnit(value: RawValue, unit: string): RawValue {
  const bare = typeof value === 'number' || (typeof value === 'string' && /^\s*[\d.,/\s-]+$/.test(value));
  return bare && unit !== '' ? `${String(value).trim()} ${unit}` : value;
}
