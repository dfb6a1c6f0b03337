import type { Boundaries } from './row.ts';

// Own ratings, so that the limits are round: C 20 kN, C0 10 kN.
const own = { rating: 'own', dynamicRating: 20, staticRating: 10, pitch: 46, belt: 900, speed: 4500, dirt: 'severe' };

/**
 * ISO 281 with a viscosity ratio of 4 and more: a = 0.1 (1 - K (e Cu / P)^(1/3))^-9.3, Cu = C0 / 22;
 * whole seals keep e at 0.6 to 0.8 under 100 mm mean diameter.
 */
const K = (2.5671 - 1.9987 / 4 ** 0.071739) ** 0.83;
const a = (e: number, loadOverCu: number) => 0.1 * (1 - K * Math.cbrt(e / loadOverCu)) ** -9.3;
/** C 20 kN, C0 10 kN, 3 kN of load: life in seals, in a million turns; the life that counts ends at 100,000 h. */
const sealed = ((a(0.6, 6.6) + a(0.8, 6.6)) / 2) * (20 / 3) ** 3;

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
    {
      why: 'slurry leaves a tenth of the basic life: 100,000 h at 500 rpm are 30,000 million turns, so C / P = 30,000^(1/3)',
      verdict: 'worth',
      inputs: { ...own, share: 100, dirt: 'very-severe', speed: 500, viscosity: 600 },
      moves: 'belt',
      at: 20_000 / Math.cbrt(30_000),
      gives: ['life-beyond', 'life-beyond', 'seal-worth-most'],
    },
    {
      why: 'life in whole seals reaches 100,000 h at this speed',
      verdict: 'worth',
      inputs: { ...own, share: 100, belt: 3000, viscosity: 600 },
      moves: 'speed',
      at: (sealed * 1e6) / (100_000 * 60),
      gives: ['seal-worth-most', 'seal-worth', 'seal-worth'],
    },
    {
      why: 'no factor is over 50: dry and swept (e 0.5 to 0.6) reaches it with C0 100 kN where 1 - K (e Cu / P)^(1/3) = 0.002^(1/9.3)',
      verdict: 'worth',
      inputs: { ...own, dynamicRating: 5, staticRating: 100, share: 100, dirt: 'normal', viscosity: 600 },
      moves: 'belt',
      at: 0.5 * (100_000 / 22) * (K / (1 - 0.002 ** (1 / 9.3))) ** 3,
      gives: ['seal-no-gain', 'seal-no-gain', 'seal-worth'],
    },
  ],
  noThreshold: {
    'wear-not-counted': 'the dirt chosen: slurry',
    'seal-whole': 'the dirt chosen: seals whole',
  },
};
