import type { Formula, SymbolSpec } from '../../contract/formula.ts';

const hours = (name: string): SymbolSpec => ({ name, unit: 'h' });
const dust = (name: string): SymbolSpec => ({ name, unit: 'mg/m3' });
const number = (name: string): SymbolSpec => ({ name, unit: '1' });

function formula(
  id: string,
  what: string,
  expression: string,
  symbols: Readonly<Record<string, SymbolSpec>>,
  source: string,
): Formula {
  return { id: `dust-control/${id}`, what, expression, symbols, source };
}

const C = dust('silica in the air');
const T = hours('time at it');
const T_8 = hours('eight hours');
const E = dust('average over 8 h');
const L = dust('limit');

export const hoursSoFar = formula(
  'hours',
  'Hours of dusty work up to here',
  'h = h_0 + T',
  { h: hours('hours'), h_0: hours('hours before'), T },
  'wac-296-840-110',
);
export const average = formula(
  'average',
  'Average over 8 h up to here',
  'E = E_0 + C * T / T_8',
  { E, E_0: dust('average before'), C, T, T_8 },
  'osha-1910-1000-d',
);
export const unsampled = formula(
  'unsampled',
  'Hours nobody measured, taken to be like the rest',
  'E = E_m * S / T_m',
  { E, E_m: dust('average of what was measured, over 8 h'), S: hours('shift'), T_m: hours('hours measured') },
  'osha-technical-manual-silica',
);
export const ratio = formula(
  'ratio',
  'Times the limit',
  'r = E / L',
  { r: number('times the limit'), E, L },
  'osha-1910-134',
);
export const longShift = formula(
  'long-shift',
  'Good practice: what a limit comes down to on a long shift',
  'L_s = L * T_8 / S * (T_d - S) / T_r',
  {
    L_s: dust('limit for the long shift'),
    L,
    T_8,
    S: hours('shift'),
    T_d: hours('a day'),
    T_r: hours('rest of a day of eight hours'),
  },
  'brief-scala',
);
export const alone = formula(
  'alone',
  'The dustiest task alone reaches the limit after',
  't = T_8 * L / C',
  { t: { name: 'time', unit: 'min' }, T_8, L, C },
  'osha-1910-1000-d',
);
