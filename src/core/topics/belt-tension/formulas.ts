import type { Formula, SymbolSpec } from '../../contract/formula.ts';

const s = {
  L: { name: 'belt length', unit: 'mm' },
  C: { name: 'center distance', unit: 'mm' },
  D: { name: 'large pulley, pitch diameter', unit: 'mm' },
  d: { name: 'small pulley, pitch diameter', unit: 'mm' },
  S: { name: 'free span', unit: 'mm' },
  theta: { name: 'wrap on the small pulley', unit: '°' },
  theta_D: { name: 'wrap on the large pulley', unit: '°' },
  v: { name: 'belt speed', unit: 'm/s' },
  P: { name: 'engine power', unit: 'kW' },
  P_d: { name: 'design power', unit: 'kW' },
  k_s: { name: 'service factor', unit: '1' },
  z: { name: 'belts or ribs', unit: '1' },
  m: { name: 'mass of one belt or rib', unit: 'g/m' },
  G: { name: 'arc factor', unit: '1' },
  R: { name: 'tight to slack ratio', unit: '1' },
  T_s: { name: 'least static tension', unit: 'N' },
  T_0: { name: 'set tension', unit: 'N' },
  T_c: { name: 'centrifugal tension', unit: 'N' },
  F: { name: 'effective pull of one belt or rib', unit: 'N' },
  T_tight: { name: 'tight side, working', unit: 'N' },
  T_slack: { name: 'slack side, working', unit: 'N' },
  h: { name: 'deflection', unit: 'mm' },
  Y: { name: 'stiffness allowance', unit: 'N' },
  EI: { name: 'bending stiffness', unit: 'N·m2' },
  EA: { name: 'stretch stiffness', unit: 'kN' },
  f: { name: 'frequency', unit: 'Hz' },
} as const satisfies Record<string, SymbolSpec>;

function formula(
  id: string,
  what: string,
  expression: string,
  source: string,
  symbols: Readonly<Record<string, SymbolSpec>>,
): Formula {
  return { id: `belt-tension/${id}`, what, expression, source, symbols };
}

