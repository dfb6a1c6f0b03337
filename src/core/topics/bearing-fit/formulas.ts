import type { Formula, SymbolSpec } from '../../contract/formula.ts';

const um = (name: string): SymbolSpec => ({ name, unit: 'µm' });
const mm = (name: string): SymbolSpec => ({ name, unit: 'mm' });
const alpha = (name: string): SymbolSpec => ({ name, unit: 'µm/(m·K)' });
const most = um('tightest interference');
const least = um('loosest interference (below zero: clearance)');
const source = 'arithmetic';

export const shaftMost: Formula = {
  id: 'bearing-fit/shaft-most',
  what: 'Tightest: largest shaft, smallest bore',
  expression: 'I_max = es - t_l',
  symbols: { I_max: most, es: um('upper limit deviation of the shaft'), t_l: um('lower deviation of the bore') },
  source,
};
export const shaftLeast: Formula = {
  id: 'bearing-fit/shaft-least',
  what: 'Loosest: smallest shaft, largest bore',
  expression: 'I_min = ei - t_u',
  symbols: { I_min: least, ei: um('lower limit deviation of the shaft'), t_u: um('upper deviation of the bore') },
  source,
};
export const housingMost: Formula = {
  id: 'bearing-fit/housing-most',
  what: 'Tightest: largest ring, smallest housing',
  expression: 'I_max = t_u - EI',
  symbols: { I_max: most, t_u: um('upper deviation of the ring'), EI: um('lower limit deviation of the housing') },
  source,
};
export const housingLeast: Formula = {
  id: 'bearing-fit/housing-least',
  what: 'Loosest: smallest ring, largest housing',
  expression: 'I_min = t_l - ES',
  symbols: { I_min: least, t_l: um('lower deviation of the ring'), ES: um('upper limit deviation of the housing') },
  source,
};
export const measuredShaft: Formula = {
  id: 'bearing-fit/measured-shaft',
  what: 'Interference of the shaft as measured',
  expression: 'I_m = d_s - d_r',
  symbols: {
    I_m: um('mean interference'),
    d_s: mm('mean of the readings'),
    d_r: mm('ring, measured or middle of its class'),
  },
  source,
};
export const measuredHousing: Formula = {
  id: 'bearing-fit/measured-housing',
  what: 'Interference of the housing as measured',
  expression: 'I_m = d_r - d_s',
  symbols: {
    I_m: um('mean interference'),
    d_r: mm('ring, measured or middle of its class'),
    d_s: mm('mean of the readings'),
  },
  source,
};
export const riseToFit: Formula = {
  id: 'bearing-fit/rise',
  what: 'Temperature rise that opens the tightest pair by the gap',
  expression: 'dT = (I_max + c) / (alpha * d)',
  symbols: {
    dT: { name: 'rise over the room', unit: '°C diff' },
    I_max: most,
    c: um('gap to drop in with'),
    alpha: alpha('expansion of the warmed part'),
    d: mm('seat size'),
  },
  source: 'boresi-schmidt',
};
export const lostWarm: Formula = {
  id: 'bearing-fit/lost-warm',
  what: 'Interference lost when the housing is warm in use',
  expression: 'I_l = d * (alpha_h - alpha_r) * dT_h',
  symbols: {
    I_l: um('interference lost'),
    d: mm('seat size'),
    alpha_h: alpha('expansion of the housing'),
    alpha_r: alpha('expansion of the ring'),
    dT_h: { name: 'housing warms by', unit: '°C diff' },
  },
  source,
};
