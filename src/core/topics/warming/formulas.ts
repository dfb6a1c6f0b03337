import type { Formula, SymbolSpec } from '../../contract/formula.ts';

const um = (name: string): SymbolSpec => ({ name, unit: 'µm' });
const diff = (name: string): SymbolSpec => ({ name, unit: '°C diff' });
const d: SymbolSpec = { name: 'diameter of the seat', unit: 'mm' };
const alpha = (name: string): SymbolSpec => ({ name, unit: 'µm/(m·K)' });
const pair = { I: um('tightest interference'), c: um('gap to drop in with'), d };

export const riseNeeded: Formula = {
  id: 'warming/rise',
  what: 'Temperature rise of the outer part',
  expression: 'dT = (I + c) / (alpha_o * d)',
  symbols: { dT: diff('rise over the room'), ...pair, alpha_o: alpha('expansion of the outer part') },
  source: 'boresi-schmidt',
};
export const dropNeeded: Formula = {
  id: 'warming/drop',
  what: 'Temperature drop of the inner part, if only that is chilled',
  expression: 'dT_c = (I + c) / (alpha_i * d)',
  symbols: { dT_c: diff('drop below the room'), ...pair, alpha_i: alpha('expansion of the inner part') },
  source: 'boresi-schmidt',
};
export const shrinkOfInner: Formula = {
  id: 'warming/shrink',
  what: 'What the chilled inner part gives',
  expression: 'u_i = alpha_i * d * dT_i',
  symbols: {
    u_i: um('shrink of the inner part'),
    alpha_i: alpha('expansion of the inner part'),
    d,
    dT_i: diff('chilled below the room by'),
  },
  source: 'arithmetic',
};
export const riseWithCold: Formula = {
  id: 'warming/both',
  what: 'Temperature rise left for the outer part when both are done',
  expression: 'dT_b = (I + c - u_i) / (alpha_o * d)',
  symbols: {
    dT_b: diff('rise over the room'),
    ...pair,
    u_i: um('shrink of the inner part'),
    alpha_o: alpha('expansion of the outer part'),
  },
  source: 'arithmetic',
};
export const gapAtHeat: Formula = {
  id: 'warming/gap',
  what: 'Gap at the temperature warmed to',
  expression: 'g = alpha_o * d * dT_h - I',
  symbols: {
    g: um('gap (below zero: still tight)'),
    alpha_o: alpha('expansion of the outer part'),
    d,
    dT_h: diff('warmed over the room by'),
    I: um('tightest interference'),
  },
  source: 'arithmetic',
};
export const closingRise: Formula = {
  id: 'warming/closing',
  what: 'Rise at which the gap has closed',
  expression: 'dT_z = I / (alpha_o * d)',
  symbols: {
    dT_z: diff('rise with no gap left'),
    I: um('tightest interference'),
    alpha_o: alpha('expansion of the outer part'),
    d,
  },
  source: 'arithmetic',
};
export const openTime: Formula = {
  id: 'warming/open-time',
  what: 'Time until it has closed in still air',
  expression: 't = rho * c_p * w / 2 / h * log(dT_h / dT_z)',
  symbols: {
    t: { name: 'time open', unit: 's' },
    rho: { name: 'density', unit: 'kg/m3' },
    c_p: { name: 'specific heat', unit: 'J/(kg·K)' },
    w: { name: 'wall thickness', unit: 'mm' },
    h: { name: 'heat transfer to the air', unit: 'W/(m2·K)' },
    dT_h: diff('warmed over the room by'),
    dT_z: diff('rise with no gap left'),
  },
  source: 'lumped-cooling',
};
