/**
 * Reads sums such as "3/8 in + 0.002 in" or "2 * 25 mm". The text is split into quantities by our
 * own reader; mathjs sees only names and operators, never what was typed. This file is the only
 * door to mathjs in core, and it is loaded when someone first types a sum.
 */
import {
  addDependencies,
  create,
  divideDependencies,
  multiplyDependencies,
  parseDependencies,
  subtractDependencies,
  unaryMinusDependencies,
} from 'mathjs/number';
import type { MathNode, OperatorNode, ParenthesisNode, SymbolNode } from 'mathjs';
import { normalise, readNumber } from './number.ts';
import { sayQuantity } from './say.ts';
import { followsOn, readQuantity, type Read, type ReadFailure, type Wanted } from './read.ts';
import { unitAt } from './spelling.ts';
import { fromUnit, unitOf, type UnitKey } from './units.ts';

// `create` with only what a sum needs: a named import of the evaluator would carry all of mathjs.
const needed = {
  addDependencies,
  subtractDependencies,
  multiplyDependencies,
  divideDependencies,
  unaryMinusDependencies,
  parseDependencies,
};
const { parse } = create(needed as Parameters<typeof create>[0]) as unknown as { parse: (text: string) => MathNode };

interface Term {
  readonly value: number;
  /** A number without a unit: a factor in a product, or in the asked-for unit when nothing has one. */
  readonly bare: boolean;
}

/** Longer texts are no sum of shop figures; the bound keeps the parser's depth and time small. */
export const longestSum = 200;

/**
 * One quantity from typed text that may be a sum: + - * / × ÷ and brackets between quantities of the wanted
 * dimension and bare numbers. Bare numbers are factors; where nothing has a unit, the outcome is in `wanted.unit`.
 * @param typed at most `longestSum` signs @param wanted dimension and unit of a bare outcome
 * @returns the quantity [SI] and what it came to; or the problem by its code. Never throws.
 * Example: readSum('3/8 in + 0.002 in', { dimension: 'length', unit: 'mm' }).said -> '9.5758 mm'.
 */
export function readSum(typed: string, wanted: Wanted): Read {
  if (typed.length > longestSum)
    return { ok: false, problem: { code: 'too-long', data: { max: longestSum, got: typed.length } } };
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
  return { ok: true, si, unit: wanted.unit, said: sayQuantity(si, wanted.unit, wanted.unit) };
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
    let part = readPart(rest, wanted);
    if ('problem' in part) return part;
    const term = { value: part.value, bare: !part.unit };
    rest = part.rest;
    // "5 ft 3 in" is one quantity in a sum as well.
    while (part.unit && /^\s*\d/.test(rest)) {
      const before: UnitKey = part.unit;
      part = readPart(rest.trimStart(), wanted);
      if ('problem' in part) return part;
      if (!part.unit || !followsOn(before, part.unit))
        return { problem: { code: 'not-one-quantity', data: { got: text } } };
      term.value += part.value;
      rest = part.rest;
    }
    expression += `q${terms.length}`;
    terms.push(term);
  }
  return { expression, terms };
}

/** A number and its unit, if one follows. */
function readPart(
  text: string,
  wanted: Wanted,
): { value: number; unit?: UnitKey; rest: string } | { problem: ReadFailure } {
  const number = readNumber(text);
  if (!number.ok)
    return {
      problem: { code: number.code === 'not-a-number' ? 'sum-not-readable' : number.code, data: { got: text } },
    };
  const after = number.rest.trimStart();
  if (after === '' || /^[-+*/×÷()]/.test(after)) return { value: number.value, rest: after };
  const found = unitAt(after, wanted.dimension);
  if (!found) return { problem: { code: 'unknown-unit', data: { got: after } } };
  const is = unitOf(found.key).dimension;
  if (is !== wanted.dimension)
    return {
      problem: {
        code: 'wrong-dimension',
        data: { got: text, unit: after.slice(0, found.length), is, wanted: wanted.dimension },
      },
    };
  return { value: fromUnit(number.value, found.key), unit: found.key, rest: after.slice(found.length) };
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
