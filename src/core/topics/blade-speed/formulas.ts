import type { Formula } from '../../contract/formula.ts';

const D = { name: 'blade diameter', unit: 'mm' } as const;
const F = { name: 'part that meets the work first', unit: 'mm' } as const;
const c = { name: 'gap kept', unit: 'mm' } as const;
const h = { name: 'depth of cut', unit: 'mm' } as const;

export const shaftSpeed: Formula = {
  id: 'blade-speed/shaft',
  what: 'Speed of the blade shaft behind the belt',
  expression: 'n_b = n_e * d_e / d_b * (1 - s)',
  symbols: {
    n_b: { name: 'blade-shaft speed', unit: 'rpm' },
    n_e: { name: 'engine speed', unit: 'rpm' },
    d_e: { name: 'engine pulley', unit: 'mm' },
    d_b: { name: 'blade pulley', unit: 'mm' },
    s: { name: 'belt slip', unit: '1' },
  },
  source: 'khurmi-machines',
};

export const rimSpeed: Formula = {
  id: 'blade-speed/rim',
  what: 'Surface speed at the rim',
  expression: 'v = pi * D * n_b',
  symbols: { v: { name: 'surface speed', unit: 'm/s' }, D, n_b: { name: 'blade-shaft speed', unit: 'rpm' } },
  source: 'masonry-magazine-2004',
};

export const markAsRotation: Formula = {
  id: 'blade-speed/mark',
  what: 'A marked surface speed as shaft speed, at the diameter printed on the blade',
  expression: 'n_m = v_m / (pi * D_m)',
  symbols: {
    n_m: { name: 'marked limit as shaft speed', unit: 'rpm' },
    v_m: { name: 'marked surface speed', unit: 'm/s' },
    D_m: { name: 'diameter printed on the blade', unit: 'mm' },
  },
  source: 'arithmetic',
};

export const limitHere: Formula = {
  id: 'blade-speed/limit',
  what: 'The lowest mark, as surface speed at this diameter',
  expression: 'v_max = pi * D * n_m',
  symbols: {
    v_max: { name: 'marked limit at this diameter', unit: 'm/s' },
    D,
    n_m: { name: 'marked limit as shaft speed', unit: 'rpm' },
  },
  source: 'arithmetic',
};

export const shareOfLimit: Formula = {
  id: 'blade-speed/share',
  what: 'Share of the speed marked on the blade',
  expression: 'k = v / v_max',
  symbols: {
    k: { name: 'share of the limit', unit: '1' },
    v: { name: 'surface speed', unit: 'm/s' },
    v_max: { name: 'marked limit at this diameter', unit: 'm/s' },
  },
  source: 'ansi-b7-1',
};

export const depthOfCut: Formula = {
  id: 'blade-speed/depth',
  what: 'Greatest depth of cut',
  expression: 'h = (D - F) / 2 - c',
  symbols: { h, D, F, c },
  source: 'geometry',
};

export const twinDepthOfCut: Formula = {
  id: 'blade-speed/twin-depth',
  what: 'Greatest depth with the arm following into the slot',
  expression: 'h_t = A + D / 2 - c',
  symbols: { h_t: { name: 'depth of a twin head', unit: 'mm' }, A: { name: 'stop to blade shaft', unit: 'mm' }, D, c },
  source: 'geometry',
};

export const bladeWanted: Formula = {
  id: 'blade-speed/wanted',
  what: 'Blade for the depth wanted',
  expression: 'D_w = 2 * (h_w + c) + F',
  symbols: { D_w: { name: 'blade needed', unit: 'mm' }, h_w: { name: 'depth wanted', unit: 'mm' }, c, F },
  source: 'geometry',
};

export const lengthAtSurface: Formula = {
  id: 'blade-speed/length',
  what: 'Length of the cut at the surface, saw standing still',
  expression: 'l = 2 * sqrt(h * (D - h))',
  symbols: { l: { name: 'length at the surface', unit: 'mm' }, h, D },
  source: 'geometry',
};
