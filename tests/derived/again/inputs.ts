/**
 * The inputs of a case as the sums of this folder take them: figures in the metric unit of their box, words as they stand.
 * A small reader of its own, so that nothing of the core takes part.
 */
type Single = number | string | boolean;
export type Cell = Single | readonly Readonly<Record<string, Single>>[];
export type Inputs = Readonly<Record<string, Cell>>;

/** What a sum gives, in the metric unit of each output; a word where the case expects one. */
export type Sum = (i: Inputs) => Readonly<Record<string, number | string | undefined>>;
export type Sums = Readonly<Record<string, Sum>>;

/** A figure of the case; the fallback where it is left out. */
export function n(i: Inputs, key: string, otherwise = NaN): number {
  const value = i[key];
  return typeof value === 'number' ? value : otherwise;
}

/** A word of the case; empty where it is left out. */
export function text(i: Inputs, key: string): string {
  const value = i[key];
  return typeof value === 'string' ? value : '';
}

export function rows(i: Inputs, key: string): readonly Inputs[] {
  const value = i[key];
  return typeof value === 'object' ? value : [];
}

const lbf = 0.45359237 * 9.80665;
/** What one of a typed unit is in the metric unit of its box; exact by definition (NIST SP 811, appendix B). */
const inMetric: Readonly<Record<string, number>> = {
  ...{ mm: 1, cm: 10, m: 1, in: 25.4, ft: 0.3048 },
  ...{ L: 1, gal: 3.785411784, mL: 1, cm3: 1 },
  ...{ rpm: 1, Hz: 1, '°': 1, 'm/s': 1, 'ft/min': 0.00508 },
  ...{ N: 1, kN: 1, lbf, hp: 0.74569987158227022, 'g/m': 0.001 },
  // Bar, kPa and MPa stay as typed, as their boxes have them; psi is taken in kPa.
  ...{ MPa: 1, bar: 1, kPa: 1, psi: lbf / 0.0254 ** 2 / 1000, s: 1, min: 60 },
};
/** What one metric unit is in the unit a case expects. */
const fromMetric: Readonly<Record<string, number>> = {
  ...{
    'm/s': 1,
    'ft/min': 60 / 0.3048,
    in: 1 / 25.4,
    cm: 0.1,
    'fl oz': 1 / 29.5735295625,
    lbf: 1 / lbf,
    'lbf·ft': 1 / (lbf * 0.3048),
    rad: Math.PI / 180,
  },
  ...{ psi: 1000 / (lbf / 0.0254 ** 2) },
};

/** "4 1/2 in" -> 114.3; a word stays a word. */
export function read(typed: unknown): Cell {
  if (typeof typed === 'number' || typeof typed === 'boolean') return typed;
  if (Array.isArray(typed))
    return typed.map((row) => readAll(row as Readonly<Record<string, unknown>>) as Readonly<Record<string, Single>>);
  const text = String(typed);
  const parts = /^([\d.]+)(?: (\d+)\/(\d+))? ?(\D\S*)$/.exec(text);
  const unit = inMetric[parts?.[4] ?? ''];
  if (!parts || unit === undefined) return text;
  return (Number(parts[1]) + (parts[2] ? Number(parts[2]) / Number(parts[3]) : 0)) * unit;
}

export function readAll(raw: Readonly<Record<string, unknown>>): Inputs {
  return Object.fromEntries(Object.entries(raw).map(([key, value]) => [key, read(value)]));
}

/** Factor from the metric unit of an output to the one a case expects. */
export function outIn(unit: string | undefined): number {
  return unit === undefined ? 1 : (fromMetric[unit] ?? NaN);
}

/** Where a function crosses nothing between two ends, by halving. */
export function root(f: (x: number) => number, low: number, high: number): number {
  let [a, b] = [low, high];
  const side = Math.sign(f(a));
  for (let k = 0; k < 200; k++) {
    const middle = (a + b) / 2;
    if (Math.sign(f(middle)) === side) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
}

/** Area under a curve, by Simpson's rule. */
export function area(f: (x: number) => number, from: number, to: number, pieces = 2000): number {
  const h = (to - from) / pieces;
  let sum = f(from) + f(to);
  for (let k = 1; k < pieces; k++) sum += (k % 2 ? 4 : 2) * f(from + k * h);
  return (sum * h) / 3;
}
