/**
 * A building block: one documented function of a topic, described so that it can be called
 * from the terminal (`calc bearing-fit/limits`) and audited alone.
 */
import { guarded } from './guarded.ts';
import type { Field, Inputs, InputsOf } from './field.ts';
import type { Problem, Result, Value } from './result.ts';
import type { UnitKey } from '../quantity/units.ts';

/** How one number a block gives is named and shown. Without units it is a pure number. */
export interface Gives {
  readonly label: string;
  readonly units?: readonly [UnitKey, UnitKey];
  readonly decimals?: readonly [number, number];
}

export interface Block {
  readonly what: string;
  readonly source: string;
  readonly fields: readonly Field[];
  readonly compute: (inputs: Inputs) => Result;
}

export type BlockOutcome<G extends string> =
  Readonly<Partial<Record<G, number | string>>> | { readonly problem: Problem };

interface BlockSpec<T extends readonly Field[], G extends string> {
  readonly what: string;
  readonly source: string;
  readonly fields: T;
  readonly gives: Readonly<Record<G, Gives>>;
  /** A key left out of the answer is simply not given (an undefined deviation, say). */
  readonly run: (inputs: InputsOf<T>) => BlockOutcome<NoInfer<G>>;
}

/** Makes a block from a plain function over SI numbers. */
export function block<const T extends readonly Field[], G extends string>(spec: BlockSpec<T, G>): Block {
  return {
    what: spec.what,
    source: spec.source,
    fields: spec.fields,
    compute: guarded(spec.fields, (inputs) => {
      const out = spec.run(inputs);
      if (isProblem(out)) return { ok: false, problems: [out.problem] };
      const keys = Object.keys(spec.gives) as G[];
      const values = keys
        .filter((k) => out[k] !== undefined)
        .map((k) => named(k, spec.gives[k], out[k] as number | string));
      return { ok: true, values, working: [], cautions: [] };
    }),
  };
}

function isProblem(out: object): out is { readonly problem: Problem } {
  return 'problem' in out && typeof out.problem === 'object';
}

function named(key: string, gives: Gives, value: number | string): Value {
  if (typeof value === 'string') return { kind: 'text', key, label: gives.label, value };
  if (!gives.units) return { kind: 'number', key, label: gives.label, value };
  const shown = { kind: 'quantity' as const, key, label: gives.label, value, units: gives.units };
  return gives.decimals ? { ...shown, decimals: gives.decimals } : shown;
}
