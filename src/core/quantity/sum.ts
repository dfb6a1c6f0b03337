/**
 * Reads sums such as "3/8 in + 0.002 in" or "2 * 25 mm". The text is split into quantities by our
 * own reader; mathjs sees only names and operators, never what was typed. This file is the only
 * door to mathjs in core, and it is loaded when someone first types a sum.
 */
import { addDependencies, create, divideDependencies, multiplyDependencies, parseDependencies, subtractDependencies, unaryMinusDependencies } from 'mathjs/number';
import type { MathNode, OperatorNode, ParenthesisNode, SymbolNode } from 'mathjs';
import { normalise, readNumber } from './number.ts';
import { readQuantity, type Read, type ReadFailure, type Wanted } from './read.ts';
import { unitAt } from './spelling.ts';
import { fromUnit, unitOf } from './units.ts';

// `create` with only what a sum needs: a named import of the evaluator would carry all of mathjs.
const needed = { addDependencies, subtractDependencies, multiplyDependencies, divideDependencies, unaryMinusDependencies, parseDependencies };
const { parse } = create(needed as Parameters<typeof create>[0]) as unknown as { parse: (text: string) => MathNode };

interface Term {
  readonly value: number;
  /** A number without a unit: a factor in a product, or in the asked-for unit when nothing has one. */
  readonly bare: boolean;
}

export function readSum(typed: string, wanted: Wanted): Read {
  const simple = readQuantity(typed, wanted);
  if (!('sum' in simple)) return simple;
  const text = normalise(typed);
  if ((unitOf(wanted.unit).zero ?? 0) !== 0) return fail('no-temperature-sum', text);

  const split = splitTerms(text, wanted);
  if ('problem' in split) return { ok: false, problem: split.problem };
  let tree: MathNode;
  try {
    tree = parse(split.expression);
  } catch {
    return fail('sum-not-readable', text);
  }
  const kind = kindOf(tree, split.terms);
  if (kind === 'mixed') return fail('unit-each', text);
  if (kind === 'not-linear') return fail('sum-wrong-dimension', text);
  const scope = Object.fromEntries(split.terms.map((t, i) => [`q${i}`, t.value]));
  const value = tree.evaluate(scope) as number;
  if (!Number.isFinite(value)) return fail('sum-not-readable', text);
  const si = kind === 'bare' ? fromUnit(value, wanted.unit) : value;
  return readBack(si, wanted);
}

function readBack(si: number, wanted: Wanted): Read {
  const shown = Number((si / unitOf(wanted.unit).si).toPrecision(8));
  return { ok: true, si, unit: wanted.unit, said: `${shown} ${wanted.unit}` };
}

function splitTerms(text: string, wanted: Wanted): { expression: string; terms: Term[] } | { problem: ReadFailure } {
  const terms: Term[] = [];
  let expression = '';
  let rest = text;
  while (rest !== '') {
    const operator = /^\s*([-+*/×÷()])\s*/.exec(rest);
    if (operator) {
      expression += { '×': '*', '÷': '/' }[operator[1] as string] ?? operator[1];
      rest = rest.slice(operator[0].length);
      continue;
    }
    const number = readNumber(rest);
    if (!number.ok) return { problem: { code: number.code === 'not-a-number' ? 'sum-not-readable' : number.code, data: { got: rest } } };
    const after = number.rest.trimStart();
    const unit = /^[-+*/×÷()]|^$/.test(after) ? undefined : unitAt(after, wanted.dimension);
    if (!unit && after !== '' && !/^[-+*/×÷()]/.test(after)) return { problem: { code: 'unknown-unit', data: { got: after } } };
    if (unit && unitOf(unit.key).dimension !== wanted.dimension)
      return { problem: { code: 'wrong-dimension', data: { got: rest, unit: after.slice(0, unit.length), is: unitOf(unit.key).dimension, wanted: wanted.dimension } } };
    expression += `q${terms.length}`;
    terms.push({ value: unit ? fromUnit(number.value, unit.key) : number.value, bare: !unit });
    rest = unit ? after.slice(unit.length) : after;
  }
  return { expression, terms };
}

/** What a piece of the sum is: a bare number, a quantity, an illegal mixture, or a product of two quantities. */
type Kind = 'bare' | 'quantity' | 'mixed' | 'not-linear';

function kindOf(node: MathNode, terms: readonly Term[]): Kind {
  if (node.type === 'ParenthesisNode') return kindOf((node as ParenthesisNode).content, terms);
  if (node.type === 'SymbolNode') return terms[Number((node as SymbolNode).name.slice(1))]?.bare ? 'bare' : 'quantity';
  if (node.type !== 'OperatorNode') return 'not-linear';
  const { args, op } = node as OperatorNode;
  const kinds = args.map((a) => kindOf(a, terms));
  const bad = kinds.find((k) => k === 'mixed' || k === 'not-linear');
  if (bad) return bad;
  if (kinds.length === 1) return kinds[0] as Kind;
  const [a, b] = kinds as [Kind, Kind];
  if (op === '+' || op === '-') return a === b ? a : 'mixed';
  if (op === '/' && b === 'quantity') return 'not-linear';
  if (a === 'quantity' && b === 'quantity') return 'not-linear';
  return a === 'quantity' || b === 'quantity' ? 'quantity' : 'bare';
}

function fail(code: string, got: string): Read {
  return { ok: false, problem: { code, data: { got } } };
}
