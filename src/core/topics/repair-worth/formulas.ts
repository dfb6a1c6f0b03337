import type { Formula, SymbolSpec } from '../../contract/formula.ts';

/** Money, years and shares are pure numbers here: no currency or calendar unit is built in. */
const n1 = (name: string, decimals?: number): SymbolSpec =>
  decimals === undefined ? { name, unit: '1' } : { name, unit: '1', decimals };
const money = (name: string): SymbolSpec => n1(name, 2);
const percent = (name: string): SymbolSpec => ({ name, unit: '%' });

export const markupPrice: Formula = {
  id: 'repair-worth/markup',
  what: 'Selling price from cost and markup',
  expression: 'p = c * (1 + m)',
  symbols: { p: money('selling price'), c: money('cost'), m: percent('markup, of the cost') },
  source: 'markup-and-margin',
};
export const marginPrice: Formula = {
  id: 'repair-worth/margin',
  what: 'Selling price from cost and margin',
  expression: 'p = c / (1 - m)',
  symbols: { p: money('selling price'), c: money('cost'), m: percent('margin, of the price') },
  source: 'markup-and-margin',
};
export const labour: Formula = {
  id: 'repair-worth/labour',
  what: 'Labor',
  expression: 'L = h * w',
  symbols: { L: money('labor'), h: n1('hours'), w: money('rate for an hour') },
  source: 'arithmetic',
};
export const taxByKind: Formula = {
  id: 'repair-worth/tax',
  what: 'Tax, each kind at its own rate',
  expression: 'X = t_p * P + t_l * L + t_c * C',
  symbols: {
    X: money('tax'),
    t_p: percent('on parts'),
    P: money('parts'),
    t_l: percent('on labor'),
    L: money('labor'),
    t_c: percent('on consumables'),
    C: money('consumables'),
  },
  source: 'state-sales-tax-guides',
};
export const taxOnLump: Formula = {
  id: 'repair-worth/tax-lump',
  what: 'Tax on one lump price',
  expression: 'X = t * (P + L + C)',
  symbols: {
    X: money('tax'),
    t: percent('highest rate of the three'),
    P: money('parts'),
    L: money('labor'),
    C: money('consumables'),
  },
  source: 'state-sales-tax-guides',
};
export const quoteTotal: Formula = {
  id: 'repair-worth/quote',
  what: 'Quote, of the amounts as charged',
  expression: 'Q_t = P + L + C + X',
  symbols: { Q_t: money('quote'), P: money('parts'), L: money('labor'), C: money('consumables'), X: money('tax') },
  source: 'arithmetic',
};
export const feeCredited: Formula = {
  id: 'repair-worth/fee',
  what: 'What saying yes costs once the fee is taken off',
  expression: 'Q = Q_t - F',
  symbols: { Q: money('cost of saying yes'), Q_t: money('quote'), F: money('fee for finding the fault') },
  source: 'common-practice',
};
export const serviceFromHours: Formula = {
  id: 'repair-worth/service',
  what: 'Service after the repair in years',
  expression: 'n = H_s / H',
  symbols: { n: n1('years'), H_s: n1('cutting hours expected'), H: n1('cutting hours a year') },
  source: 'arithmetic',
};

export const upkeepShare: Formula = {
  id: 'repair-worth/upkeep-share',
  what: 'Upkeep a year where none is given, from the new price and the hours',
  expression: 'A = k * P * H / 100',
  symbols: {
    A: money('upkeep a year'),
    k: percent('of the new price in 100 hours'),
    P: money('price of new'),
    H: n1('cutting hours a year'),
  },
  source: 'common-practice',
};
export const priceShare: Formula = {
  id: 'repair-worth/price-share',
  what: 'An amount not given, as a share of the new price',
  expression: 'x = k * P',
  symbols: { x: money('amount taken'), k: percent('share'), P: money('price of new') },
  source: 'common-practice',
};
export const endShare: Formula = {
  id: 'repair-worth/end-share',
  what: 'Worth at the end of the service where none is given',
  expression: 'E = k * V',
  symbols: { E: money('worth at the end'), k: percent('of what it fetches today'), V: money('worth as it stands') },
  source: 'common-practice',
};
export const dayShare: Formula = {
  id: 'repair-worth/day-share',
  what: 'A day without the machine where none is given',
  expression: 'd = P * min(k * H / 100, k_m)',
  symbols: {
    d: money('cost of a day'),
    P: money('price of new'),
    k: percent('of the new price for each 100 hours a year'),
    H: n1('cutting hours a year'),
    k_m: percent('at most'),
  },
  source: 'common-practice',
};

