import type { Formula, SymbolSpec } from '../../contract/formula.ts';

const ppm = (name: string): SymbolSpec => ({ name, unit: 'ppm' });
const minutes = (name: string): SymbolSpec => ({ name, unit: 'min' });
const meters = (name: string): SymbolSpec => ({ name, unit: 'm' });

function formula(
  id: string,
  what: string,
  expression: string,
  symbols: Readonly<Record<string, SymbolSpec>>,
  source: string,
): Formula {
  return { id: `fume-room/${id}`, what, expression, symbols, source };
}

const V: SymbolSpec = { name: 'air in the room', unit: 'm3' };
const n: SymbolSpec = { name: 'air changes', unit: '1/h' };
const G: SymbolSpec = { name: 'carbon monoxide given off', unit: 'm3/h' };
const rho: SymbolSpec = { name: 'density of carbon monoxide', unit: 'kg/m3' };
const C_s = ppm('where it ends');
const t = minutes('time');

export const volume = formula(
  'volume',
  'Air in the room',
  'V = l * w * h',
  { V, l: meters('length'), w: meters('width'), h: meters('height') },
  'arithmetic',
);
export const fanChanges = formula(
  'fan-changes',
  'Times the fan changes the air, if all of it reaches every corner',
  'n = Q / V',
  { n, Q: { name: 'air the fan takes out', unit: 'm3/h' }, V },
  'well-mixed-room',
);
export const fromEngine = formula(
  'from-engine',
  'Carbon monoxide from the engine',
  'G = m * P / rho',
  { G, m: { name: 'given off for the work done', unit: 'g/kWh' }, P: { name: 'power', unit: 'kW' }, rho },
  'epa-co-ceilings',
);
export const fromLeak = formula(
  'from-leak',
  'Carbon monoxide coming in',
  'G = g / rho',
  { G, g: { name: 'weight coming in', unit: 'g/h' }, rho },
  'co-density',
);
export const steady = formula(
  'steady',
  'Where it ends, if nothing changes',
  'C_s = G / (n * V)',
  { C_s, G, n, V },
  'well-mixed-room',
);
export const atEnd = formula(
  'at-end',
  'At the end of the run',
  'C = C_s * (1 - exp(-n * t))',
  { C: ppm('carbon monoxide'), C_s, n, t },
  'well-mixed-room',
);
export const atEndShut = formula(
  'at-end-shut',
  'At the end of the run, no fresh air',
  'C = G * t / V',
  { C: ppm('carbon monoxide'), G, t, V },
  'well-mixed-room',
);
export const reaches = formula(
  'reaches',
  'Minutes until the air holds this much',
  't = -log(1 - C_l / C_s) / n',
  { t, C_l: ppm('level'), C_s, n },
  'well-mixed-room',
);
export const reachesShut = formula(
  'reaches-shut',
  'Minutes until the air holds this much, no fresh air',
  't = C_l * V / G',
  { t, C_l: ppm('level'), V, G },
  'well-mixed-room',
);
export const thins = formula(
  'thins',
  'Minutes until the air has thinned to this, if fresh air reaches every corner',
  't = log(C_0 / C_l) / n',
  { t, C_0: ppm('reading'), C_l: ppm('level'), n },
  'well-mixed-room',
);
