/**
 * Figures worked out on the engine pages: the sum is done here anew, with units, and the page must carry its outcome.
 * Formulas are those of geometry, of an ideal gas at one temperature, of the balance of a lever, or of mixing.
 */
import { readFileSync } from 'node:fs';
import { all, create } from 'mathjs';
import { describe, expect, it } from 'vitest';

const math = create(all ?? {});
const knowledge = new URL('../../content/knowledge/', import.meta.url);
const page = (path: string) => readFileSync(new URL(`${path}.mdx`, knowledge), 'utf8').replace(/\s+/g, ' ');
const number = (sum: string): number => Number(math.evaluate(sum));

interface Sum {
  readonly page: string;
  readonly what: string;
  readonly sum: string;
  /** The outcome as it stands on the page, rounded to `digits` decimals. */
  readonly gives: number;
  readonly digits: number;
  readonly says: string;
}

const seat = (mm: number, newtons = 0.06) => `(${newtons} N / (pi * (${mm} mm)^2 / 4)) to kPa`;
/** Gauge reading [bar] of 49 cm³ closed on 9.202, with a hose in the chamber; exponent 1.3 from memory. */
const throughHose = (cm3: number) => `((49 + 9.202 + ${cm3}) / (9.202 + ${cm3}))^1.3 - 1`;
const sums: readonly Sum[] = [
  // p = F r / (r A): spring 0.06 N with arms alike, the pressure that opens the needle on the bench.
  {
    page: 'jobs/diaphragm-carburetor',
    what: 'needle opens, seat of 1.0 mm',
    sum: `number(${seat(1)}, kPa)`,
    gives: 76,
    digits: 0,
    says: '1.0 mm seat opens at 76 kPa (11 psi)',
  },
  {
    page: 'jobs/diaphragm-carburetor',
    what: 'needle opens, seat of 0.55 mm',
    sum: `number(${seat(0.55)}, kPa)`,
    gives: 253,
    digits: 0,
    says: '0.55 mm one at 253 kPa (37 psi)',
  },
  {
    page: 'jobs/diaphragm-carburetor',
    what: 'needle opens, seat of 1.2 mm under a stronger spring',
    sum: `number(${seat(1.2, 0.1)}, kPa)`,
    gives: 88,
    digits: 0,
    says: '0.10 N where that one has 0.06 N, at 88 kPa (13 psi)',
  },
  // (F r_s - p A r_n) / (A_eff r_d): arms 3.5, 3.5 and 8 mm, fuel at 30 kPa on 1 mm, a third of 20 mm works (memory).
  {
    page: 'jobs/diaphragm-carburetor',
    what: 'suction that opens the needle, to the nearest ten',
    sum: `round(number((0.06 N * 3.5 - 30 kPa * pi / 4 * (1 mm)^2 * 3.5) / (pi / 4 * (20 mm)^2 / 3 * 8), Pa) / 10) * 10`,
    gives: 150,
    digits: 0,
    says: 'some 150 Pa (16 mm of water)',
  },
  {
    page: 'jobs/diaphragm-carburetor',
    what: 'the same as water',
    sum: '152.2 / 9.80665',
    gives: 16,
    digits: 0,
    says: '(16 mm of water)',
  },
  {
    page: 'jobs/compression-and-cylinder-check',
    what: 'room in a gauge hose of 3 mm, 400 mm long',
    sum: 'number(pi / 4 * (3 mm)^2 * 400 mm, cm^3)',
    gives: 2.8,
    digits: 1,
    says: '400 mm of 3 mm bore hold 2.8 cm³, nearly a third',
  },
  {
    page: 'jobs/compression-and-cylinder-check',
    what: 'ten bar read through 3.5 cm³ of hose',
    sum: throughHose(3.5),
    gives: 7,
    digits: 0,
    says: '10 bar then read about 7',
  },
  {
    page: 'jobs/recoil-cord',
    what: 'cord of five turns on 60 mm',
    sum: '(5 * pi * 60 + 150) / 1000',
    gives: 1.09,
    digits: 2,
    says: 'make 1.09 m',
  },
  // Q = V dp / (p t), air of one temperature.
  {
    page: 'jobs/crankcase-leak-test',
    what: 'one psi lost in a minute',
    sum: 'number(250 cm^3 * 1 psi / (101.325 kPa * 60 s), cm^3/s)',
    gives: 0.28,
    digits: 2,
    says: '0.28 cm³/s',
  },
  {
    page: 'jobs/crankcase-leak-test',
    what: 'seven psi lost in a second',
    sum: 'number(250 cm^3 * 7 psi / (101.325 kPa * 1 s), cm^3/s)',
    gives: 119,
    digits: 0,
    says: '119 cm³/s, **a fifth**',
  },
  // Air of a two-stroke: volume times turns times delivery ratio, 0.2 at idle and 0.7 in full flow (assumed).
  {
    page: 'jobs/crankcase-leak-test',
    what: 'air at idle',
    sum: '70 * 2700 / 60 * 0.2',
    gives: 630,
    digits: 0,
    says: 'some 630 cm³/s',
  },
  { page: 'jobs/crankcase-leak-test', what: 'share of it', sum: '119.1 / 630', gives: 0.2, digits: 1, says: 'a fifth' },
  {
    page: 'jobs/ignition',
    what: 'spark shifted by half a key',
    sum: '1 / (pi * 15) * 360',
    gives: 7.6,
    digits: 1,
    says: '7.6°',
  },
  { page: 'jobs/top-end', what: 'gap at the bore limit', sum: '0.127 * pi', gives: 0.4, digits: 2, says: '0.40 mm' },
  {
    page: 'jobs/top-end',
    what: 'gap closed by heat',
    sum: 'pi * 50 * 11e-6 * 100',
    gives: 0.17,
    digits: 2,
    says: '0.17 mm at 50 mm bore and 100 K',
  },
  {
    page: 'jobs/top-end',
    what: 'least gap of 50 mm',
    sum: '50 * 0.0035 + 1e-9',
    gives: 0.18,
    digits: 2,
    says: '0.18 to 0.23 mm',
  },
  {
    page: 'jobs/top-end',
    what: 'most gap of 50 mm',
    sum: '50 * 0.0045 + 1e-9',
    gives: 0.23,
    digits: 2,
    says: '0.18 to 0.23 mm',
  },
  {
    page: 'jobs/fuel-path-and-tank-vent',
    what: 'water that splits a tank of 10 % ethanol: 3.06 teaspoons a US gallon of 768',
    sum: '700 * 3.06 / 768',
    gives: 3,
    digits: 0,
    says: '**3 mL**',
  },
  {
    page: 'tables/two-stroke-figures',
    what: 'water held at 15 % ethanol: 6.47 teaspoons a US gallon of 768',
    sum: '100 * 6.47 / 768',
    gives: 0.84,
    digits: 2,
    says: 'E15 0.84 %',
  },
  {
    page: 'jobs/four-stroke-service',
    what: 'droop of the governor',
    sum: '(3750 - 3600) / 3600 * 100',
    gives: 4.2,
    digits: 1,
    says: '4.2 %',
  },
  {
    page: 'jobs/four-stroke-service',
    what: 'thirty degrees of a 0.75 mm screw',
    sum: '0.75 * 30 / 360',
    gives: 0.06,
    digits: 2,
    says: '0.06 mm',
  },
  {
    page: 'jobs/muffler-and-spark-arrestor',
    what: 'opening of the screen',
    sum: '0.0232 * 25.4',
    gives: 0.59,
    digits: 2,
    says: '0.0232 in (0.59 mm)',
  },
  // 26.46 m³ an hour with 0.1 g in each, and a filter that keeps 99 %.
  {
    page: 'explainers/why-dust-kills-an-engine',
    what: 'dust that arrives',
    sum: '70e-6 * 9000 * 60 * 0.7 * 0.1',
    gives: 2.6,
    digits: 1,
    says: '2.6 g',
  },
  {
    page: 'explainers/why-dust-kills-an-engine',
    what: 'dust that goes through',
    sum: '2.646 * 0.01',
    gives: 0.03,
    digits: 2,
    says: '0.03 g',
  },
  {
    page: 'explainers/why-dust-kills-an-engine',
    what: 'with one percent past the seat',
    sum: '2.646 * (0.99 * 0.01 + 0.01)',
    gives: 0.05,
    digits: 2,
    says: '0.05 g',
  },
  {
    page: 'explainers/why-dust-kills-an-engine',
    what: 'with a tenth through a hole',
    sum: '2.646 * (0.9 * 0.01 + 0.1)',
    gives: 0.29,
    digits: 2,
    says: '0.29 g',
  },
  {
    page: 'explainers/why-dust-kills-an-engine',
    what: 'one percent past a 99.95 % element',
    sum: '(0.99 * 0.0005 + 0.01) / 0.0005',
    gives: 21,
    digits: 0,
    says: '**21 times**',
  },
  ...(
    [
      [50, 20, 2.6],
      [40, 25, 3.2],
      [32, 31, 4.0],
      [25, 40, 5.1],
    ] as const
  ).flatMap(([ratio, milliliters, ounces]) => [
    {
      page: 'tables/two-stroke-figures',
      what: `oil for a liter at ${ratio}:1`,
      sum: `1000 / ${ratio}`,
      gives: milliliters,
      digits: 0,
      says: `| ${ratio}:1 | ${milliliters} mL |`,
    },
    {
      page: 'tables/two-stroke-figures',
      what: `oil for a US gallon at ${ratio}:1`,
      sum: `128 / ${ratio}`,
      gives: ounces,
      digits: 1,
      says: `${ounces.toFixed(1)} fl oz`,
    },
  ]),
  {
    page: 'tables/two-stroke-figures',
    what: 'the bottle for 5 L in 7 L',
    sum: '7000 / (5000 / 50)',
    gives: 70,
    digits: 0,
    says: '70:1',
  },
];

