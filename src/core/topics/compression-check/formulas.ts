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
