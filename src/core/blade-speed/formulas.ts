import type { Formula } from '../formula.ts';

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
  symbols: {
    v: { name: 'surface speed', unit: 'm/s' },
    D: { name: 'blade diameter', unit: 'mm' },
    n_b: { name: 'blade-shaft speed', unit: 'rpm' },
  },
  source: 'masonry-magazine-2004',
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
  symbols: {
    h: { name: 'depth of cut', unit: 'mm' },
    D: { name: 'blade diameter', unit: 'mm' },
    F: { name: 'part that meets the work first', unit: 'mm' },
    c: { name: 'gap kept', unit: 'mm' },
  },
  source: 'geometry',
};
