import type { Boundaries } from './row.ts';

export const boundaries: Boundaries = {
  rows: [
    {
      why: 'a can mixed at the ratio wanted is right: 40:1 for 40:1',
      verdict: 'verdict',
      inputs: { ratio: 40, known: 'mixed', can: 3, mixedAt: 40 },
      moves: 'mixedAt',
      at: 40,
      gives: ['mix-near', 'mix-right', 'mix-near'],
    },
    {
      why: 'a jug tells no twentieth of the oil (common practice): 42:1 for 40:1',
      verdict: 'verdict',
      inputs: { ratio: 40, known: 'mixed', can: 3, mixedAt: 40 },
      moves: 'mixedAt',
      at: 42,
      gives: ['mix-near', 'mix-near', 'mix-lean'],
    },
    {
      why: 'nor the other way: 40:1 for 42:1',
      verdict: 'verdict',
      inputs: { ratio: 42, known: 'mixed', can: 3, mixedAt: 42 },
      moves: 'mixedAt',
      at: 40,
      gives: ['mix-rich', 'mix-near', 'mix-near'],
    },
  ],
};
