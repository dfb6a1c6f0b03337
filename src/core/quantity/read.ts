/**
 * Reads what a person typed into a quantity in SI, in the dimension that was asked for.
 * Units may be typed; a bare number takes `unit`. Nothing is guessed silently.
 *
 * readQuantity('1-3/16 in', { dimension: 'length', unit: 'mm' })
 *   -> { ok: true, si: 0.0301625, unit: 'in', said: '1.1875 in = 30.1625 mm' }
 */
import { normalise, readNumber } from './number.ts';
import { unitAt } from './spelling.ts';
import { fromUnit, toUnit, unitLabel, unitOf, type Dimension, type UnitKey } from './units.ts';

export interface Wanted {
  readonly dimension: Dimension;
  /** Unit a bare number is in. */
  readonly unit: UnitKey;
}

export interface ReadFailure {
  readonly code: string;
  readonly data: Readonly<Record<string, string | number>>;
}

export type Read =
  | { readonly ok: true; readonly si: number; readonly unit: UnitKey; readonly said: string }
  | { readonly ok: false; readonly problem: ReadFailure }
  /** The text is a sum: read it with `readSum`, which loads the evaluator. */
  | { readonly ok: false; readonly sum: true };

export function readQuantity(typed: string, wanted: Wanted): Read {
  const text = normalise(typed);
  if (text === '') return fail('missing', typed);
  const simple = readParts(text, wanted);
  if (!simple.ok && 'problem' in simple && looksLikeSum(text)) return { ok: false, sum: true };
  return simple;
}

/** An operator between two things, or a bracket. A leading sign or "1-3/16" is not one. */
export function looksLikeSum(text: string): boolean {
  return /[(*×÷]|[\d.a-zµ°%"']\s*\+\s*[\d.(]|[\w"'%)]\s+[-/]\s+[\d.(]/i.test(text);
}

function readParts(text: string, wanted: Wanted): Read {
  const first = readOne(text, wanted);
  if (!first.ok) return first;
  let { si, rest, unit } = first;
  const negative = text.startsWith('-');
  while (rest !== '') {
    const next = readOne(rest, wanted);
    if (!next.ok) return fail('unknown-unit', rest);
    if (!next.typedUnit || !followsOn(unit, next.unit) || /^[+-]/.test(rest)) return fail('not-one-quantity', text);
    si += negative ? -next.si : next.si;
    ({ rest, unit } = next);
  }
  return { ok: true, si, unit: first.unit, said: say(si, first.unit, wanted.unit) };
}

/** "5 ft 3 in", "1 h 30 min": same dimension, no shifted zero, each unit smaller than the one before. */
export function followsOn(before: UnitKey, after: UnitKey): boolean {
  const [a, b] = [unitOf(before), unitOf(after)];
  return a.dimension === b.dimension && (a.dimension === 'length' || a.dimension === 'time') && b.si < a.si;
}

type One =
  { ok: true; si: number; unit: UnitKey; rest: string; typedUnit: boolean } | { ok: false; problem: ReadFailure };

function readOne(text: string, wanted: Wanted): One {
  const number = readNumber(text);
  if (!number.ok) return fail(number.code, text);
  const after = number.rest.trimStart();
  if (after === '')
    return { ok: true, si: fromUnit(number.value, wanted.unit), unit: wanted.unit, rest: '', typedUnit: false };
  const found = unitAt(after, wanted.dimension);
  if (!found) return fail('unknown-unit', after);
  const unit = unitOf(found.key);
  if (unit.dimension !== wanted.dimension)
    return fail('wrong-dimension', text, {
      unit: after.slice(0, found.length),
      is: unit.dimension,
      wanted: wanted.dimension,
    });
  return {
    ok: true,
    si: fromUnit(number.value, found.key),
    unit: found.key,
    rest: after.slice(found.length).trimStart(),
    typedUnit: true,
  };
}

function say(si: number, typed: UnitKey, shown: UnitKey): string {
  const one = (key: UnitKey) => `${Number(toUnit(si, key).toPrecision(8))} ${unitLabel(key)}`.trim();
  return typed === shown ? one(typed) : `${one(typed)} = ${one(shown)}`;
}

function fail(code: string, got: string, more: ReadFailure['data'] = {}): { ok: false; problem: ReadFailure } {
  return { ok: false, problem: { code, data: { got, ...more } } };
}
