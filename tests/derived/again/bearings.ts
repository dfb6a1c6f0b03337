/** Seats, rings, heat and life, from the rules their cases name. */
import { n, rows, text, type Inputs, type Sums } from './inputs.ts';

/** Limits in micrometers, lower and upper, read off ISO 286-2 for the sizes of the cases. */
const seats: Readonly<Record<string, readonly [number, number]>> = {
  ...{ '25 k5': [2, 11], '35 k5': [2, 13], '35 m5': [9, 20], '42 H7': [0, 25], '47 N7': [-33, -8], '52 N7': [-39, -9] },
  ...{
    '52 P7': [-51, -21],
    '52 M7': [-30, 0],
    '62 J7': [-12, 18],
    '62 K6': [-15, 4],
    '72 H7': [0, 30],
    '80 P7': [-51, -21],
  },
};
/** ISO 492, Normal class: bore to 30 and 50 mm, outside to 50 and 80 mm. */
const ringLow = (seat: unknown, size: number) => (seat === 'shaft' ? (size <= 30 ? -10 : -12) : size <= 50 ? -11 : -13);

/** IT grades [µm] (ISO 286-1, Table 1). */
const grades: Readonly<Record<string, number>> = {
  '25 js7': 21,
  '25 js6': 13,
  '40 js9': 62,
  '40 js7': 25,
  '100 js9': 87,
};

function fit(i: Inputs) {
  const [low, high] = seats[`${n(i, 'size')} ${text(i, 'zone')}`] ?? [NaN, NaN];
  const ring = ringLow(i['seat'], n(i, 'size'));
  return i['seat'] === 'shaft' ? { most: high - ring, least: low } : { most: -low, least: ring - high };
}

/** Bore, outside, width [mm] (ISO 15, dimension series 18, 10, 02 and 03). */
const sizes: Readonly<Record<string, readonly [number, number, number]>> = {
  '61805': [25, 37, 7],
  ...{ '6003': [17, 35, 10], '6004': [20, 42, 12], '6005': [25, 47, 12], '6006': [30, 55, 13] },
  ...{ '6203': [17, 40, 12], '6204': [20, 47, 14], '6205': [25, 52, 15], '6206': [30, 62, 16] },
  ...{ '6303': [17, 47, 14], '6304': [20, 52, 15], '6305': [25, 62, 17], '6306': [30, 72, 19] },
};

/** Callister, Table B.6 [µm/(m·K)]. */
const grows: Readonly<Record<string, number>> = { 'aluminium-wrought': 23.6, magnesium: 26, 'grey-iron': 11.4 };

/** Lamé: two tubes of different stuff, one pressed into the other; micrometers and gigapascals in, megapascals out. */
function pressed(d: number, D: number, hole: number, Eo: number, nuo: number, Ei: number, nui: number, delta: number) {
  const ko = (D * D + d * d) / (D * D - d * d);
  const ki = (d * d + hole * hole) / (d * d - hole * hole);
  const p = delta / (d * ((ko + nuo) / Eo + (ki - nui) / Ei));
  return { p: Number.isFinite(ko) ? p : delta / (d * ((1 + nuo) / Eo + (ki - nui) / Ei)), ko, ki };
}

/** ISO 281: the life factor, for a viscosity ratio of 0.1 and more. */
function lifeFactor(kappa: number, clean: number): number {
  const k = Math.min(kappa, 4);
  const term = k < 0.4 ? 2.2649 / k ** 0.054381 : 1.9987 / k ** (k < 1 ? 0.19087 : 0.071739);
  const b = 1 - (2.5671 - term) ** 0.83 * Math.cbrt(clean);
  return b <= 0 ? 50 : Math.min(50, 0.1 / b ** 9.3);
}

