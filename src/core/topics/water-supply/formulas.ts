import type { Formula, SymbolSpec } from '../../contract/formula.ts';

const source = 'water-cut-arithmetic';
const length = (name: string): SymbolSpec => ({ name, unit: 'm' });
const millimeters = (name: string): SymbolSpec => ({ name, unit: 'mm' });
const liters = (name: string): SymbolSpec => ({ name, unit: 'L' });
const minutes = (name: string): SymbolSpec => ({ name, unit: 'min' });

function formula(id: string, what: string, expression: string, symbols: Readonly<Record<string, SymbolSpec>>): Formula {
  return { id: `water-supply/${id}`, what, expression, symbols, source };
}

const l = length('length of cut');
const d = millimeters('depth');
const n = { name: 'passes', unit: '1' } as const;
const t = minutes('cutting time');
const r = { name: 'area cut in a time', unit: 'm2/h' } as const;
const q = { name: 'flow', unit: 'L/min' } as const;
const V_w = liters('water');
const V_s = liters('stone');
const e = { name: 'share lost', unit: '%' } as const;

export const passCount = formula('passes', 'Passes, each no deeper than the step', 'n = ceil(d / s)', {
  n,
  d,
  s: millimeters('depth of a pass'),
});
export const feedTime = formula('feed-time', 'Cutting time', 't = n * l / v', {
  t,
  n,
  l,
  v: { name: 'forward pace', unit: 'm/min' },
});
export const timedRate = formula('timed-rate', 'Area cut in a time, from the cut you timed', 'r = l_1 * d_1 / t_1', {
  r,
  l_1: length('timed length'),
  d_1: millimeters('timed depth'),
  t_1: minutes('timed'),
});
export const rateTime = formula('rate-time', 'Cutting time', 't = l * d / r', { t, l, d, r });
export const jugFlow = formula('jug-flow', 'Flow, by jug and watch', 'q = V_j / t_j', {
  q,
  V_j: liters('water in the jug'),
  t_j: { name: 'time it took', unit: 's' },
});
export const waterUsed = formula('water', 'Water', 'V_w = q * t', { V_w, q, t });
export const fills = formula('fills', 'Fills, rounded up', 'f = ceil(V_w / V_t)', {
  f: { name: 'fills', unit: '1' },
  V_w,
  V_t: liters('bottle or tank'),
});
export const fillLasts = formula('fill-lasts', 'A fill lasts', 't_f = V_t / q', {
  t_f: minutes('a fill lasts'),
  V_t: liters('bottle or tank'),
  q,
});
export const stone = formula('stone', 'Stone ground out', 'V_s = l * d * w', {
  V_s,
  l,
  d,
  w: millimeters('blade width'),
});
export const slurryMade = formula('slurry', 'Slurry', 'V = V_w + V_s', { V: liters('slurry'), V_w, V_s });
export const toCollect = formula('collect', 'Slurry to take up', 'V_c = V_w * (1 - e) + V_s', {
  V_c: liters('to take up'),
  V_w,
  e,
  V_s,
});
export const weight = formula('weight', 'It weighs', 'm = V_w * (1 - e) * rho_w + V_s * rho', {
  m: { name: 'weight', unit: 'kg' },
  V_w,
  e,
  rho_w: { name: 'density of water', unit: 'kg/m3' },
  V_s,
  rho: { name: 'density of the stone', unit: 'kg/m3' },
});
