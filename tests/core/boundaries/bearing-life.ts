import type { Boundaries } from './row.ts';

// Own ratings, so that the limits are round: C 20 kN, C0 10 kN.
const own = { rating: 'own', dynamicRating: 20, staticRating: 10, pitch: 46, belt: 900, speed: 4500, dirt: 'severe' };

export const boundaries: Boundaries = {
  rows: [
    {
      why: 'a standing load over the static rating dents the raceways (ISO 76, safety 1): 10 kN',
      verdict: 'loadVerdict',
      inputs: { ...own, share: 100 },
      moves: 'belt',
      at: 10_000,
      gives: ['load-fine', 'load-fine', 'load-dents'],
    },
    {
      why: 'over half the dynamic rating the life formula ends (ISO 281): 10 kN of 20 kN',
      verdict: 'loadVerdict',
      inputs: { ...own, staticRating: 30 },
      moves: 'belt',
      at: 10_000,
      gives: ['load-fine', 'load-fine', 'load-high'],
    },
  ],
  open: ['seal-worth', 'seal-worth-most', 'life-beyond', 'wear-not-counted', 'seal-whole', 'seal-no-gain'],
};
