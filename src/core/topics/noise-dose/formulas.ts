import type { Formula, SymbolSpec } from '../../contract/formula.ts';

const level = (name: string): SymbolSpec => ({ name, unit: '1', decimals: 1 });
const share = (name: string): SymbolSpec => ({ name, unit: '%' });
const minutes = (name: string): SymbolSpec => ({ name, unit: 'min' });

function formula(
  id: string,
  what: string,
  expression: string,
  symbols: Readonly<Record<string, SymbolSpec>>,
  source: string,
): Formula {
  return { id: `noise-dose/${id}`, what, expression, symbols, source };
}

const L = level('level, dB(A)');
const T_8 = minutes('eight hours');
const C = minutes('time at it');
const T_o = minutes('time allowed by OSHA');
const T_n = minutes('time allowed by NIOSH');

export const oshaTime = formula(
  'osha-time',
  'Time OSHA allows at this level: half for every 5 dB',
  'T_o = T_8 / 2^((L - 90) / 5)',
  { T_o, T_8, L },
  'osha-1910-95',
);
export const oshaDose = formula(
  'osha-dose',
  'OSHA dose up to here',
  'D_o = D_0 + C / T_o',
  { D_o: share('dose'), D_0: share('dose before'), C, T_o },
  'osha-1910-95',
);
export const oshaTwa = formula(
  'osha-twa',
  'OSHA average over 8 h',
  'L_o = 16.61 * log10(D_o) + 90',
  { L_o: level('average, dB(A)'), D_o: share('dose') },
  'osha-1910-95',
);
export const nioshTime = formula(
  'niosh-time',
  'Time NIOSH allows at this level: half for every 3 dB',
  'T_n = T_8 / 2^((L - 85) / 3)',
  { T_n, T_8, L },
  'niosh-98-126',
);
export const nioshDose = formula(
  'niosh-dose',
  'NIOSH dose up to here',
  'D_n = D_0 + C / T_n',
  { D_n: share('dose'), D_0: share('dose before'), C, T_n },
  'niosh-98-126',
);
export const nioshTwa = formula(
  'niosh-twa',
  'NIOSH average over 8 h',
  'L_n = 10 * log10(D_n) + 85',
  { L_n: level('average, dB(A)'), D_n: share('dose') },
  'niosh-98-126',
);
export const dayEnergy = formula(
  'energy',
  'Sound energy up to here',
  'E = E_0 + C / T_8 * 10^(L / 10)',
  { E: level('energy'), E_0: level('energy before'), C, T_8, L },
  'directive-2003-10-ec',
);
export const daily = formula(
  'daily',
  'Daily level, the way of the EU and Great Britain',
  'L_d = 10 * log10(E)',
  { L_d: level('daily level, dB(A)'), E: level('energy') },
  'directive-2003-10-ec',
);
export const half = formula(
  'half',
  'What the protectors are counted for',
  'R = (N - 7) / 2',
  { R: level('reduction, dB'), N: level('NRR') },
  'osha-nrr-field',
);
export const label = formula(
  'label',
  'What the protectors are counted for',
  'R = N - 7',
  { R: level('reduction, dB'), N: level('NRR') },
  'osha-nrr-field',
);
export const dual = formula(
  'dual',
  'What the protectors are counted for',
  'R = N + 5 - 7',
  { R: level('reduction, dB'), N: level('higher NRR') },
  'osha-nrr-field',
);
export const derated = formula(
  'derated',
  'What the protectors are counted for',
  'R = k * N - 7',
  { R: level('reduction, dB'), k: { name: 'share of the label that counts', unit: '1' }, N: level('NRR') },
  'niosh-derating',
);
export const snr = formula(
  'snr',
  'What the protectors are counted for',
  'R = N - d - 4',
  { R: level('reduction, dB'), N: level('SNR'), d: level('dB(C) less dB(A)') },
  'hse-protectors',
);
export const hmlLow = formula(
  'hml-low',
  'What the protectors are counted for',
  'R = M - (H - M) / 4 * (d - 2) - 4',
  { R: level('reduction, dB'), M: level('M'), H: level('H'), d: level('dB(C) less dB(A)') },
  'hse-protectors',
);
export const hmlHigh = formula(
  'hml-high',
  'What the protectors are counted for',
  'R = M - (M - B) / 8 * (d - 2) - 4',
  { R: level('reduction, dB'), M: level('M'), B: level('L'), d: level('dB(C) less dB(A)') },
  'hse-protectors',
);
export const oshaLeft = formula(
  'osha-left',
  'Time left by OSHA at what comes next',
  't_o = (1 - D_o) * T_o',
  { t_o: minutes('left'), D_o: share('dose'), T_o },
  'osha-1910-95',
);
export const nioshLeft = formula(
  'niosh-left',
  'Time left by NIOSH at what comes next',
  't_n = (1 - D_n) * T_n',
  { t_n: minutes('left'), D_n: share('dose'), T_n },
  'niosh-98-126',
);
export const off = formula(
  'off',
  'At the helper',
  'L_h = L - 20 * log10(r / r_0)',
  {
    L_h: level('level at the helper, dB(A)'),
    L,
    r: { name: 'helper’s distance', unit: 'm' },
    r_0: { name: 'distance it was read at', unit: 'm' },
  },
  'inverse-square',
);
