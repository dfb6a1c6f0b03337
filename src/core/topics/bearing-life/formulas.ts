import type { Formula, SymbolSpec } from '../../contract/formula.ts';

const one = (name: string): SymbolSpec => ({ name, unit: '1' });
const newton = (name: string): SymbolSpec => ({ name, unit: 'N' });
const kilo = (name: string): SymbolSpec => ({ name, unit: 'kN' });
const visc = (name: string): SymbolSpec => ({ name, unit: 'mm2/s' });
const speed: SymbolSpec = { name: 'speed', unit: 'rpm' };
const P = newton('equivalent load');
const viscosity = (id: string, what: string, power: string): Formula => ({
  id: `bearing-life/${id}`,
  what,
  expression: `nu_1 = nu_r * (n / n_r)^(${power}) * (D_pw / D_r)^(-0.5)`,
  symbols: {
    nu_1: visc('viscosity wanted'),
    nu_r: visc('constant of the standard'),
    n: speed,
    n_r: { name: 'one turn a minute', unit: 'rpm' },
    D_pw: { name: 'mean diameter', unit: 'mm' },
    D_r: { name: 'one millimetre', unit: 'mm' },
  },
  source: 'iso-281',
});

export const radialLoad: Formula = {
  id: 'bearing-life/radial',
  what: 'Radial load on this bearing',
  expression: 'F_r = s * F_b',
  symbols: { F_r: newton('radial load'), s: one('share carried'), F_b: newton('pull of the belts') },
  source: 'arithmetic',
};
export const equivalent: Formula = {
  id: 'bearing-life/equivalent',
  what: 'Equivalent load',
  expression: 'P = X * V * F_r + Y * F_a',
  symbols: {
    P,
    X: one('radial factor'),
    V: one('rotation factor'),
    F_r: newton('radial load'),
    Y: one('axial factor'),
    F_a: newton('push along the shaft'),
  },
  source: 'shigley-ratings',
};
export const basic: Formula = {
  id: 'bearing-life/basic',
  what: 'Basic life: nine in ten reach it',
  expression: 'L = 1000000 * (C / P)^3 / n',
  symbols: { L: { name: 'basic life', unit: 'h' }, C: kilo('dynamic rating'), P, n: speed },
  source: 'iso-281',
};
export const slowViscosity = viscosity('viscosity-slow', 'Viscosity wanted, below 1000 rpm', '-0.83');
export const fastViscosity = viscosity('viscosity-fast', 'Viscosity wanted, from 1000 rpm', '-0.5');
export const ratio: Formula = {
  id: 'bearing-life/kappa',
  what: 'Viscosity ratio',
  expression: 'kappa = nu / nu_1',
  symbols: {
    kappa: one('viscosity ratio'),
    nu: visc('viscosity at running temperature'),
    nu_1: visc('viscosity wanted'),
  },
  source: 'iso-281',
};
export const limitLoad: Formula = {
  id: 'bearing-life/fatigue-limit',
  what: 'Fatigue load limit',
  expression: 'C_u = C_0 / 22',
  symbols: { C_u: newton('fatigue load limit'), C_0: kilo('static rating') },
  source: 'iso-281',
};
export const limitLoadLarge: Formula = {
  id: 'bearing-life/fatigue-limit-large',
  what: 'Fatigue load limit, mean diameter over 100 mm',
  expression: 'C_u = C_0 / 22 * (D_100 / D_pw)^0.5',
  symbols: {
    C_u: newton('fatigue load limit'),
    C_0: kilo('static rating'),
    D_100: { name: 'hundred millimeters', unit: 'mm' },
    D_pw: { name: 'mean diameter', unit: 'mm' },
  },
  source: 'iso-281-memory',
};
export const factor: Formula = {
  id: 'bearing-life/factor',
  what: 'Life factor, better end of the range',
  expression: 'a = min(50, 0.1 * (1 - (2.5671 - c / kappa_e^q)^0.83 * (e_C * C_u / P)^(1/3))^(-9.3))',
  symbols: {
    a: one('life factor'),
    c: one('constant of the branch'),
    kappa_e: one('viscosity ratio, at most 4'),
    q: one('exponent of the branch'),
    e_C: one('cleanliness, 0 to 1'),
    C_u: newton('fatigue load limit'),
    P,
  },
  source: 'iso-281',
};
export const modified: Formula = {
  id: 'bearing-life/modified',
  what: 'Modified life, better end of the range',
  expression: 'L_m = a * L',
  symbols: { L_m: { name: 'modified life', unit: 'h' }, a: one('life factor'), L: { name: 'basic life', unit: 'h' } },
  source: 'iso-281',
};