const recovery = { a: n1('level yearly share'), r: percent('interest a year'), n: n1('years') };
export const recoveryFactor: Formula = {
  id: 'repair-worth/recovery',
  what: 'Level yearly payment for each unit of money laid out',
  expression: 'a = r * (1 + r)^n / ((1 + r)^n - 1)',
  symbols: recovery,
  source: 'engineering-economy-factors',
};
export const recoveryFree: Formula = {
  id: 'repair-worth/recovery-no-interest',
  what: 'The same without interest',
  expression: 'a = 1 / n',
  symbols: { a: recovery.a, n: recovery.n },
  source: 'engineering-economy-factors',
};
export const comeback: Formula = {
  id: 'repair-worth/comeback',
  what: 'Comeback, as worth today',
  expression: 'K = p * C_c / (1 + r)^t',
  symbols: {
    K: money('comeback'),
    p: percent('chance of a comeback'),
    C_c: money('cost of a comeback'),
    r: percent('interest a year'),
    t: n1('years until it falls due'),
  },
  source: 'comeback-expected-value',
};
export const repairCost: Formula = {
  id: 'repair-worth/repair-yearly',
  what: 'Yearly cost of repairing and keeping',
  expression: 'C_r = (V + Q + D + K) * a - E * (a - r) + A',
  symbols: {
    C_r: money('yearly cost, repair'),
    V: money('worth as it stands'),
    Q: money('cost of saying yes'),
    D: money('days without the machine'),
    K: money('comeback'),
    a: n1('level yearly share'),
    E: money('worth at the end'),
    r: percent('interest a year'),
    A: money('upkeep a year'),
  },
  source: 'blank-tarquin',
};
export const newFirstCost: Formula = {
  id: 'repair-worth/new-first',
  what: 'Laid out for the new machine',
  expression: 'N = P - (T - V) + D',
  symbols: {
    N: money('laid out'),
    P: money('price'),
    T: money('trade-in'),
    V: money('worth as it stands'),
    D: money('days without the machine'),
  },
  source: 'blank-tarquin',
};
export const newCost: Formula = {
  id: 'repair-worth/new-yearly',
  what: 'Yearly cost of buying new',
  expression: 'C_n = N * a - S * (a - r) + A',
  symbols: {
    C_n: money('yearly cost, new'),
    N: money('laid out'),
    a: n1('level yearly share'),
    S: money('worth at the end'),
    r: percent('interest a year'),
    A: money('upkeep a year'),
  },
  source: 'engineering-economy-factors',
};
export const newCostByYear: Formula = {
  id: 'repair-worth/new-yearly-best',
  what: 'Yearly cost of buying new, at its cheapest age',
  expression: 'C_n = (N + W - S / (1 + r)^n) * a',
  symbols: {
    C_n: money('yearly cost, new'),
    N: money('laid out'),
    W: money('upkeep of those years, as worth today'),
    S: money('worth at that age'),
    r: percent('interest a year'),
    n: n1('years kept'),
    a: n1('level yearly share'),
  },
  source: 'blank-tarquin',
};
export const mostWorth: Formula = {
  id: 'repair-worth/most',
  what: 'Most worth paying for the repair',
  expression: 'Q_m = (C_n - A) / a + E * (a - r) / a - V - D - K',
  symbols: {
    Q_m: money('most worth paying'),
    C_n: money('yearly cost, new'),
    A: money('upkeep a year, repaired'),
    a: n1('level yearly share'),
    E: money('worth at the end'),
    r: percent('interest a year'),
    V: money('worth as it stands'),
    D: money('days without the machine'),
    K: money('comeback'),
  },
  source: 'blank-tarquin',
};
export const perHour: Formula = {
  id: 'repair-worth/per-hour',
  what: 'Cost of a cutting hour',
  expression: 'c = C / H',
  symbols: { c: money('cost of an hour'), C: money('yearly cost'), H: n1('cutting hours a year') },
  source: 'arithmetic',
};
export const comebackFlip: Formula = {
  id: 'repair-worth/comeback-flip',
  what: 'Chance of a comeback that turns the answer',
  expression: 'p_f = p + (Q_m - Q) * (1 + r)^t / C_c',
  symbols: {
    p_f: percent('chance that turns it'),
    p: percent('chance given'),
    Q_m: money('most worth paying'),
    Q: money('cost of saying yes'),
    r: percent('interest a year'),
    t: n1('years until it falls due'),
    C_c: money('cost of a comeback'),
  },
  source: 'comeback-expected-value',
};

