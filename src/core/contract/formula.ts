/**
 * Formulas as text that mathjs can evaluate. The formula shown on a page is the
 * formula tests evaluate, units included, against what core computed.
 *
 * Rules for `expression`: "symbol = right-hand side" in mathjs syntax; symbols are
 * letters, digits and one underscore for a subscript (`T_0`, `d_small`, `theta_s`;
 * Greek letters by name); every symbol is listed in `symbols`. Angles are in rad,
 * rotational speed is in 1/s, temperature differences are in K.
 */
import { toUnit, type UnitKey } from '../quantity/units.ts';

export interface SymbolSpec {
  /** What the symbol stands for, in words. */
  readonly name: string;
  /** Unit it is shown in, in the working. `'1'` for a pure number. */
  readonly unit: UnitKey;
  readonly decimals?: number;
}

export interface Formula {
  readonly id: string;
  /** The step in words: "Surface speed at the rim". */
  readonly what: string;
  readonly expression: string;
  readonly symbols: Readonly<Record<string, SymbolSpec>>;
  /** Source id, as in content/sources/. */
  readonly source: string;
}

export interface PutIn {
  readonly symbol: string;
  readonly name: string;
  /** In `unit`. */
  readonly value: number;
  readonly unit: UnitKey;
}

export interface WorkingStep {
  readonly formula: string;
  readonly what: string;
  readonly expression: string;
  readonly put: readonly PutIn[];
  readonly gave: PutIn;
  readonly source: string;
}

/**
 * The symbol a formula gives, left of its sign of equality. Example: resultSymbol({ expression: 'v = pi * D * n'
 * }) -> 'v'.
 */
export function resultSymbol(formula: Formula): string {
  return formula.expression.slice(0, formula.expression.indexOf('=')).trim();
}

/**
 * One line of working: the formula, the SI numbers put in, the SI number that came out.
 * `gave` must be computed by the caller, never by evaluating the text, or the check proves nothing.
 */
export function step(formula: Formula, put: Readonly<Record<string, number>>, gave: number): WorkingStep {
  const name = resultSymbol(formula);
  const show = (symbol: string, si: number): PutIn => {
    const spec = formula.symbols[symbol];
    if (!spec) throw new Error(`Formula ${formula.id} does not list the symbol ${symbol}.`);
    return { symbol, name: spec.name, value: toUnit(si, spec.unit), unit: spec.unit };
  };
  return {
    formula: formula.id,
    what: formula.what,
    expression: formula.expression,
    put: Object.entries(put).map(([symbol, si]) => show(symbol, si)),
    gave: show(name, gave),
    source: formula.source,
  };
}
