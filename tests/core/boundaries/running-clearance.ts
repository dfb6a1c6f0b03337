import type { Boundaries } from './row.ts';

/**
 * A 60 x 110 mm bearing, loose on shaft and in housing, so that only heat takes clearance: its outer raceway is guessed at
 * (4 x 110 + 60) / 5 = 100 mm and grows 12.5 um/m/K, 1.25 um for each kelvin of difference. ISO 5753-1 for 50 to 65 mm:
 * normal clearance 8 to 28 um, 18 in the middle.
 */
const loose = {
  ...{ bore: 60, outside: 110, group: 'CN', shaftLeast: -12, shaftMost: -4, housingLeast: -30, housingMost: -10 },
  ...{ housingMaterial: 'aluminium-wrought', housingRise: 0, surface: 'ideal', difference: 5 },
};

export const boundaries: Boundaries = {
  rows: [
    {
      why: 'the least clearance is used up at 8 / 1.25 K',
      verdict: 'verdict',
      inputs: loose,
      moves: 'difference',
      at: 6.4,
      gives: ['runs-clear', 'runs-clear', 'may-preload'],
    },
    {
      why: 'the mean clearance is used up at 18 / 1.25 K',
      verdict: 'verdict',
      inputs: loose,
      moves: 'difference',
      at: 14.4,
      gives: ['may-preload', 'may-preload', 'preloaded-warm'],
    },
    {
      why: 'the most clearance is used up at 28 / 1.25 K',
      verdict: 'verdict',
      inputs: loose,
      moves: 'difference',
      at: 22.4,
      gives: ['preloaded-warm', 'preloaded-warm', 'always-preloaded'],
    },
    {
      why: 'tight before it is warm: a solid shaft of bearing steel opens the raceway (70 mm by the guess) by 60 / 70 of its hold, 18 um at 21 um in the mean',
      verdict: 'verdict',
      inputs: { ...loose, shaftMaterial: 'bearing-steel', innerRaceway: 70, shaftLeast: 15, shaftMost: 27 },
      moves: 'shaftMost',
      at: 27,
      gives: ['preloaded-warm', 'preloaded-warm', 'preloaded'],
    },
    {
      why: '15 um of hold in the mean are outgrown at 15 / ((23.6 - 12.5) x 0.11) K (Callister, Table B.6)',
      verdict: 'housingLoose',
      inputs: { ...loose, housingLeast: 5, housingMost: 25 },
      moves: 'housingRise',
      at: 15 / ((23.6 - 12.5) * 0.11),
      gives: [undefined, undefined, 'outer-loose-warm'],
    },
  ],
};