export const pitchDiameter = formula(
  'pitch',
  'Pitch diameter from the outside diameter',
  'd_p = d_o - a',
  'din-2211-grooves',
  {
    d_p: { name: 'pitch diameter', unit: 'mm' },
    d_o: { name: 'outside diameter', unit: 'mm' },
    a: { name: 'outside less pitch diameter of the section', unit: 'mm' },
  },
);
export const wrap = formula(
  'wrap',
  'Wrap on the small pulley',
  'theta = pi - 2 * asin((D - d) / (2 * C))',
  'shigley-belts',
  { theta: s.theta, D: s.D, d: s.d, C: s.C },
);
export const length = formula(
  'length',
  'Belt length',
  'L = sqrt(4 * C^2 - (D - d)^2) + (D * theta_D + d * theta) / 2',
  'shigley-belts',
  { L: s.L, C: s.C, D: s.D, d: s.d, theta: s.theta, theta_D: s.theta_D },
);
export const span = formula('span', 'Free span', 'S = sqrt(C^2 - ((D - d) / 2)^2)', 'geometry', {
  S: s.S,
  C: s.C,
  D: s.D,
  d: s.d,
});
export const speed = formula('speed', 'Belt speed', 'v = pi * d_n * n', 'geometry', {
  v: s.v,
  d_n: { name: 'pitch diameter of the pulley whose speed is known', unit: 'mm' },
  n: { name: 'its speed', unit: 'rpm' },
});
export const design = formula('design-power', 'Power the belt is set for', 'P_d = k_s * P', 'bloch-geitner-v4', {
  P_d: s.P_d,
  k_s: s.k_s,
  P: s.P,
});
export const pull = formula('pull', 'Effective pull of one belt or rib', 'F = P / (z * v)', 'khurmi-machines', {
  F: s.F,
  P: s.P,
  z: s.z,
  v: s.v,
});
export const centrifugal = formula(
  'centrifugal',
  'Centrifugal tension, from the belt’s own mass',
  'T_c = m * v^2',
  'khurmi-machines',
  { T_c: s.T_c, m: s.m, v: s.v },
);
export const arc = formula('arc', 'Arc factor', 'G = 1.25 * (1 - 5^(-theta / pi))', 'machinery-handbook-arc', {
  G: s.G,
  theta: s.theta,
});
export const trade = formula(
  'static',
  'Least static tension, trade formula',
  'T_s = (2.5 - G) / (2 * G) * P_d / (z * v) + T_c',
  'gb-t-13575-1',
  { T_s: s.T_s, G: s.G, P_d: s.P_d, z: s.z, v: s.v, T_c: s.T_c },
);
export const ratio = formula('ratio', 'Tight to slack ratio, 5 at half a turn', 'R = 5^(theta / pi)', 'shigley-belts', {
  R: s.R,
  theta: s.theta,
});
export const capstan = formula(
  'capstan',
  'The same by the capstan law',
  'T_s = P_d / (2 * z * v) * (R + 1) / (R - 1) + T_c',
  'khurmi-machines',
  { T_s: s.T_s, P_d: s.P_d, z: s.z, v: s.v, R: s.R, T_c: s.T_c },
);
export const tight = formula('tight', 'Tight side, working', 'T_tight = T_0 - T_c + F / 2', 'khurmi-machines', {
  T_tight: s.T_tight,
  T_0: s.T_0,
  T_c: s.T_c,
  F: s.F,
});
export const slack = formula('slack', 'Slack side, working', 'T_slack = T_0 - T_c - F / 2', 'khurmi-machines', {
  T_slack: s.T_slack,
  T_0: s.T_0,
  T_c: s.T_c,
  F: s.F,
});
export const pushForce = formula(
  'push',
  'Force at mid-span for the least tension',
  'F_p = 2 * k * (T_0 + Y) * sin(atan(2 * h / S))',
  'bloch-geitner-v4',
  {
    F_p: { name: 'push force', unit: 'N' },
    k: { name: 'ribs pushed at once', unit: '1' },
    T_0: { name: 'static tension', unit: 'N' },
    Y: s.Y,
    h: s.h,
    S: s.S,
  },
);
export const pluck = formula(
  'pluck',
  'Note of the span for the least tension',
  'f = sqrt((T_0 + pi^2 * EI / S^2) / m) / (2 * S)',
  'blevins-modes',
  { f: s.f, T_0: { name: 'static tension', unit: 'N' }, EI: s.EI, S: s.S, m: s.m },
);
export const marks = formula(
  'stretch',
  'Stretch between the marks for the least tension',
  'x = l * T_0 / EA',
  'geometry',
  {
    x: { name: 'stretch', unit: 'mm' },
    l: { name: 'distance of the marks', unit: 'mm' },
    T_0: { name: 'static tension', unit: 'N' },
    EA: s.EA,
  },
);
export const fromPush = formula(
  'from-push',
  'Tension from the push',
  'T_m = F_p / (2 * k * sin(atan(2 * h / S))) - Y',
  'bloch-geitner-v4',
  {
    T_m: { name: 'measured tension', unit: 'N' },
    F_p: { name: 'push force', unit: 'N' },
    k: { name: 'ribs pushed at once', unit: '1' },
    h: s.h,
    S: s.S,
    Y: s.Y,
  },
);
export const setApart = formula('set-apart', 'Tightest less slackest belt of the set', 'dT = T_a - T_b', 'arithmetic', {
  dT: { name: 'difference in the set', unit: 'N' },
  T_a: { name: 'tension of the tightest belt', unit: 'N' },
  T_b: { name: 'tension of the slackest belt', unit: 'N' },
});
export const setAllowed = formula('set-allowed', 'Width of the window', 'dT_w = T_high - T_low', 'arithmetic', {
  dT_w: { name: 'difference that can be set right', unit: 'N' },
  T_high: { name: 'top of the window', unit: 'N' },
  T_low: { name: 'bottom of the window', unit: 'N' },
});
export const fromPluck = formula(
  'from-pluck',
  'Tension from the note',
  'T_m = 4 * m * S^2 * f^2 - pi^2 * EI / S^2',
  'blevins-modes',
  { T_m: { name: 'measured tension', unit: 'N' }, m: s.m, S: s.S, f: s.f, EI: s.EI },
);
export const fromMarks = formula('from-stretch', 'Tension from the stretch', 'T_m = EA * x / l', 'geometry', {
  T_m: { name: 'measured tension', unit: 'N' },
  EA: s.EA,
  x: { name: 'stretch', unit: 'mm' },
  l: { name: 'distance of the marks', unit: 'mm' },
});
export const shaftRest = formula(
  'shaft-static',
  'Pull on each shaft at rest',
  'F_s = 2 * z * T_0 * sin(theta / 2)',
  'gb-t-13575-1',
  { F_s: { name: 'shaft load at rest', unit: 'N' }, z: s.z, T_0: s.T_0, theta: s.theta },
);
export const shaftRun = formula(
  'shaft-running',
  'Pull on each shaft, running',
  'F_r = z * sqrt(T_tight^2 + T_slack^2 - 2 * T_tight * T_slack * cos(theta))',
  'geometry',
  { F_r: { name: 'shaft load, running', unit: 'N' }, z: s.z, T_tight: s.T_tight, T_slack: s.T_slack, theta: s.theta },
);
const overhung = {
  F_r: { name: 'shaft load, running', unit: 'N' },
  a: { name: 'overhang', unit: 'mm' },
  b: { name: 'between the bearings', unit: 'mm' },
} as const;
export const nearBearing = formula(
  'near-bearing',
  'Load on the bearing beside the pulley',
  'F_near = F_r * (a + b) / b',
  'arithmetic',
  { F_near: { name: 'near bearing', unit: 'N' }, ...overhung },
);
export const farBearing = formula(
  'far-bearing',
  'Load on the far bearing, the other way',
  'F_far = F_r * a / b',
  'arithmetic',
  { F_far: { name: 'far bearing', unit: 'N' }, ...overhung },
);
export const wetRatio = formula(
  'wet-ratio',
  'Tight to slack ratio when wet',
  'R_w = 5^(g * theta / pi)',
  'wet-belt-grip',
  { R_w: { name: 'ratio when wet', unit: '1' }, g: { name: 'share of grip left', unit: '1' }, theta: s.theta },
);
export const margin = formula(
  'margin',
  'Pull before it slips, against the pull needed',
  'k_m = 2 * (T_0 - T_c) / F * (R - 1) / (R + 1)',
  'khurmi-machines',
  { k_m: { name: 'slip margin', unit: '1' }, T_0: s.T_0, T_c: s.T_c, F: s.F, R: s.R },
);
export const life = formula(
  'life',
  'Life against the life at the set tension',
  'k_l = (T_set / T_peak)^10.93',
  'shigley-belt-life',
  {
    k_l: { name: 'share of life', unit: '1' },
    T_set: { name: 'peak tension when set right', unit: 'N' },
    T_peak: { name: 'peak tension compared', unit: 'N' },
  },
);
export const takeUp = formula('take-up', 'Center travel to keep for tightening', 'x_t = 0.03 * L', 'iso-155', {
  x_t: { name: 'travel for tightening', unit: 'mm' },
  L: s.L,
});
export const fitting = formula('fitting', 'Center travel to get the belt on', 'x_f = 0.015 * L', 'iso-155', {
  x_f: { name: 'travel for fitting', unit: 'mm' },
  L: s.L,
});
export const turns = formula('turns', 'Turns of the tensioner screw', 'n_t = x_t / p', 'arithmetic', {
  n_t: { name: 'turns', unit: '1' },
  x_t: { name: 'travel', unit: 'mm' },
  p: { name: 'thread pitch', unit: 'mm' },
});
export const move = formula(
  'move',
  'Center movement that makes up the tension',
  'x_m = L * (T_0 - T_m) / (2 * EA * sin(theta / 2))',
  'geometry',
  {
    x_m: { name: 'center movement', unit: 'mm' },
    L: s.L,
    T_0: s.T_0,
    T_m: { name: 'measured tension', unit: 'N' },
    EA: s.EA,
    theta: s.theta,
  },
);
export const stress = formula(
  'belt-stress',
  'Stress in the belt, tight side, from the work alone',
  's_b = (F * R / (R - 1) + T_c) / A_b',
  'jindal-design',
  {
    s_b: { name: 'stress in the belt', unit: 'MPa' },
    F: s.F,
    R: s.R,
    T_c: s.T_c,
    A_b: { name: 'cross-section of one belt', unit: 'mm2' },
  },
);
