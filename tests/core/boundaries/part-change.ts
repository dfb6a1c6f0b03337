import type { Boundaries } from './row.ts';

/** 60 for the part, 60 minutes at 90 to open it again; life of shape 2, 63 % gone by 500 h; 250 h to go. */
const pump = {
  ...{ partCost: 60, age: 300, lifeAs: 'scale', scale: 500, horizon: 250, reopenMinutes: 60, labourRate: 90 },
  ...{ stopCost: 0, shape: 2 },
};
/** Weibull: a new one fails within 250 h with 1 - exp(-(250 / 500)^2). */
const newFails = 1 - Math.exp(-0.25);
/** The age at which an old one fails within 250 h with a chance of F. */
const ageWhere = (F: number) => (-Math.log(1 - F) * 500 ** 2 - 250 ** 2) / (2 * 250);

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
      verdict: 'verdict',
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
      gives: ['about-even', 'about-even', 'looks-too-far'],
    },
    {
      why: 'leaving costs a tenth less than changing where F(H | T) = 0.9 (60 / 150 + F(H)), with ((T + H)2 - T2) / 500^2 = -ln(1 - F)',
      verdict: 'verdict',
      inputs: pump,
      moves: 'age',
      at: ageWhere(0.9 * (60 / 150 + newFails)),
      gives: ['leave-it', 'about-even', 'about-even'],
    },
    {
      why: 'and changing a tenth less than leaving where F(H | T) = (60 / 150 + F(H)) / 0.9',
      verdict: 'verdict',
      inputs: pump,
      moves: 'age',
      at: ageWhere((60 / 150 + newFails) / 0.9),
      gives: ['about-even', 'about-even', 'change-now'],
    },
    {
      why: 'shape 1 does not wear (Weibull); hardly above it the wear pays for no new part within 50 lives',
      verdict: 'ageToChange',
      inputs: pump,
      moves: 'shape',
      at: 1,
      gives: ['does-not-wear', 'does-not-wear', 'no-age-pays'],
    },
    {
      why: 'an old part that is sure to fail costs 150; a new one costs as much where F(H) = 90 / 150: 500 sqrt(-ln 0.4) h',
      verdict: 'ageToChange',
      inputs: pump,
      moves: 'horizon',
      at: 500 * Math.sqrt(-Math.log(0.4)),
      gives: [undefined, 'no-age-pays', 'no-age-pays'],
    },
    {
      why: 'mending at 1.6 times the wear: 200 + F(250) 290 = f + F(400) 290',
      verdict: 'mendVerdict',
      inputs: { ...pump, mend: true, replaceCost: 200, mendCost: 100, mendWear: 1.6 },
      moves: 'mendCost',
      at: 200 + 290 * (newFails - (1 - Math.exp(-0.64))),
      gives: ['mend-it', 'replace-it', 'replace-it'],
    },
  ],
};