describe('a figure worked out on an engine page', () => {
  it.each(sums.map((s) => [`${s.page}: ${s.what}`, s] as const))('%s', (_, s) => {
    expect(Number(number(s.sum).toFixed(s.digits))).toBe(s.gives);
    expect(page(s.page)).toContain(s.says);
  });
});

const engine = [
  ...new Set(sums.map((s) => s.page)),
  'jobs/decompression-valve',
  'jobs/mounts-and-handles',
  'jobs/recoil-spring-and-pawls',
  'jobs/storage-and-waking-up',
];
const pair = /([\d.]+)(?: to ([\d.]+))? (bar|mm|m|kPa) \(([\d.]+)(?: to ([\d.]+))? (psi|in|ft|inHg)\)/g;
const inUnit = { psi: 'psi', in: 'in', ft: 'ft', inHg: 'inHg' } as const;
math.createUnit('inHg', '3386.389 Pa');

describe('a figure given in both units', () => {
  const found = engine.flatMap((path) => [...page(path).matchAll(pair)].map((m) => ({ path, m })));
  it('is there to be tried', () => {
    expect(found.length).toBeGreaterThan(25);
  });
  // Bands of the trade are round in both units: 2 bar is 29 psi and printed as 30.
  it.each(found.map(({ path, m }) => [`${path}: ${m[0]}`, m] as const))('%s', (_, m) => {
    const [, least, most, from, other, otherMost, unit] = m;
    for (const [a, b] of [
      [least, other],
      [most, otherMost],
    ] as const) {
      if (a === undefined) continue;
      const exact = number(`number(${a} ${from}, ${inUnit[unit as keyof typeof inUnit]})`);
      const lastDigit = 10 ** -(b?.split('.')[1]?.length ?? 0);
      expect(Math.abs(exact - Number(b))).toBeLessThanOrEqual(Math.max(0.035 * exact, lastDigit / 2));
    }
  });
});
