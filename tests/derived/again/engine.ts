/** Compression, height and fuel, from the rules their cases name. */
import { n, root, type Sums } from './inputs.ts';

/** U.S. Standard Atmosphere, 1976: 6.5 K a kilometer up to 11 km [kPa]. */
const air = (meters: number) =>
  101.325 * (1 - (0.0065 * meters) / 288.15) ** ((9.80665 * 0.0289644) / (8.31432 * 0.0065));

export const sums: Sums = {
  'compression-check/standard-atmosphere': (i) => ({ pressure: air(n(i, 'height')) }),
  'compression-check/gauge-at-height': (i) => ({ gauge: (n(i, 'gauge') * air(n(i, 'height'))) / air(0) }),
  // A carburetor meters by the root of the density.
  'compression-check/mixture': (i) => {
    const density = (kPa: number, celsius: number) => kPa / (celsius + 273.15);
    const thinner = density(n(i, 'to'), n(i, 'toTemperature')) / density(n(i, 'from'), n(i, 'fromTemperature'));
    return { airFuel: n(i, 'airFuel') * Math.sqrt(thinner) };
  },
  'compression-check': (i) => ({
    expected: (n(i, 'healthy') * air(n(i, 'height', 0))) / air(0),
    share: (n(i, 'reading') / n(i, 'healthy')) * 100,
    // Isothermal loss, as litres a minute; a ring's gap is its rule, and what pi times the wear of the bore adds.
    tenth: (n(i, 'pumped') / 10 / n(i, 'lost')) * n(i, 'watched'),
    flow: ((n(i, 'space') / 1000) * (n(i, 'lost') / 101.325) * 60) / n(i, 'watched'),
    gapLeast: 0.0035 * n(i, 'bore'),
    gapMost: 0.0045 * n(i, 'bore'),
    gapWidest: 0.0045 * n(i, 'bore') + Math.PI * 0.005 * 25.4,
  }),
  // Polytropic, exponent 1.3, 0.7 of the stroke trapped: the chamber that gives the dry reading, then the same with oil in it.
  'compression-check/reading-with-oil': (i) => {
    const trapped = 0.7 * n(i, 'swept');
    const gauge = (chamber: number) => n(i, 'air') * (((trapped + chamber) / chamber) ** 1.3 - 1);
    const chamber = root((v) => gauge(v) - n(i, 'gauge'), 0.01, 10 * trapped);
    const left = chamber - n(i, 'oil');
    return { chamber, gauge: n(i, 'air') * (((trapped + left) / left) ** 1.3 - 1) };
  },
  // A cylinder of air in the hose, added to the chamber that gives the true reading.
  'compression-check/reading-through-hose': (i) => {
    const trapped = 0.7 * n(i, 'swept');
    const hose = ((Math.PI / 4) * n(i, 'bore') ** 2 * n(i, 'length')) / 1000;
    const chamber = root((v) => ((trapped + v) / v) ** 1.3 - 1 - n(i, 'gauge') / n(i, 'air'), 0.01, 10 * trapped);
    const gauge = n(i, 'air') * (((trapped + chamber + hose) / (chamber + hose)) ** 1.3 - 1);
    return { hose, gauge, low: (1 - gauge / n(i, 'gauge')) * 100 };
  },
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
  'fuel-mix/fuel-for-oil': (i) => ({ fuel: (n(i, 'oil') * n(i, 'ratio')) / 1000 }),
  // Parts of oil and fuel in the can; what is short of either is added.
  'fuel-mix/correction': (i) => {
    const oil = n(i, 'can') / (n(i, 'mixedAt') + 1);
    const fuel = n(i, 'can') - oil;
    return { oil: Math.max(0, fuel / n(i, 'ratio') - oil) * 1000, fuel: Math.max(0, oil * n(i, 'ratio') - fuel) };
  },
  'fuel-mix': (i) => {
    const fuel = i['known'] === 'fuel' ? n(i, 'fuel') : (n(i, 'can') * n(i, 'ratio')) / (n(i, 'ratio') + 1);
    const oilNow = (1000 * n(i, 'can', 0)) / (n(i, 'mixedAt', 0) + 1);
    return { fuel, oil: (1000 * fuel) / n(i, 'ratio'), total: fuel * (1 + 1 / n(i, 'ratio')), oilNow };
  },
};
