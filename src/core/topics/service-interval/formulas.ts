import type { Formula, SymbolSpec } from '../../contract/formula.ts';

const hours = (name: string): SymbolSpec => ({ name, unit: 'h' });
const n = (name: string): SymbolSpec => ({ name, unit: '1' });
const b = n('Weibull shape');
const eta = hours('hours by which 63 % have failed');
const T = hours('age at replacement');

export const interval: Formula = {
  id: 'service-interval/duty',
  what: 'Interval under this duty',
  expression: 't = t_b * f_d * f_w * f_l',
  symbols: {
    t: hours('interval'),
    t_b: hours('interval on clean work'),
    f_d: n('dust'),
    f_w: n('water'),
    f_l: n('load'),
  },
  source: 'duty-scaling',
};
export const floor: Formula = {
  id: 'service-interval/least',
  what: 'Interval, kept from getting shorter than this',
  expression: 't = s * t_b',
  symbols: { t: hours('interval'), s: { name: 'smallest share', unit: '%' }, t_b: hours('interval on clean work') },
  source: 'common-practice',
};
export const daysByHours: Formula = {
  id: 'service-interval/days',
  what: 'Days until the hours are used up',
  expression: 'd_h = (t - u) / (h * w / 7)',
  symbols: {
    d_h: n('days'),
    t: hours('interval'),
    u: hours('run since'),
    h: hours('in a working day'),
    w: n('working days a week'),
  },
  source: 'arithmetic',
};
export const first: Formula = {
  id: 'service-interval/first',
  what: 'Whichever comes first',
  expression: 'd = min(d_h, d_c)',
  symbols: { d: n('days until due'), d_h: n('days by the hours'), d_c: n('days by the calendar') },
  source: 'army-tm-service-intervals',
};
export const calendarLeft: Formula = {
  id: 'service-interval/calendar',
  what: 'Days until the calendar limit',
  expression: 'd_c = L - g',
  symbols: { d_c: n('days by the calendar'), L: n('days allowed'), g: n('days gone since it was last done') },
  source: 'arithmetic',
};
export const lasts: Formula = {
  id: 'service-interval/lasts',
  what: 'Chance that the part reaches that age',
  expression: 'R = exp(-(T / eta)^b)',
  symbols: { R: { name: 'reaches it', unit: '%' }, T, eta, b },
  source: 'weibull-conditional',
};
export const condition: Formula = {
  id: 'service-interval/condition',
  what: 'The age is best where this',
  expression: 'g = b / eta * (T / eta)^(b - 1) * M - (1 - R)',
  symbols: {
    g: n('rate of failing times mean service, less the share failed'),
    b,
    eta,
    T,
    M: hours('mean service up to that age'),
    R: { name: 'reaches it', unit: '%' },
  },
  source: 'barlow-age-replacement',
};
export const wanted: Formula = {
  id: 'service-interval/wanted',
  what: 'equals this',
  expression: 'g_c = C_p / (C_f - C_p)',
  symbols: {
    g_c: n('planned cost over the extra cost of a failure'),
    C_p: n('changing it in time'),
    C_f: n('a failure'),
  },
  source: 'barlow-age-replacement',
};
export const rate: Formula = {
  id: 'service-interval/rate',
  what: 'Cost of the part for an hour, replaced at that age',
  expression: 'c = (C_p * R + C_f * (1 - R)) / M',
  symbols: {
    c: n('cost of an hour'),
    C_p: n('changing it in time'),
    C_f: n('a failure'),
    R: { name: 'reaches it', unit: '%' },
    M: n('mean hours in service'),
  },
  source: 'barlow-age-replacement',
};
export const runOut: Formula = {
  id: 'service-interval/run-out',
  what: 'Cost of the part for an hour, run until it fails',
  expression: 'c_r = C_f / (m * gamma(1 + 1 / b))',
  symbols: { c_r: n('cost of an hour'), C_f: n('a failure'), m: n('hours by which 63 % have failed'), b },
  source: 'barlow-age-replacement',
};
export const sinceByUse: Formula = {
  id: 'service-interval/since',
  what: 'Hours run since, estimated from the day it was done',
  expression: 'u = g * h * w / 7',
  symbols: {
    u: hours('run since'),
    g: n('days gone since it was last done'),
    h: hours('in a working day'),
    w: n('working days a week'),
  },
  source: 'arithmetic',
};
export const turn: Formula = {
  id: 'service-interval/turn',
  what: 'Reading at which it is due, counted from 0 h as if each turn had been done',
  expression: 'm_d = k * t',
  symbols: { m_d: hours('reading at which it is due'), k: n('turns'), t: hours('interval') },
  source: 'arithmetic',
};
export const sinceByTurn: Formula = {
  id: 'service-interval/since-turn',
  what: 'Run since, by that count',
  expression: 'u = min(t, t - (m_d - m))',
  symbols: {
    u: hours('run since'),
    t: hours('interval'),
    m_d: hours('reading at which it is due'),
    m: hours('hour meter now'),
  },
  source: 'arithmetic',
};
export const sinceByMeter: Formula = {
  id: 'service-interval/meter',
  what: 'Hours run since, between two readings of the meter',
  expression: 'u = m - m_0',
  symbols: { u: hours('run since'), m: hours('meter now'), m_0: hours('meter when last done') },
  source: 'arithmetic',
};
export const runOutRange: Formula = {
  id: 'service-interval/run-out-range',
  what: 'Cost of the part for an hour, run until it fails',
  expression: 'c_r = C_f / ((m_1 + m_2) / 2)',
  symbols: {
    c_r: n('cost of an hour'),
    C_f: n('a failure'),
    m_1: n('shortest life, hours'),
    m_2: n('longest life, hours'),
  },
  source: 'uniform-law',
};
