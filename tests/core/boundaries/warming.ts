import type { Boundaries } from './row.ts';

/**
 * 6061 grows 23.6 um for each metre and kelvin (Callister, Table B.6). A 100 mm housing with 216 um of interference and
 * a gap of 20 um needs 236 / (23.6 x 0.1) = 100 K: 120 C from a room of 20 C. Its ceiling of 150 C is that of the metal.
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
  ],
  open: [
    'warm-ring-ok',
    'warm-housing-over',
    'warm-sealed-over',
    'warm-ring-over',
    'cool-not-needed',
    'cool-freezer',
    'cool-dry-ice',
    'cool-not-enough',
    'cool-sealed',
    'open-time-short',
    'open-time-fair',
    'how-to-measure',
    'heat-to-short',
  ],
};
