import type { Formula, SymbolSpec } from '../../contract/formula.ts';

const D = { name: 'blade diameter', unit: 'mm' } as const;
const d = { name: 'bore', unit: 'mm' } as const;
const n = { name: 'blade-shaft speed', unit: 'rpm' } as const;
const m = { name: 'mass', unit: 'kg' } as const;
const I = { name: 'inertia', unit: 'kg·m2' } as const;
const E = { name: 'energy', unit: 'J' } as const;
const M = { name: 'friction torque', unit: 'N·m' } as const;
const t = { name: 'time to standstill', unit: 's' } as const;
const rho = { name: 'density', unit: 'kg/m3' } as const;

function formula(
  id: string,
  what: string,
  expression: string,
  source: string,
  symbols: Readonly<Record<string, SymbolSpec>>,
): Formula {
  return { id: `blade-rundown/${id}`, what, expression, source, symbols };
}

export const mass = formula('mass', 'Mass of the disc', 'm = rho * pi / 4 * (D^2 - d^2) * b', 'disc-energy', {
  m,
  rho,
  D,
  d,
  b: { name: 'thickness', unit: 'mm' },
});
export const inertia = formula('inertia', 'Inertia', 'I = m * (D^2 + d^2) / 8', 'disc-energy', { I, m, D, d });
export const energy = formula('energy', 'Energy in the turning blade', 'E = I * (2 * pi * n)^2 / 2', 'disc-energy', {
  E,
  I,
  n,
});
export const drop = formula('drop', 'Height from which the saw would have to fall', 'h = E / W', 'arithmetic', {
  h: { name: 'height', unit: 'm' },
  E,
  W: { name: 'weight of the saw', unit: 'N' },
});
export const friction = formula(
  'friction',
  'Friction torque from the stop',
  'M = I * 2 * pi * n / t',
  'tayal-mechanics',
  { M, I, n, t },
);
export const stop = formula('stop', 'Time to standstill', 't = I * 2 * pi * n / M', 'tayal-mechanics', { t, I, n, M });
export const turns = formula('turns', 'Turns until it stands', 'N_t = n * t / 2', 'tayal-mechanics', {
  N_t: { name: 'turns', unit: '1' },
  n,
  t,
});
export const hoop = formula(
  'hoop',
  'Stress at the bore from spinning',
  's_b = (3 + nu) / 4 * rho * (2 * pi * n)^2 * ((D / 2)^2 + (1 - nu) / (3 + nu) * (d / 2)^2)',
  'ugural-disc',
  { s_b: { name: 'hoop stress at the bore', unit: 'MPa' }, nu: { name: 'Poisson’s ratio', unit: '1' }, rho, n, D, d },
);
export const ring = formula(
  'ring',
  'Stress in a thin ring at that rim speed',
  's_r = rho * (pi * D * n)^2',
  'disc-energy',
  { s_r: { name: 'hoop stress of a ring', unit: 'MPa' }, rho, D, n },
);
export const speck = formula('speck', 'Run-out from dirt under the flange', 'y = s * D / F', 'geometry', {
  y: { name: 'run-out at the rim', unit: 'mm' },
  s: { name: 'dirt', unit: 'mm' },
  D,
  F: { name: 'flange diameter', unit: 'mm' },
});
export const limit = formula(
  'limit',
  'Run-out allowed, where the manual gives none',
  'y_a = D / 1000',
  'blade-run-out-limit',
  { y_a: { name: 'run-out allowed', unit: 'mm' }, D },
);
