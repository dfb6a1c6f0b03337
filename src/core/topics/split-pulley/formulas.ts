import type { Formula, SymbolSpec } from '../../contract/formula.ts';

const r = { name: 'pitch radius', unit: 'mm' } as const;
const g = { name: 'gap between the halves', unit: 'mm' } as const;
const phi = { name: 'angle of the V', unit: '°' } as const;
const L = { name: 'length of the belt path', unit: 'mm' } as const;
const C = { name: 'center distance', unit: 'mm' } as const;
const big = { name: 'larger of the two pitch diameters', unit: 'mm' } as const;
const small = { name: 'smaller of the two pitch diameters', unit: 'mm' } as const;

function formula(id: string, what: string, expression: string, symbols: Readonly<Record<string, SymbolSpec>>): Formula {
  return { id: `split-pulley/${id}`, what, expression, symbols, source: 'geometry' };
}

export const radius = formula('radius', 'Pitch radius at a gap', 'r = r_c - (g + w - w_b) / (2 * tan(phi / 2))', {
  r,
  g,
  phi,
  r_c: { name: 'pitch radius, closed', unit: 'mm' },
  w: { name: 'belt width the pulley is made for', unit: 'mm' },
  w_b: { name: 'belt width', unit: 'mm' },
});
export const climbed = formula('climb', 'How far the belt must climb', 'x = (g_0 - g_1) / (2 * tan(phi / 2))', {
  x: { name: 'climb, in radius', unit: 'mm' },
  g_0: { name: 'gap at the start', unit: 'mm' },
  g_1: { name: 'gap at the end', unit: 'mm' },
  phi,
});
export const path = formula(
  'path',
  'Length of the belt path',
  'L = sqrt(4 * C^2 - (D - d)^2) + pi / 2 * (D + d) + (D - d) * asin((D - d) / (2 * C))',
  { L, C, D: big, d: small },
);
export const ratio = formula('ratio', 'Blade turns for each turn of the drive pulley', 'i = d_d / (2 * r)', {
  i: { name: 'speed ratio', unit: '1' },
  d_d: { name: 'drive pulley', unit: 'mm' },
  r,
});
export const passes = formula('passes', 'Turn-and-tighten passes', 'n_p = (g_0 - g_1) / (p * u)', {
  n_p: { name: 'passes, before rounding up', unit: '1' },
  g_0: { name: 'gap at the start', unit: 'mm' },
  g_1: { name: 'gap at the end', unit: 'mm' },
  p: { name: 'thread pitch', unit: 'mm' },
  u: { name: 'turn of the screw each pass', unit: '1' },
});
export const loop = formula('loop', 'Blade turns that carry the belt round once', 'k = L / (2 * pi * r)', {
  k: { name: 'blade turns', unit: '1' },
  L,
  r,
});
export const stretched = formula('stretch', 'Belt path against belt, closed', 'e = (L - L_b) / L_b', {
  e: { name: 'stretch', unit: '1' },
  L,
  L_b: { name: 'belt length', unit: 'mm' },
});
export const squeeze = formula('squeeze', 'Squeeze of the belt if it could not climb', 'q = (g_0 - g_1) / w_b', {
  q: { name: 'share of its width', unit: '1' },
  g_0: { name: 'gap at the start', unit: 'mm' },
  g_1: { name: 'gap at the end', unit: 'mm' },
  w_b: { name: 'belt width', unit: 'mm' },
});
export const tilted = formula('tilt', 'Tilt of a half nipped on one side', 'epsilon = atan(g_p / (2 * r))', {
  epsilon: { name: 'tilt', unit: '°' },
  g_p: { name: 'gap left at the belt', unit: 'mm' },
  r,
});
export const wobble = formula('wobble', 'Run-out at the rim of the blade', 'y = D_b * tan(epsilon)', {
  y: { name: 'run-out', unit: 'mm' },
  D_b: { name: 'blade diameter', unit: 'mm' },
  epsilon: { name: 'tilt', unit: '°' },
});
