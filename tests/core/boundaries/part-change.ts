import type { Boundaries } from './row.ts';

export const boundaries: Boundaries = {
  rows: [
    {
      why: 'shape 1 is chance, below it early failure (Weibull)',
      verdict: 'shapeNote',
      inputs: {
        partCost: 60,
        age: 300,
        lifeAs: 'mean',
        mean: 500,
        horizon: 250,
        reopenMinutes: 60,
        labourRate: 90,
        shape: 1,
      },
      moves: 'shape',
      at: 1,
      gives: ['fails-early', 'fails-by-chance', undefined],
    },
  ],
  open: ['change-now', 'leave-it', 'no-age-pays', 'replace-it', 'mend-it'],
};
