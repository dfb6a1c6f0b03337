import type { Boundaries } from './row.ts';

const ring = { diameter: 400, bore: 25.4, thickness: 3, rotation: 3000, known: 'time', time: 9, flange: 110 };

export const boundaries: Boundaries = {
  rows: [
    {
      why: 'no blade is marked for more than 100 m/s (EN 13236 steps): 400 mm at 100 / (0.4 pi) turns a second',
      verdict: 'rimVerdict',
      inputs: ring,
      moves: 'rotation',
      at: (100 / (0.4 * Math.PI)) * 60,
      gives: [undefined, undefined, 'rim-fast'],
    },
    {
      why: 'run-out is allowed 1 mm for each metre (source blade-run-out-limit): 0.4 mm at 400 mm',
      verdict: 'runOutVerdict',
      inputs: ring,
      moves: 'runOut',
      at: 0.4,
      gives: ['runs-true', 'runs-true', 'wobbles'],
    },
  ],
  noThreshold: { 'wait-for-it': 'said of every blade that turns' },
};
