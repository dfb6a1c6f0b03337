import type { Boundaries } from './row.ts';

/** 100 m3 at one change an hour: 20 ppm is held by 2e-3 m3/h of gas, of 28.01 g in 24.45 L. */
const hall = { length: 10, width: 5, height: 2, air: 'changes', changes: 1 };
const grams = (ppm: number) => ppm * 1e-6 * 100 * 1000 * (28.01 / 24.45);

export const boundaries: Boundaries = {
  rows: [
    {
      why: 'the air ends over 20 ppm, the lowest limit (EU, 8 h)',
      verdict: 'verdict',
      inputs: { ...hall, what: 'leak', run: 600 },
      moves: 'leak',
      at: grams(20),
      gives: ['leak-measure', 'leak-measure', 'leak-stop'],
    },
    {
      why: 'a reading over 20 ppm',
      verdict: 'verdict',
      inputs: { ...hall, what: 'stopped' },
      moves: 'now',
      at: 20,
      gives: ['stopped-measure', 'stopped-measure', 'stopped-wait'],
    },
    {
      why: 'a reading over 20 ppm in a room that is shut',
      verdict: 'verdict',
      inputs: { ...hall, what: 'stopped', air: 'shut' },
      moves: 'now',
      at: 20,
      gives: ['stopped-measure', 'stopped-measure', 'stopped-shut'],
    },
  ],
  noThreshold: {
    engine: 'an engine in a room, whatever the figures',
    'check-local': 'always said',
  },
};
