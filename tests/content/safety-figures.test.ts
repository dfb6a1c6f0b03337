/**
 * Figures and rules of safety that stand on pages in words, held against what was published. They were noted from the
 * works named, apart from the pages.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const page = (path: string) =>
  readFileSync(new URL(`../../content/knowledge/${path}`, import.meta.url), 'utf8')
    .replace(/<[^>]*>/g, ' ')
    .replace(/\s+/g, ' ');

const trials = 'tables/dust-and-water-trials.mdx';
const masks = 'tables/respirators.mdx';
const dustGuide = 'guides/keeping-dust-down.mdx';
const water = 'calculators/water-supply.mdx';
const army = 'intervals/army-small-engines.yaml';

/** What it is and who published it, the page, what must stand there. */
const published: readonly (readonly [source: string, path: string, ...says: RegExp[]])[] = [
  ['Shepherd and Woskie 2013, abstract', trials, /79 pairs/, /14\.4 mg\/m³/, /85 % less in pairs; over tenfold/],
  ['Thorpe 1999, abstract', trials, /under 4 % of the dry dust left/, /90 % less or better/, /a third and a seventh/],
  ['Annals of Occupational Hygiene, artificial stone', trials, /took a further nine tenths/],
  ['Public Health Reports, PMC2708661', trials, /96 % less on block, 91 % on brick/, /91 to 93 % less/],
  ['Echt 2016, abstract', trials, /54 to 3\.0 and 57 to 5\.3 mg\/m³/],
  ['CPWR, walk-behind saws', trials, /50 to 95 % less/],
  ['CPWR 2014, mortar removal', trials, /99 % less from 145 times.*still over it/],
  ['29 CFR 1926.1153(c)(2)(ii): no figure', 'calculators/dust-control.mdx', /names no liters a minute/],
  [
    '29 CFR 1926.1153(c)(2)(i): exhaust',
    'calculators/dust-control.mdx',
    /Indoors or enclosed the rule asks for exhaust/,
  ],
  ['29 CFR 1926.1153(h): 30 days, three years', masks, /30 days or more in a year.*every three years/],
  ['HSE list: sandstone 70-90, concrete 25-70', dustGuide, /sandstone \| 70 to 90 %/, /concrete, mortar \| 25 to 70 %/],
  ['HSE list: tile 30-45, granite 20-45', dustGuide, /tile \| 30 to 45 %/, /granite \| 20 to 45 %/],
  ['HSE list: slate 20-40, brick, limestone', dustGuide, /slate \| 20 to 40 %/, /brick \| up to 30 %/, /marble \| 2 %/],
  [
    '42 CFR 84 by NIOSH 96-101',
    masks,
    /N95, N99, N100 \| 95, 99, 99\.97 % \| no/,
    /an N filter is not worn beyond 8 h/,
  ],
  ['29 CFR 1910.134(f)(6), (7)', masks, /filtering facepiece \| allowed \| 100/, /only up to factor 10 use \| 500/],
  ['HSE page, German pages, 1910.134 Table 1', masks, /10 in the USA, 20 in Great Britain.*30 in Germany/],
  [
    'Methner, NZ OSH: saws of 98 to 105 dB(A)',
    'calculators/noise-dose.mdx',
    /98 to 102 dB\(A\), a concrete saw at 105/,
  ],
  [
    'British list of typical vibration',
    'calculators/hand-arm-vibration.mdx',
    /hammer drill 6 to 25, demolition hammer 8 to 25, angle grinder 4 to 8 m\/s²/,
  ],
  [
    'CA/FACE 17CA001',
    'calculators/fume-room.mdx',
    /walk-behind gasoline saw in an empty shop unit/,
    /only electric saws in enclosed spaces/,
  ],
  ['pH of saw slurry, three pages', water, /pH about 11 to 13/],
  ['RPS 235: foul sewer', water, /foul sewer only with the company's consent after the pH is put right/],
  ['RPS 287: dust suppression', water, /must not be used to damp down dust/],
  ['29 CFR 1910.242(b): 30 psi is 206.84 kPa', 'hazards/compressed-air.yaml', /below 30 psi \(207 kPa\)/],
  [
    'Michigan R 408.10113',
    'tables/blade-marks.mdx',
    /Vitrified wheels over 4 in.*ring test/,
    /diamond blades do not ring so/,
  ],
  [
    'Lund University, WorkSafeBC: lye in the eye',
    'hazards/slurry-burns.yaml',
    /rinse at once.*20 minutes is the least/,
  ],
  [
    'US Army TM 10-4320-315-24',
    army,
    /fins.*hours: 125/,
    /V-belts.*13 mm \(1\/2 in\).*hours: 250/,
    /Valves.*hours: 500/,
  ],
  ['US Army TM 10-4320-315-24', army, /Fuel filter.*hours: 1000/, /Wheel bearings.*hours: 3000, months: 12/],
  ['trade press: plug every 50 h', 'intervals/walk-behind.yaml', /Spark plug.*hours: 50, source: trade-press/],
];

describe('published figures on the pages', () => {
  it.each(published.map((row) => ({ source: row[0], row })))('$source', ({ row: [, path, ...says] }) => {
    const text = page(path);
    for (const words of says) expect(text).toMatch(words);
  });
});

// No page and no caution may make dry cutting indoors right, in either language.
it('dry cutting indoors is nowhere called right', () => {
  const wrong =
    /(may|can|allowed to|all right to|safe to) (cut|saw) dry (indoors|inside)|puede cortar en seco (adentro|bajo techo)/i;
  for (const path of [
    dustGuide,
    'guides/es/keeping-dust-down.mdx',
    'guides/cutting-wet.mdx',
    'guides/es/cutting-wet.mdx',
  ])
    expect(page(path), path).not.toMatch(wrong);
  for (const path of ['hazards/silica-dust.yaml', trials, masks, 'calculators/dust-control.mdx'])
    expect(page(path), path).not.toMatch(wrong);
});
