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
