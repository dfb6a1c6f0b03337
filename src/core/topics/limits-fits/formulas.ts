import type { Formula, SymbolSpec } from '../../contract/formula.ts';

const um = (name: string): SymbolSpec => ({ name, unit: 'µm' });
const tolerance = um('standard tolerance of the grade');
const source = 'iso-286-1';

export const shaftLower: Formula = {
  id: 'limits-fits/shaft-lower',
  what: 'Lower limit deviation of the shaft',
  expression: 'ei = es - IT',
  symbols: { ei: um('lower limit deviation'), es: um('upper limit deviation, from the table'), IT: tolerance },
  source,
};
export const shaftUpper: Formula = {
  id: 'limits-fits/shaft-upper',
  what: 'Upper limit deviation of the shaft',
  expression: 'es = ei + IT',
  symbols: { es: um('upper limit deviation'), ei: um('lower limit deviation, from the table'), IT: tolerance },
  source,
};
export const holeUpper: Formula = {
  id: 'limits-fits/hole-upper',
  what: 'Upper limit deviation of the hole',
  expression: 'ES = EI + IT',
  symbols: { ES: um('upper limit deviation'), EI: um('lower limit deviation, from the table'), IT: tolerance },
  source,
};
export const holeFromShaft: Formula = {
  id: 'limits-fits/hole-from-shaft',
  what: 'Upper limit deviation of the hole, from the shaft of the same letter',
  expression: 'ES = Delta - ei',
  symbols: {
    ES: um('upper limit deviation'),
    Delta: um('delta of the grade, from the table'),
    ei: um('lower limit deviation of that shaft'),
  },
  source,
};
export const holeLower: Formula = {
  id: 'limits-fits/hole-lower',
  what: 'Lower limit deviation of the hole',
  expression: 'EI = ES - IT',
  symbols: { EI: um('lower limit deviation'), ES: um('upper limit deviation'), IT: tolerance },
  source,
};
export const halfTolerance: Formula = {
  id: 'limits-fits/half',
  what: 'Half the tolerance to either side',
  expression: 'h_t = IT / 2',
  symbols: { h_t: um('limit deviation, up and down'), IT: tolerance },
  source,
};
export const largestPart: Formula = {
  id: 'limits-fits/largest',
  what: 'Largest part allowed',
  expression: 'D_max = D + a_u',
  symbols: {
    D_max: { name: 'largest size', unit: 'mm' },
    D: { name: 'nominal size', unit: 'mm' },
    a_u: um('upper limit deviation'),
  },
  source,
};
export const smallestPart: Formula = {
  id: 'limits-fits/smallest',
  what: 'Smallest part allowed',
  expression: 'D_min = D + a_l',
  symbols: {
    D_min: { name: 'smallest size', unit: 'mm' },
    D: { name: 'nominal size', unit: 'mm' },
    a_l: um('lower limit deviation'),
  },
  source,
};
export const mostInterference: Formula = {
  id: 'limits-fits/most',
  what: 'Tightest pair (below zero: clearance)',
  expression: 'I_max = es - EI',
  symbols: {
    I_max: um('most interference'),
    es: um('upper limit deviation of the shaft'),
    EI: um('lower limit deviation of the hole'),
  },
  source,
};
export const leastInterference: Formula = {
  id: 'limits-fits/least',
  what: 'Loosest pair (below zero: clearance)',
  expression: 'I_min = ei - ES',
  symbols: {
    I_min: um('least interference'),
    ei: um('lower limit deviation of the shaft'),
    ES: um('upper limit deviation of the hole'),
  },
  source,
};
