import type { Boundaries } from './row.ts';

/**
 * 6061 grows 23.6 um for each metre and kelvin (Callister, Table B.6). A 100 mm housing with 216 um of interference and
 * a gap of 20 um needs 236 / (23.6 x 0.1) = 100 K: 120 C from a room of 20 C. Light alloy takes 100 C (housing-heating).
 */
const housing = {
  part: 'housing',
  diameter: 100,
  interference: 216,
  housingMaterial: 'aluminium-wrought',
  room: 20,
  gap: 20,
  sealed: false,
};

/** A 60 mm ring opens 12.5 x 0.06 = 0.75 um for each kelvin; a 100 mm ring chilled shrinks 1.25 um. */
const ring = { part: 'ring', diameter: 60, interference: 20, shaftMaterial: 'carbon-steel', room: 20, gap: 20 };
/** Time to close: rho c w / (2 h) ln(dT1 / dT2), with h 25 W/(m2 K), 236 and 216 um at 2.36 um a kelvin. */
const wallForAMinute = ((60 * 2 * 25) / (2700 * 896 * Math.log(236 / 216))) * 1000;

export const boundaries: Boundaries = {
  rows: [
    {
      why: 'warming by half a kelvin is not worth it (our choice): 2.36 um x 0.5 = 1.18 um in all',
      verdict: 'warmVerdict',
      inputs: { ...housing, gap: 0 },
      moves: 'interference',
      at: 1.18,
      gives: ['warm-not-needed', 'warm-not-needed', 'warm-housing-ok'],
    },
    {
      why: 'a ring of the size of its seat slides in, at no interference, whatever gap is asked for',
      verdict: 'warmVerdict',
      inputs: ring,
      moves: 'interference',
      at: 0,
      by: 1,
      gives: ['warm-slides', 'warm-slides', 'warm-ring-ok'],
    },
    {
      why: 'and wants no chilling then: 20 um on 60 mm of steel are some 30 K',
      verdict: 'coldVerdict',
      inputs: ring,
      moves: 'interference',
      at: 0,
      by: 1,
      gives: ['cool-not-needed', 'cool-not-needed', 'cool-freezer'],
    },
    {
      why: 'a sealed ring takes 80 C (source sealed-bearing-heat) and a twentieth of a degree of slack',
      verdict: 'heatTo',
      inputs: {
        part: 'ring',
        diameter: 25,
        interference: 5,
        shaftMaterial: 'carbon-steel',
        room: 20,
        gap: 5,
        sealed: true,
        heatTo: 80,
      },
      moves: 'heatTo',
      at: 80.05,
      gives: [undefined, undefined, 'heat-to-over'],
    },
    {
      why: 'a light housing takes 100 C and a twentieth of a degree: 80.05 K x 2.36 um less the gap',
      verdict: 'warmVerdict',
      inputs: housing,
      moves: 'interference',
      at: 80.05 * 2.36 - 20,
      gives: ['warm-housing-ok', 'warm-housing-ok', 'warm-housing-over'],
    },
    {
      why: 'a sealed ring takes 80 C: 60.05 K x 0.75 um less the gap',
      verdict: 'warmVerdict',
      inputs: { ...ring, sealed: true },
      moves: 'interference',
      at: 60.05 * 0.75 - 20,
      gives: ['warm-ring-ok', 'warm-ring-ok', 'warm-sealed-over'],
    },
    {
      why: 'an open ring takes 250 F (source army-tm-bearing-heating)',
      verdict: 'warmVerdict',
      inputs: { ...ring, sealed: false },
      moves: 'interference',
      at: ((250 - 32) / 1.8 + 0.05 - 20) * 0.75 - 20,
      gives: ['warm-ring-ok', 'warm-ring-ok', 'warm-ring-over'],
    },
    {
      why: 'a freezer gives -18 C: 38 K x 1.25 um less the gap',
      verdict: 'coldVerdict',
      inputs: housing,
      moves: 'interference',
      at: 38 * 1.25 - 20,
      gives: ['cool-freezer', 'cool-freezer', 'cool-dry-ice'],
    },
    {
      why: 'dry ice gives -78 C: 98 K x 1.25 um less the gap',
      verdict: 'coldVerdict',
      inputs: housing,
      moves: 'interference',
      at: 98 * 1.25 - 20,
      gives: ['cool-dry-ice', 'cool-dry-ice', 'cool-not-enough'],
    },
    {
      why: 'a sealed bearing goes into the freezer and no colder',
      verdict: 'coldVerdict',
      inputs: { ...housing, sealed: true },
      moves: 'interference',
      at: 38 * 1.25 - 20,
      gives: ['cool-freezer', 'cool-freezer', 'cool-sealed'],
    },
    {
      why: 'a minute to carry it over (our choice): a wall that cools from 236 to 216 um of growth in 60 s',
      verdict: 'openVerdict',
      inputs: housing,
      moves: 'wall',
      at: wallForAMinute,
      gives: ['open-time-short', 'open-time-fair', 'open-time-fair'],
    },
    {
      why: 'how to measure is said where warming is worth it: half a kelvin, 1.18 um in all',
      verdict: 'measuring',
      inputs: { ...housing, gap: 0 },
      moves: 'interference',
      at: 1.18,
      gives: [undefined, undefined, 'how-to-measure'],
    },
    {
      why: 'the reader’s temperature opens the gap asked for, to a thousandth of a micrometer: (100 + 20 - 0.001) / 2.36 K',
      verdict: 'heatTo',
      inputs: { ...housing, interference: 100, heatTo: 80 },
      moves: 'heatTo',
      at: 20 + (100 + 20 - 0.001) / 2.36,
      gives: ['heat-to-short', undefined, undefined],
    },
    {
      why: 'hotter than 99 °C there is no more to gain: a light housing takes 100 °C, a thermometer shows degrees (our choice)',
      verdict: 'heatTo',
      inputs: { ...housing, interference: 300, heatTo: 80 },
      moves: 'heatTo',
      at: 99,
      gives: ['heat-to-short', 'heat-to-short-at-ceiling', 'heat-to-short-at-ceiling'],
    },
  ],
};
