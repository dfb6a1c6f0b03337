import type { Formula } from '../../contract/formula.ts';

const mm = (name: string) => ({ name, unit: 'mm' }) as const;

export const difference: Formula = {
  id: 'bearing-size/difference',
  what: 'Largest difference between the readings and the bearing named',
  expression: 'u = max(abs(d_r - d), abs(D_r - D), abs(B_r - B))',
  symbols: {
    u: mm('largest difference'),
    d_r: mm('bore read'),
    d: mm('bore'),
    D_r: mm('outside read'),
    D: mm('outside'),
    B_r: mm('width read'),
    B: mm('width'),
  },
  source: 'arithmetic',
};
export const smallestBore: Formula = {
  id: 'bearing-size/smallest-bore',
  what: 'Smallest mean bore of the class',
  expression: 'd_min = d + t_d',
  symbols: { d_min: mm('smallest bore'), d: mm('bore'), t_d: { name: 'lower deviation of the bore', unit: 'µm' } },
  source: 'iso-492',
};
export const smallestOutside: Formula = {
  id: 'bearing-size/smallest-outside',
  what: 'Smallest mean outside diameter of the class',
  expression: 'D_min = D + t_D',
  symbols: {
    D_min: mm('smallest outside diameter'),
    D: mm('outside diameter'),
    t_D: { name: 'lower deviation of the outside diameter', unit: 'µm' },
  },
  source: 'iso-492',
};