const odds = {
  w: percent('chance the engine is worn out'),
  B: money('gain by repairing, sound engine'),
  Q: money('repair money lost, worn engine'),
};
export const blindLimit: Formula = {
  id: 'repair-worth/blind-limit',
  what: 'Most worth paying before the engine has been looked at',
  expression: 'Q_b = (1 - w) * Q_m',
  symbols: {
    Q_b: money('most worth paying, engine not checked'),
    w: odds.w,
    Q_m: money('most worth paying, engine sound'),
  },
  source: 'value-of-information',
};
export const blindGain: Formula = {
  id: 'repair-worth/blind',
  what: 'Expected gain by repairing without looking',
  expression: 'U = (1 - w) * B - w * Q',
  symbols: { U: money('gain without looking'), ...odds },
  source: 'value-of-information',
};
export const passedGain: Formula = {
  id: 'repair-worth/looks-sound',
  what: 'The same, when the engine looks sound',
  expression: 'U_s = (1 - w) * (1 - f) * B - w * (1 - d) * Q',
  symbols: {
    U_s: money('gain, looks sound'),
    ...odds,
    f: percent('condemns a sound engine'),
    d: percent('finds a worn one'),
  },
  source: 'value-of-information',
};
export const condemnedGain: Formula = {
  id: 'repair-worth/looks-worn',
  what: 'The same, when the engine looks worn',
  expression: 'U_w = (1 - w) * f * B - w * d * Q',
  symbols: {
    U_w: money('gain, looks worn'),
    ...odds,
    f: percent('condemns a sound engine'),
    d: percent('finds a worn one'),
  },
  source: 'value-of-information',
};
export const lookWorth: Formula = {
  id: 'repair-worth/look',
  what: 'What the look is worth',
  expression: 'I = max(U_s, 0) + max(U_w, 0) - max(U, 0)',
  symbols: {
    I: money('worth of looking'),
    U_s: money('gain, looks sound'),
    U_w: money('gain, looks worn'),
    U: money('gain without looking'),
  },
  source: 'value-of-information',
};
export const lookCost: Formula = {
  id: 'repair-worth/look-cost',
  what: 'What the look costs',
  expression: 'c_i = m / 60 * w',
  symbols: { c_i: money('cost of looking'), m: n1('minutes'), w: money('rate for an hour') },
  source: 'arithmetic',
};
export const halfRule: Formula = {
  id: 'repair-worth/half-rule',
  what: 'Quote as a share of the new price',
  expression: 's = Q_t / P',
  symbols: { s: percent('share'), Q_t: money('quote'), P: money('price of new') },
  source: 'fifty-percent-rule',
};
export const threeQuarterRule: Formula = {
  id: 'repair-worth/three-quarter-rule',
  what: 'Quote as a share of the worth in working order',
  expression: 's = Q_t / V_w',
  symbols: { s: percent('share'), Q_t: money('quote'), V_w: money('worth in working order') },
  source: 'three-quarter-rule',
};
