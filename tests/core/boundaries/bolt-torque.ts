import type { Boundaries } from './row.ts';

export const boundaries: Boundaries = {
  rows: [
    {
      why: 'preload of an oiled bolt scatters by 25 % (source preload-scatter-memory): 80 % of proof is 100 % at the most',
      verdict: 'overload',
      inputs: { size: 'M10', boltClass: '10.9', state: 'oiled', into: 'steel', share: 75 },
      moves: 'share',
      at: 80,
      gives: [undefined, undefined, 'may-overload'],
    },
  ],
  noThreshold: {
    'manual-first': 'always said',
    'keep-dry': 'hangs on the thread chosen',
    'greased-thread': 'hangs on the thread chosen',
    'left-hand': 'said when asked for',
    'thread-locker': 'said when asked for',
    'plated-12-9': 'hangs on the class and the thread chosen',
  },
  open: ['casting-governs', 'casting-bears-it'],
};
