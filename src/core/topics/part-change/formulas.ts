import type { Formula, SymbolSpec } from '../../contract/formula.ts';

const money = (name: string): SymbolSpec => ({ name, unit: '1', decimals: 2 });
const hours = (name: string): SymbolSpec => ({ name, unit: 'h' });
const share = (name: string): SymbolSpec => ({ name, unit: '%' });
const b: SymbolSpec = { name: 'Weibull shape', unit: '1' };
const eta = hours('hours by which 63 % have failed');
const H = hours('hours it must last');

export const scaleFromMean: Formula = {
  id: 'part-change/scale',
  what: 'Hours by which 63 % of such parts have failed',
  expression: 'eta = m / gamma(1 + 1 / b)',
  symbols: { eta, m: hours('mean life'), b },
  source: 'weibull-conditional',
};
export const reopening: Formula = {
  id: 'part-change/reopening',
  what: 'Cost of opening the machine again',
  expression: 'o = k / 60 * w + s',
  symbols: {
    o: money('opening again'),
    k: { name: 'minutes', unit: '1' },
    w: money('rate for an hour'),
    s: money('stop on site'),
  },
  source: 'arithmetic',
};
export const newLasts: Formula = {
  id: 'part-change/new-lasts',
  what: 'Chance that a new part lasts',
  expression: 'S_n = exp(-(H / eta)^b)',
  symbols: { S_n: share('new part lasts'), H, eta, b },
  source: 'weibull-conditional',
};
export const oldLasts: Formula = {
  id: 'part-change/old-lasts',
  what: 'Chance that the part as it is lasts',
  expression: 'S_o = exp((T / eta)^b - ((T + H) / eta)^b)',
  symbols: { S_o: share('part as it is lasts'), T: hours('hours it has run'), H, eta, b },
  source: 'weibull-conditional',
};
export const changeNow: Formula = {
  id: 'part-change/now',
  what: 'Cost of changing it now',
  expression: 'C_n = c + (1 - S_n) * (c + o)',
  symbols: { C_n: money('changing now'), c: money('part'), S_n: share('new part lasts'), o: money('opening again') },
  source: 'hasidi-kalech-2021',
};
export const leave: Formula = {
  id: 'part-change/leave',
  what: 'Cost of leaving it',
  expression: 'C_l = (1 - S_o) * (c + o)',
  symbols: { C_l: money('leaving it'), S_o: share('part as it is lasts'), c: money('part'), o: money('opening again') },
  source: 'hasidi-kalech-2021',
};
export const replaceFailed: Formula = {
  id: 'part-change/replace',
  what: 'Cost of replacing the failed part',
  expression: 'C_r = c_r + (1 - S_n) * (c_r + o)',
  symbols: {
    C_r: money('replacing'),
    c_r: money('replacement'),
    S_n: share('new part lasts'),
    o: money('opening again'),
  },
  source: 'hasidi-kalech-2021',
};
export const mendFailed: Formula = {
  id: 'part-change/mend',
  what: 'Cost of mending the failed part',
  expression: 'C_f = c_f + (1 - exp(-(p * H / eta)^b)) * (c_r + o)',
  symbols: {
    C_f: money('mending'),
    c_f: money('mending now'),
    p: { name: 'times as fast as new', unit: '1' },
    H,
    eta,
    b,
    c_r: money('replacement'),
    o: money('opening again'),
  },
  source: 'hasidi-kalech-2021',
};
