import type { Formula, SymbolSpec } from '../../contract/formula.ts';

const m = { name: 'mass of one shoe', unit: 'g' } as const;
const r = { name: 'center of mass, shoe on the drum', unit: 'mm' } as const;
const F = { name: 'spring force, shoe on the drum', unit: 'N' } as const;
const n_1 = { name: 'engagement speed', unit: 'rpm' } as const;
const z = { name: 'shoes', unit: '1' } as const;
const mu = { name: 'friction', unit: '1' } as const;
const R = { name: 'drum, inside radius', unit: 'mm' } as const;
const T_n = { name: 'torque needed', unit: 'N·m' } as const;

function formula(
  id: string,
  what: string,
  expression: string,
  source: string,
  symbols: Readonly<Record<string, SymbolSpec>>,
): Formula {
  return { id: `clutch-speed/${id}`, what, expression, source, symbols };
}

export const springForce = formula(
  'spring',
  'Spring force when the shoe touches the drum',
  'F = F_0 + k * c',
  'khurmi-clutch',
  {
    F,
    F_0: { name: 'spring force at rest', unit: 'N' },
    k: { name: 'spring rate', unit: 'N/mm' },
    c: { name: 'gap to the drum', unit: 'mm' },
  },
);
export const engages = formula(
  'engagement',
  'Engagement speed',
  'n_1 = sqrt(F / (m * r)) / (2 * pi)',
  'khurmi-clutch',
  { n_1, F, m, r },
);
export const weakSpring = formula('weak', 'Engagement with one weak spring', 'n_w = n_1 * sqrt(w)', 'khurmi-clutch', {
  n_w: { name: 'engagement, weak spring', unit: 'rpm' },
  n_1,
  w: { name: 'share of its force a spring has left', unit: '1' },
});
export const idleMargin = formula('margin', 'Engagement against idle', 'k = n_1 / n_i', 'clutch-idle-margin', {
  k: { name: 'margin', unit: '1' },
  n_1,
  n_i: { name: 'idle speed', unit: 'rpm' },
});
export const needed = formula('needed', 'Torque to carry at running speed', 'T_n = P / (2 * pi * n)', 'arithmetic', {
  T_n,
  P: { name: 'engine power', unit: 'kW' },
  n: { name: 'running speed', unit: 'rpm' },
});
export const held = formula(
  'held',
  'Torque the clutch holds at running speed',
  'T = z * mu * R * (m * r * (2 * pi * n)^2 - F)',
  'khurmi-clutch',
  { T: { name: 'torque held', unit: 'N·m' }, z, mu, R, m, r, n: { name: 'running speed', unit: 'rpm' }, F },
);
export const grips = formula(
  'grip',
  'Speed from which it holds full torque',
  'n_g = sqrt((F + T_n / (z * mu * R)) / (m * r)) / (2 * pi)',
  'khurmi-clutch',
  { n_g: { name: 'speed of full grip', unit: 'rpm' }, F, T_n, z, mu, R, m, r },
);
