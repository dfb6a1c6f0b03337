import type { Boundaries } from './row.ts';

export const boundaries: Boundaries = {
  rows: [
    {
      why: '6203 (17 x 40 x 12) and 6004 (20 x 42 x 12): readings 18.4 x 40.8 x 12 are 1.4 and 1.6 mm off (ISO 15)',
      verdict: 'match',
      inputs: { known: 'readings', bore: 18.4, outside: 40.8, width: 12, allow: 1.5 },
      moves: 'allow',
      at: 1.6,
      gives: ['one-fits', 'several-fit', 'several-fit'],
    },
    {
      why: 'the worst reading may be off by what is allowed: 25.3 against 25 mm with 0.3 mm',
      verdict: 'match',
      inputs: { known: 'readings', bore: 25, outside: 52, width: 15, allow: 0.3 },
      moves: 'outside',
      at: 52.3,
      gives: ['one-fits', 'one-fits', 'none-fits'],
    },
    {
      why: 'a caliper tells 0.05 mm: a bore larger by more is worn',
      verdict: 'wear',
      inputs: { known: 'readings', bore: 25, outside: 52, width: 15, allow: 0.3 },
      moves: 'bore',
      at: 25.05,
      gives: [undefined, undefined, 'ring-worn'],
    },
  ],
  noThreshold: { 'number-read': 'letters after the number of a ring' },
};
