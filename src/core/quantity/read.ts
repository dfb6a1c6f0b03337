/**
 * Reads what a person typed into a quantity in SI, in the dimension that was asked for.
 * Units may be typed; a bare number takes `unit`. Nothing is guessed silently.
 */
import { normalise, readNumber } from './number.ts';
import { readRatio, readShare } from './ratio.ts';
import { sayQuantity } from './say.ts';
import { unitAt } from './spelling.ts';
import { fromUnit, unitOf, type Dimension, type UnitKey } from './units.ts';

export interface Wanted {
  readonly dimension: Dimension;
  /** Unit a bare number is in. */
  readonly unit: UnitKey;
  /** True for what the box takes [SI]; decides between two readings. Left out, everything fits. */
  readonly fits?: (si: number) => boolean;
}

export interface ReadFailure {
  readonly code: string;
  readonly data: Readonly<Record<string, string | number>>;
  /** The text written again, once for each way it can be read: to be offered, one press each. */
  readonly readings?: readonly string[];
}

export type Read =
  | {
      readonly ok: true;
      readonly si: number;
      readonly unit: UnitKey;
      /** What was read, in words: "1.1875 in = 30.1625 mm". */
      readonly said: string;
      /** The text could be read in more than one way, or holds a thousands mark: `said` must be shown. */
      readonly chosen?: true;
    }
  | { readonly ok: false; readonly problem: ReadFailure }
  /** The text is a sum: read it with `readSum`, which loads the evaluator. */
  | { readonly ok: false; readonly sum: true };

/**
 * One quantity from typed text: "25.4", "25,4 mm", "1-3/16 in", "5 ft 3 in", "9,500 rpm".
 * Where a comma can mean two things, the reading that fits the box is taken and marked `chosen`; where both fit,
 * or none, the text is refused with both `readings`.
 * @param typed the text @param wanted dimension, unit of a bare number and what fits
 * @returns the quantity [SI]; or the problem by its code; or word that it is a sum. Never throws.
 * Example: readQuantity('1-3/16 in', { dimension: 'length', unit: 'mm' }).said -> '1.1875 in = 30.1625 mm'.
 */
export function readQuantity(typed: string, wanted: Wanted): Read {
  const text = normalise(typed);
  if (text === '') return fail('missing', typed);
  if (wanted.unit === '1') {
    const ratio = readRatio(text);
    if (ratio) return { ok: true, si: ratio.value, unit: '1', said: ratio.said };
  }
  if (wanted.unit === '%') {
    const share = readShare(text);
    if (share !== undefined)
      return { ok: true, si: share, unit: '%', said: sayQuantity(share, '%', '%'), chosen: true };
  }
  const simple = readParts(text, wanted);
  if (simple.ok || 'sum' in simple) return simple;
  if (looksLikeSum(text)) return { ok: false, sum: true };
  return simple.problem.readings ? choose(text, simple.problem.readings, wanted) : simple;
}

/** Of the ways to read a text, the one that fits the box. */
function choose(text: string, readings: readonly string[], wanted: Wanted): Read {
  const reads = readings.map((r) => readParts(r, wanted));
  const unread = reads.find((r) => !r.ok);
  if (unread) return unread;
  const fitting = reads.filter((r) => r.ok && (wanted.fits?.(r.si) ?? true));
  const [only, second] = fitting;
  if (only?.ok && !second) return { ...only, chosen: true };
  const code = fitting.length === 0 ? 'no-reading-fits' : 'two-readings';
  return { ok: false, problem: { code, data: { got: text }, readings } };
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
  const read = { ok: true, si, unit: first.unit, said: sayQuantity(si, first.unit, wanted.unit) } as const;
  return first.grouped ? { ...read, chosen: true } : read;
}

/**
 * True where the second unit may follow the first in one measure: the same dimension, no shifted zero, and smaller.
 * Example: followsOn('ft', 'in') -> true. Example: followsOn('ft', 'ft') -> false.
 */
export function followsOn(before: UnitKey, after: UnitKey): boolean {
  const [a, b] = [unitOf(before), unitOf(after)];
  return a.dimension === b.dimension && (a.dimension === 'length' || a.dimension === 'time') && b.si < a.si;
}

type One =
  | { ok: true; si: number; unit: UnitKey; rest: string; typedUnit: boolean; grouped?: true }
  | { ok: false; problem: ReadFailure };

function readOne(text: string, wanted: Wanted): One {
  const number = readNumber(text);
  if (!number.ok) {
    const failed = fail(number.code, text);
    return 'readings' in number ? { ok: false, problem: { ...failed.problem, readings: number.readings } } : failed;
  }
  const grouped = number.grouped ? { grouped: true as const } : {};
  const after = number.rest.trimStart();
  if (after === '')
    return {
      ok: true,
      si: fromUnit(number.value, wanted.unit),
      unit: wanted.unit,
      rest: '',
      typedUnit: false,
      ...grouped,
    };
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
    ...grouped,
  };
}

function fail(code: string, got: string, more: ReadFailure['data'] = {}): { ok: false; problem: ReadFailure } {
  return { ok: false, problem: { code, data: { got, ...more } } };
}
