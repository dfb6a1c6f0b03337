import type { Formula, SymbolSpec } from '../../contract/formula.ts';

const vibration = (name: string): SymbolSpec => ({ name, unit: 'm/s2', decimals: 2 });
const minutes = (name: string): SymbolSpec => ({ name, unit: 'min' });
const number = (name: string): SymbolSpec => ({ name, unit: '1' });

function formula(
  id: string,
  what: string,
  expression: string,
  symbols: Readonly<Record<string, SymbolSpec>>,
  source: string,
): Formula {
  return { id: `hand-arm-vibration/${id}`, what, expression, symbols, source };
}

const a = vibration('value to reckon with');
const a_d = vibration('value from the manual');
const K = vibration('uncertainty');
const T = minutes('time with hands on');
const T_8 = minutes('eight hours');
const a_l = vibration('action value');

export const plusK = formula(
  'plus-k',
  'Manual’s value with its uncertainty',
  'a = a_d + K',
  { a, a_d, K },
  'hse-oc-246-31',
);
export const assumedK = formula(
  'assumed-k',
  'Manual’s value; its uncertainty is not given',
  'a = a_d + 0.4 * a_d',
  { a, a_d },
  'hse-oc-246-31',
);
export const twice = formula('twice', 'Manual’s value, doubled', 'a = 2 * a_d', { a, a_d }, 'hse-double-declared');
export const pointsSoFar = formula(
  'points',
  'Points up to here',
  'P = P_0 + 100 * (a / a_l)^2 * T / T_8',
  { P: number('points'), P_0: number('points before'), a, a_l, T, T_8 },
  'hse-vibration-points',
);
export const day = formula(
  'day',
  'Vibration of the day, over 8 h',
  'A = a_l * sqrt(P / 100)',
  { A: vibration('A(8)'), a_l, P: number('points') },
  'hse-vibration-points',
);
export const left = formula(
  'left',
  'Time left at what comes next',
  't = (P_l - P) / 100 * (a_l / a)^2 * T_8',
  { t: minutes('time left'), P_l: number('points allowed'), P: number('points'), a_l, a, T_8 },
  'hse-vibration-points',
);
