import type { Formula, SymbolSpec } from '../../contract/formula.ts';

const um = (name: string): SymbolSpec => ({ name, unit: 'µm' });
const mm = (name: string): SymbolSpec => ({ name, unit: 'mm' });
const one = (name: string): SymbolSpec => ({ name, unit: '1' });
const mpa = (name: string): SymbolSpec => ({ name, unit: 'MPa' });
const gpa = (name: string): SymbolSpec => ({ name, unit: 'GPa' });
const source = 'shigley-press-fits';
const [d, L, p, kh, ks] = [
  mm('diameter of the joint'),
  mm('length of the joint'),
  mpa('pressure'),
  one('hub shape factor'),
  one('shaft shape factor'),
];

export const smoothed: Formula = {
  id: 'press-fit/smoothed',
  what: 'Interference left after smoothing',
  expression: 'delta_e = delta - 0.8 * (R_s + R_h)',
  symbols: {
    delta_e: um('interference that counts'),
    delta: um('interference measured'),
    R_s: um('roughness depth of the inner part'),
    R_h: um('roughness depth of the bore'),
  },
  source: 'din-7190-smoothing',
};
export const hubShape: Formula = {
  id: 'press-fit/hub-shape',
  what: 'Shape of the outer part',
  expression: 'k_h = (D_o^2 + d^2) / (D_o^2 - d^2)',
  symbols: { k_h: kh, D_o: mm('outside of the outer part'), d },
  source,
};
export const shaftShape: Formula = {
  id: 'press-fit/shaft-shape',
  what: 'Shape of the inner part',
  expression: 'k_s = (d^2 + d_i^2) / (d^2 - d_i^2)',
  symbols: { k_s: ks, d, d_i: mm('hole through the inner part') },
  source,
};
export const facePressure: Formula = {
  id: 'press-fit/pressure',
  what: 'Pressure between the parts, tightest pair',
  expression: 'p = delta_e / (d * ((k_h + nu_h) / E_h + (k_s - nu_s) / E_s))',
  symbols: {
    p,
    delta_e: um('interference that counts'),
    d,
    k_h: kh,
    nu_h: one("Poisson's ratio, outer"),
    E_h: gpa("Young's modulus, outer"),
    k_s: ks,
    nu_s: one("Poisson's ratio, inner"),
    E_s: gpa("Young's modulus, inner"),
  },
  source,
};
export const hubStress: Formula = {
  id: 'press-fit/hub-stress',
  what: 'Pull round the bore of the outer part',
  expression: 'sigma_h = p * k_h',
  symbols: { sigma_h: mpa('hoop stress'), p, k_h: kh },
  source,
};
export const yieldShare: Formula = {
  id: 'press-fit/yield-share',
  what: 'Share of the yield strength used in the outer part (maximum shear)',
  expression: 'x = p * (k_h + 1) / R_e',
  symbols: { x: one('share of yield'), p, k_h: kh, R_e: mpa('yield strength') },
  source,
};
export const pressForce: Formula = {
  id: 'press-fit/force',
  what: 'Most force to push it in',
  expression: 'F = mu_h * pi * d * L * p',
  symbols: { F: { name: 'force', unit: 'kN' }, mu_h: one('highest friction'), d, L, p },
  source,
};
export const heldTorque: Formula = {
  id: 'press-fit/torque',
  what: 'Torque the loosest pair surely holds',
  expression: 'T = mu_l * pi * d^2 * L * p_l / 2',
  symbols: {
    T: { name: 'torque', unit: 'N·m' },
    mu_l: one('lowest friction'),
    d,
    L,
    p_l: mpa('pressure of the loosest pair'),
  },
  source,
};
