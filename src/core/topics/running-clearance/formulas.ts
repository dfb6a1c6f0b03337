import type { Formula, SymbolSpec } from '../../contract/formula.ts';

const um = (name: string): SymbolSpec => ({ name, unit: 'µm' });
const mm = (name: string): SymbolSpec => ({ name, unit: 'mm' });
const mpa = (name: string): SymbolSpec => ({ name, unit: 'MPa' });
const alpha = (name: string): SymbolSpec => ({ name, unit: 'µm/(m·K)' });
const E: SymbolSpec = { name: "Young's modulus of the ring", unit: 'GPa' };
const diff = (name: string): SymbolSpec => ({ name, unit: '°C diff' });
const source = 'shigley-press-fits';

export const innerRacewayGuess: Formula = {
  id: 'running-clearance/inner-raceway',
  what: 'Inner raceway, by rule of thumb',
  expression: 'F = (4 * d + D) / 5',
  symbols: { F: mm('inner raceway'), d: mm('bore'), D: mm('outside diameter') },
  source: 'raceway-rule',
};
export const outerRacewayGuess: Formula = {
  id: 'running-clearance/outer-raceway',
  what: 'Outer raceway, by rule of thumb',
  expression: 'G = (4 * D + d) / 5',
  symbols: { G: mm('outer raceway'), D: mm('outside diameter'), d: mm('bore') },
  source: 'raceway-rule',
};
export const innerLoss: Formula = {
  id: 'running-clearance/inner-loss',
  what: 'Inner raceway grows, tightest shaft',
  expression: 'u_i = 2 * p_i * d^2 * F / (E * (F^2 - d^2))',
  symbols: {
    u_i: um('clearance lost inside'),
    p_i: mpa('pressure on the shaft'),
    d: mm('bore'),
    F: mm('inner raceway'),
    E,
  },
  source,
};
export const warmFit: Formula = {
  id: 'running-clearance/warm-fit',
  what: 'Housing fit left when warm, tightest housing',
  expression: 'I_w = k * I_h - D * (alpha_h - alpha_r) * dT_h',
  symbols: {
    I_w: um('interference left'),
    k: { name: 'share that counts after smoothing', unit: '1' },
    I_h: um('interference at room temperature'),
    D: mm('outside diameter'),
    alpha_h: alpha('expansion of the housing'),
    alpha_r: alpha('expansion of the ring'),
    dT_h: diff('housing warmer by'),
  },
  source: 'arithmetic',
};
export const outerLoss: Formula = {
  id: 'running-clearance/outer-loss',
  what: 'Outer raceway shrinks, tightest housing',
  expression: 'u_o = 2 * p_o * D^2 * G / (E * (D^2 - G^2))',
  symbols: {
    u_o: um('clearance lost outside'),
    p_o: mpa('pressure in the housing'),
    D: mm('outside diameter'),
    G: mm('outer raceway'),
    E,
  },
  source,
};
export const warmthLoss: Formula = {
  id: 'running-clearance/heat-loss',
  what: 'Lost because the inner ring is warmer',
  expression: 'u_t = alpha_r * G * dT',
  symbols: {
    u_t: um('clearance lost to heat'),
    alpha_r: alpha('expansion of the ring'),
    G: mm('outer raceway'),
    dT: diff('inner warmer than outer by'),
  },
  source: 'arithmetic',
};
export const leastLeft: Formula = {
  id: 'running-clearance/least',
  what: 'Least clearance left',
  expression: 'c_min = c_l - u_i - u_o - u_t',
  symbols: {
    c_min: um('least clearance left (below zero: preload)'),
    c_l: um('least clearance of the group'),
    u_i: um('lost inside, tightest'),
    u_o: um('lost outside, tightest'),
    u_t: um('lost to heat'),
  },
  source: 'arithmetic',
};
export const mostLeft: Formula = {
  id: 'running-clearance/most',
  what: 'Most clearance left',
  expression: 'c_max = c_h - v_i - v_o - u_t',
  symbols: {
    c_max: um('most clearance left'),
    c_h: um('most clearance of the group'),
    v_i: um('lost inside, loosest'),
    v_o: um('lost outside, loosest'),
    u_t: um('lost to heat'),
  },
  source: 'arithmetic',
};
