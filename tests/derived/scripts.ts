/**
 * The sums behind the derived cases, written anew from the rule each case names; nothing of the core is used.
 * In: the figures of a case in the metric unit of each field, where all of them are plain numbers. Out: its expected figures.
 */
type Sum = (i: Readonly<Record<string, number>>) => Readonly<Record<string, number>>;

const n = (i: Readonly<Record<string, number>>, key: string, otherwise = NaN): number => i[key] ?? otherwise;

export const sums: Readonly<Record<string, Sum>> = {
  // Definition of expansion: (I + c) / (alpha d), micrometers over micrometers a kelvin.
  'warming/rise': (i) => ({
    change: (n(i, 'interference') + n(i, 'gap', 0)) / (n(i, 'alpha') * 1e-3 * n(i, 'diameter')),
  }),
  'warming/warm-loss': (i) => ({ loss: n(i, 'diameter') * 1e-3 * (n(i, 'housing') - n(i, 'ring')) * n(i, 'rise') }),
  // A cone: half the gap over the tangent of half the angle.
  'split-pulley/climb': (i) => ({ radius: n(i, 'gap') / 2 / Math.tan((n(i, 'angle') * Math.PI) / 360) }),
  'split-pulley/loop': (i) => ({ turns: n(i, 'length') / (2 * Math.PI * n(i, 'radius')) }),
  // v = pi D n.
  'blade-speed/surface-speed': (i) => ({ speed: (Math.PI * n(i, 'diameter') * n(i, 'rotation')) / 60_000 }),
  'blade-speed/cut-depth': (i) => ({ depth: (n(i, 'diameter') - n(i, 'flange')) / 2 - n(i, 'clearance', 0) }),
  // U.S. Standard Atmosphere, 1976: 6.5 K a kilometer up to 11 km.
  'compression-check/standard-atmosphere': (i) => ({
    pressure: 101.325 * (1 - (0.0065 * n(i, 'height')) / 288.15) ** ((9.80665 * 0.0289644) / (8.31432 * 0.0065)),
  }),
  // An ideal gas that keeps its temperature; liters a minute out of cubic centimeters and seconds.
  'compression-check/crankcase-leak': (i) => ({
    flow: ((n(i, 'volume') / 1000) * n(i, 'fall') * 60) / (n(i, 'air', 101.325) * n(i, 'time')),
  }),
  'compression-check/air-taken': (i) => ({ flow: (n(i, 'swept') / 1000) * n(i, 'rotation') * n(i, 'delivery') }),
  // 0.0035 to 0.0045 in for each inch of bore.
  'compression-check/ring-gap': (i) => ({ least: 0.0035 * n(i, 'bore'), most: 0.0045 * n(i, 'bore') }),
  // The circumference grows pi times as much as the diameter, and with heat by its own length.
  'compression-check/ring-gap-growth': (i) => ({ gap: Math.PI * n(i, 'growth') }),
  'compression-check/ring-gap-heat': (i) => ({
    gap: Math.PI * n(i, 'bore') * n(i, 'alpha', 11) * 1e-6 * n(i, 'rise'),
  }),
  'fuel-mix/oil-for-fuel': (i) => ({ oil: (1000 * n(i, 'fuel')) / n(i, 'ratio') }),
  // Weibull with an age already reached.
  'repair-worth/weibull-survival': (i) => {
    const h = (t: number) => (t / n(i, 'scale')) ** n(i, 'shape');
    return { survives: Math.exp(h(n(i, 'age', 0)) - h(n(i, 'age', 0) + n(i, 'time'))) };
  },
  // Inner ring on a solid shaft of the same steel: delta d / F.
  'running-clearance/heat-loss': (i) => ({ loss: n(i, 'alpha') * n(i, 'raceway') * 1e-3 * n(i, 'difference') }),
};

/** What one of a typed unit is in the metric unit of its field; exact by definition (NIST SP 811, appendix B). */
const inMetric: Readonly<Record<string, number>> = {
  mm: 1,
  cm: 10,
  m: 1,
  in: 25.4,
  L: 1,
  gal: 3.785411784,
  rpm: 1,
  '°': 1,
  cm3: 1,
  kPa: 1,
  psi: 6.894757293168,
  s: 1,
  min: 60,
};
/** What one metric unit is in the unit a case expects. */
const fromMetric: Readonly<Record<string, number>> = {
  'm/s': 1,
  'ft/min': 60 / 0.3048,
  in: 1 / 25.4,
  'fl oz': 1 / 29.5735295625,
};

/** "4 1/2 in" -> 114.3; undefined for what this small reader does not know. */
export function metric(typed: unknown): number | undefined {
  if (typeof typed === 'number') return typed;
  const parts = typeof typed === 'string' ? /^([\d.]+)(?: (\d+)\/(\d+))? (\S+)$/.exec(typed) : undefined;
  const unit = inMetric[parts?.[4] ?? ''];
  if (!parts || unit === undefined) return undefined;
  return (Number(parts[1]) + (parts[2] ? Number(parts[2]) / Number(parts[3]) : 0)) * unit;
}

/** Factor from the metric unit of an output to the one a case expects. */
export function outIn(unit: string | undefined): number | undefined {
  return unit === undefined ? 1 : fromMetric[unit];
}
