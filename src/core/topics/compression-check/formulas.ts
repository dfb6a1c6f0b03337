import type { Formula, SymbolSpec } from '../../contract/formula.ts';

const p = { name: 'air pressure here', unit: 'kPa' } as const;

function formula(
  id: string,
  what: string,
  expression: string,
  source: string,
  symbols: Readonly<Record<string, SymbolSpec>>,
): Formula {
  return { id: `compression-check/${id}`, what, expression, source, symbols };
}

export const air = formula('air', 'Air pressure at this height', 'p = p_0 * (1 - h / h_0)^5.25588', 'us-std-atm-1976', {
  p,
  p_0: { name: 'air pressure at sea level', unit: 'kPa' },
  h: { name: 'height', unit: 'm' },
  h_0: { name: '288.15 K over 0.0065 K for each meter', unit: 'm' },
});
export const expected = formula('expected', 'Healthy reading here', 'g_h = g_0 * p / p_0', 'gauge-altitude', {
  g_h: { name: 'healthy reading here', unit: 'bar' },
  g_0: { name: 'healthy reading at sea level', unit: 'bar' },
  p,
  p_0: { name: 'air pressure at sea level', unit: 'kPa' },
});
export const share = formula('share', 'Reading against that', 'k = g / g_h', 'arithmetic', {
  k: { name: 'share of a healthy reading', unit: '1' },
  g: { name: 'reading', unit: 'bar' },
  g_h: { name: 'healthy reading here', unit: 'bar' },
});
export const atSea = formula(
  'at-sea',
  'The reading as it would be at sea level',
  'g_s = g * p_0 / p',
  'gauge-altitude',
  {
    g_s: { name: 'reading at sea level', unit: 'bar' },
    g: { name: 'reading', unit: 'bar' },
    p_0: { name: 'air pressure at sea level', unit: 'kPa' },
    p,
  },
);
export const rise = formula('rise', 'Rise with oil in the cylinder', 'k_o = g_o / g - 1', 'arithmetic', {
  k_o: { name: 'rise', unit: '1' },
  g_o: { name: 'reading with oil', unit: 'bar' },
  g: { name: 'reading', unit: 'bar' },
});
const V_h = { name: 'swept volume', unit: 'cm3' } as const;
const V_c = { name: 'combustion chamber', unit: 'cm3' } as const;
const k_t = { name: 'share of the stroke behind the closed exhaust port', unit: '1' } as const;
const n_p = { name: 'exponent of the compression', unit: '1' } as const;
export const oilMost = formula('oil-most', 'Oil the test bears, at most', 'V_m = k_o * V_h', 'wet-test-model', {
  V_m: { name: 'oil, at most', unit: 'mL' },
  k_o: { name: 'share of the swept volume', unit: '1' },
  V_h,
});
export const chamber = formula(
  'chamber',
  'Combustion chamber from the dry reading',
  'V_c = k_t * V_h / (((g + p) / p)^(1 / n_p) - 1)',
  'wet-test-model',
  { V_c, k_t, V_h, g: { name: 'dry reading', unit: 'bar' }, p, n_p },
);
export const withOil = formula(
  'with-oil',
  'Reading if the oil only took up room',
  'g_w = p * ((k_t * V_h + V_c - V_o) / (V_c - V_o))^n_p - p',
  'wet-test-model',
  {
    g_w: { name: 'reading by the oil alone', unit: 'bar' },
    p,
    k_t,
    V_h,
    V_c,
    V_o: { name: 'oil put in', unit: 'mL' },
    n_p,
  },
);
export const beyond = formula('beyond', 'Rise beyond what oil can make', 'k_b = g_o / g_w - 1', 'arithmetic', {
  k_b: { name: 'rise beyond the oil', unit: '1' },
  g_o: { name: 'reading with oil', unit: 'bar' },
  g_w: { name: 'the most oil alone can make', unit: 'bar' },
});
const dg = { name: 'what the gauge lost', unit: 'kPa' } as const;
const t = { name: 'time watched', unit: 's' } as const;
export const tenth = formula('tenth', 'Time for a tenth, at that pace', 't_10 = 0.1 * g_p * t / dg', 'arithmetic', {
  t_10: { name: 'time for a tenth', unit: 's' },
  g_p: { name: 'pumped to', unit: 'kPa' },
  t,
  dg,
});
export const leakRate = formula('leak', 'Air lost', 'Q = V * dg / (p * t)', 'arithmetic', {
  Q: { name: 'air lost', unit: 'L/min' },
  V: { name: 'room under test', unit: 'cm3' },
  dg,
  p,
  t,
});
const D = { name: 'bore', unit: 'mm' } as const;
export const gapLeast = formula('gap-least', 'Least gap by the rule', 'g_l = 0.0035 * D', 'common-practice', {
  g_l: { name: 'least gap', unit: 'mm' },
  D,
});
export const gapMost = formula('gap-most', 'Most by the rule', 'g_m = 0.0045 * D', 'common-practice', {
  g_m: { name: 'most', unit: 'mm' },
  D,
});
export const gapWidest = formula(
  'gap-widest',
  'Widest that wear of the bore explains',
  'g_w = 0.0045 * D + pi * w',
  'army-tm-small-two-stroke',
  { g_w: { name: 'widest', unit: 'mm' }, D, w: { name: 'wear of the bore, at most', unit: 'mm' } },
);