export const sums: Sums = {
  'bearing-fit/fit': fit,
  // js is half of the grade on either side; rounded, an odd half goes down to the whole micrometer (ISO 286-1).
  'limits-fits': (i) => {
    const grade = grades[`${n(i, 'size')} ${text(i, 'zone').toLowerCase()}`];
    if (grade === undefined) return {};
    const half = i['halves'] === 'rounded' && /[7-9]$/.test(text(i, 'zone')) ? Math.floor(grade / 2) : grade / 2;
    return { upper: half, lower: -half };
  },
  // H7 and s6 (ISO 286-2).
  'limits-fits/fit': (i) => {
    const [H7, s6, IT6] = n(i, 'size') === 50 ? [25, 43, 16] : [90, 470, 56];
    return { most: s6 + IT6, least: s6 - H7, mean: (s6 + IT6 + s6 - H7) / 2 };
  },
  'bearing-fit': (i) => {
    const { most, least } = fit(i);
    const places = rows(i, 'readings').map((r) => [n(r, 'across'), n(r, 'quarter')] as const);
    if (places.length === 0)
      return {
        interference: (most + least) / 2,
        warmRise: (most + 20) / (grows[text(i, 'material')] ?? NaN) / (n(i, 'size') / 1000),
      };
    const means = places.map(([a, b]) => (a + b) / 2);
    const ring = n(i, 'ring', n(i, 'size') + ringLow(i['seat'], n(i, 'size')) / 2000);
    const mean = means.reduce((a, b) => a + b) / means.length;
    return {
      taper: (Math.max(...means) - Math.min(...means)) * 1000,
      outOfRound: Math.max(...places.map(([a, b]) => Math.abs(a - b))) * 1000,
      interference: (i['seat'] === 'shaft' ? mean - ring : ring - mean) * 1000,
    };
  },
  // ISO 281: nu1 = 45000 n^-0.83 D^-0.5 below 1000 rpm, 4500 n^-0.5 D^-0.5 from there.
  'bearing-life/reference-viscosity': (i) => {
    const N = n(i, 'speed');
    return { viscosity: (N < 1000 ? 45000 * N ** -0.83 : 4500 / Math.sqrt(N)) / Math.sqrt(n(i, 'pitch')) };
  },
  'bearing-life/life-factor': (i) => ({ factor: lifeFactor(n(i, 'kappa'), n(i, 'clean')) }),
  'bearing-life/basic-life': (i) => ({
    millions: (n(i, 'dynamicRating') / n(i, 'load')) ** (i['rolling'] === 'roller' ? 10 / 3 : 3),
  }),
  'bearing-life/rating-needed': (i) => ({
    rating: (n(i, 'load') / 1000) * n(i, 'millions') ** (i['rolling'] === 'roller' ? 0.3 : 1 / 3),
  }),
  // Shigley, Table 11-6, ball bearings: x0 0.02, theta 4.459, b 1.483.
  'bearing-life/rating-for-reliability': (i) => {
    const life = 0.02 + 4.439 * (-Math.log(n(i, 'reliability'))) ** (1 / 1.483);
    return { rating: n(i, 'load') * Math.cbrt(n(i, 'millions') / life) };
  },
  'bearing-size/find': (i) => {
    const off = ([d, D, B]: readonly [number, number, number]) =>
      Math.max(Math.abs(n(i, 'bore') - d), Math.abs(n(i, 'outside') - D), Math.abs(n(i, 'width') - B));
    const fits = Object.entries(sizes).filter(([, size]) => off(size) <= 0.3);
    return { designation: fits[0]?.[0] ?? 'none', count: fits.length };
  },
  // A radial gap is the middle of its row: C3 at 25 mm, 13 to 28 (ISO 5753-1).
  'bearing-size': () => ({ nominalBore: 25, nominalOutside: 52, nominalWidth: 15, clearance: (13 + 28) / 2 }),
  // Definition of expansion: (I + c) / (alpha d), micrometers over micrometers a kelvin.
  'warming/rise': (i) => ({
    change: (n(i, 'interference') + n(i, 'gap', 0)) / (n(i, 'alpha') * 1e-3 * n(i, 'diameter')),
  }),
  'warming/warm-loss': (i) => ({ loss: n(i, 'diameter') * 1e-3 * (n(i, 'housing') - n(i, 'ring')) * n(i, 'rise') }),
  // A bearing-steel ring, 12.5 µm/(m·K), from a room of 20 °C: sealed to 80, open to 250 °F.
  warming: (i) => {
    const t = 20 + (n(i, 'interference') + n(i, 'gap')) / (12.5e-3 * n(i, 'diameter'));
    const most = i['sealed'] ? 80 : (250 - 32) / 1.8;
    return { warmVerdict: t <= most ? 'warm-ring-ok' : i['sealed'] ? 'warm-sealed-over' : 'warm-ring-over' };
  },
  'press-fit/pressure': (i) => {
    const { p, ko } = pressed(
      ...([n(i, 'diameter'), n(i, 'hubOutside'), n(i, 'shaftBore', 0), n(i, 'hubE'), n(i, 'hubNu')] as const),
      ...([n(i, 'shaftE'), n(i, 'shaftNu'), n(i, 'interference')] as const),
    );
    return { pressure: p, hubBore: p * ko };
  },
  'press-fit/grip': (i) => {
    const force = Math.PI * n(i, 'diameter') * n(i, 'length') * n(i, 'pressure') * n(i, 'friction');
    return { force: force / 1000, torque: (force * n(i, 'diameter')) / 2000 };
  },
  // Carbon steel throughout: 207 GPa, 0.292 (Shigley, Table A-5).
  'press-fit': (i) => {
    const [d, D, hole] = [n(i, 'diameter'), n(i, 'hubOutside'), n(i, 'shaftBore')];
    const { p, ko } = pressed(d, D, hole, 207, 0.292, 207, 0.292, n(i, 'most'));
    return { pressure: p, hubHoop: p * ko };
  },
  'running-clearance/inner-growth': (i) => {
    const [d, F] = [n(i, 'diameter'), n(i, 'raceway')];
    const { p } = pressed(
      d,
      F,
      n(i, 'shaftBore', 0),
      n(i, 'ringE'),
      n(i, 'ringNu'),
      n(i, 'otherE'),
      n(i, 'otherNu'),
      n(i, 'interference'),
    );
    return { growth: (2 * p * d * d * F) / (n(i, 'ringE') * (F * F - d * d)) };
  },
  'running-clearance/outer-shrink': (i) => {
    const [D, G] = [n(i, 'diameter'), n(i, 'raceway')];
    const { p } = pressed(
      D,
      n(i, 'housingOutside', Infinity),
      G,
      n(i, 'otherE'),
      n(i, 'otherNu'),
      n(i, 'ringE'),
      n(i, 'ringNu'),
      n(i, 'interference'),
    );
    return { shrink: (2 * p * D * D * G) / (n(i, 'ringE') * (D * D - G * G)) };
  },
  'running-clearance/heat-loss': (i) => ({ loss: n(i, 'alpha') * n(i, 'raceway') * 1e-3 * n(i, 'difference') }),
  // Least clearance of the group (ISO 5753-1 at 25 mm), less the tightest shaft and the tightest cold housing.
  'running-clearance': (i) => {
    const inner = (n(i, 'shaftMost') * n(i, 'bore')) / n(i, 'innerRaceway');
    const [D, G] = [n(i, 'outside'), n(i, 'outerRaceway')];
    const { p } = pressed(D, n(i, 'housingOutside', Infinity), G, 71, 0.33, 208, 0.3, Math.max(0, n(i, 'housingMost')));
    return { coldLeast: (i['group'] === 'C3' ? 13 : 5) - inner - (2 * p * D * D * G) / (208 * (D * D - G * G)) };
  },
};
