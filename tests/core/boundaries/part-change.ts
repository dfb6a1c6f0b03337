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
    {
      why: 'one failure at most is counted, so looking ahead is good for one mean life: 500 h',
      verdict: 'horizonNote',
      inputs: {
        partCost: 60,
        age: 300,
        lifeAs: 'mean',
        mean: 500,
        horizon: 250,
        reopenMinutes: 60,
        labourRate: 90,
        shape: 2,
      },
      moves: 'horizon',
      at: 500,
      gives: [undefined, undefined, 'looks-too-far'],
    },
  ],
  open: ['change-now', 'leave-it', 'no-age-pays', 'replace-it', 'mend-it'],
};
