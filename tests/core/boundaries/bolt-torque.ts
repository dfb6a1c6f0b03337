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
    {
      why: 'half the force that strips 0.875 pi d L at 140 MPa (memory) against 75 % of 830 MPa on 58 mm2',
      verdict: 'casting',
      inputs: { size: 'M10', boltClass: '10.9', state: 'oiled', into: 'light', share: 75, shear: 140, engaged: 18 },
      moves: 'engaged',
      at: (2 * 0.75 * 830 * 58) / (0.875 * Math.PI * 10 * 140),
      gives: ['casting-governs', 'casting-bears-it', 'casting-bears-it'],
    },
  ],
  noThreshold: {
    'keep-dry': 'hangs on the thread chosen',
    'greased-thread': 'hangs on the thread chosen',
    'left-hand': 'said when asked for',
    'thread-locker': 'said when asked for',
    'locker-on-oil': 'hangs on the thread chosen',
    'plated-12-9': 'hangs on the class and the thread chosen',
  },
};
