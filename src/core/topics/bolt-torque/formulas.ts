import type { Formula } from '../../contract/formula.ts';

const F = { name: 'preload', unit: 'kN' } as const;

export const clampForce: Formula = {
  id: 'bolt-torque/preload',
  what: 'Preload aimed for',
  expression: 'F = x * S_p * A_t',
  symbols: {
    F,
    x: { name: 'share of the proof load', unit: '1' },
    S_p: { name: 'proof stress of the class', unit: 'MPa' },
    A_t: { name: 'stress area', unit: 'mm2' },
  },
  source: 'shigley-bolts',
};
export const torque: Formula = {
  id: 'bolt-torque/torque',
  what: 'Torque for it',
  expression: 'T = K * F * d',
  symbols: {
    T: { name: 'torque', unit: 'N·m' },
    K: { name: 'torque factor', unit: '1' },
    F,
    d: { name: 'bolt size', unit: 'mm' },
  },
  source: 'shigley-bolts',
};
export const greatestShare: Formula = {
  id: 'bolt-torque/share',
  what: 'Share of the proof load if friction is at its lowest',
  expression: 'y = F * (1 + s) / (S_p * A_t)',
  symbols: {
    y: { name: 'share reached at most', unit: '1' },
    F,
    s: { name: 'scatter of the preload', unit: '1' },
    S_p: { name: 'proof stress of the class', unit: 'MPa' },
    A_t: { name: 'stress area', unit: 'mm2' },
  },
  source: 'preload-scatter-memory',
};
const F_s = { name: 'force that strips the casting', unit: 'kN' } as const;
export const strip: Formula = {
  id: 'bolt-torque/strip',
  what: 'Force that strips the thread out of the casting',
  expression: 'F_s = 0.875 * pi * d * L_e * tau',
  symbols: {
    F_s,
    d: { name: 'bolt size', unit: 'mm' },
    L_e: { name: 'thread engaged', unit: 'mm' },
    tau: { name: 'shear strength of the casting', unit: 'MPa' },
  },
  source: 'thread-shear',
};
export const stripHalf: Formula = {
  id: 'bolt-torque/strip-half',
  what: 'Preload the casting bears',
  expression: 'F = F_s / q',
  symbols: { F, F_s, q: { name: 'kept in hand against stripping', unit: '1' } },
  source: 'thread-shear',
};
