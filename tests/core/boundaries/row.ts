/** One threshold of one verdict, tried just below, at and just above. */
import type { RawInputs, RawValue } from '../../../src/core/contract/field.ts';

export interface Row {
  /** What the threshold is and where its figure comes from, in words. */
  readonly why: string;
  /** Key of the verdict value. */
  readonly verdict: string;
  /** A whole set of inputs, far from the demonstration where that is possible. */
  readonly inputs: RawInputs;
  /** The field that is moved, `rows.1.cell` for a cell. */
  readonly moves: string;
  /** Its figure at the threshold, in the metric unit, worked out by hand from the rule in `why`. */
  readonly at: number;
  /** How far is "just", as a share of `at`; a millionth if not given. 1 moves a count by one whole. */
  readonly by?: number;
  /** Code below, at and above; undefined where the verdict is not given at all. */
  readonly gives: readonly [string | undefined, string | undefined, string | undefined];
}

export interface Boundaries {
  readonly rows: readonly Row[];
  /** Verdicts that hang on no figure's threshold, and what they hang on. */
  readonly noThreshold?: Readonly<Record<string, string>>;
}

/** `inputs` with one figure set, also inside rows. */
export function withFigure(inputs: RawInputs, path: string, value: RawValue): RawInputs {
  const [key = '', row, cell = ''] = path.split('.');
  if (row === undefined) return { ...inputs, [key]: value };
  const rows = inputs[key] as readonly RawInputs[];
  return { ...inputs, [key]: rows.map((r, i) => (i === Number(row) - 1 ? { ...r, [cell]: value } : r)) };
}
