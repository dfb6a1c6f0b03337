import type { Boundaries } from './row.ts';

export const boundaries: Boundaries = {
  rows: [
    {
      why: 'a can mixed at the ratio wanted is right: 40:1 for 40:1',
      verdict: 'verdict',
      inputs: { ratio: 40, known: 'mixed', can: 3, mixedAt: 40 },
      moves: 'mixedAt',
      at: 40,
      gives: ['mix-rich', 'mix-right', 'mix-lean'],
    },
  ],
};
