import type { Boundaries } from './row.ts';

export const boundaries: Boundaries = {
  rows: [
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
  open: ['several-fit', 'number-read'],
};
