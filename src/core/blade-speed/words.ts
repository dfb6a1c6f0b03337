import type { Words } from '../words.ts';

export const words: Words = {
  verdicts: {
    'within-marked': () => 'Within the speed marked on the blade. The guard, the flanges and the bore must fit this blade too.',
    'near-marked': () => 'Within the marked speed, but close to it. Measure the shaft with a rev counter before the blade goes on.',
    'over-marked': () => 'Faster than the blade is marked for. Do not fit this blade to this machine.',
    'no-depth': () => 'The flange is as large as the blade at this gap: nothing is left to cut with.',
  },
  problems: {
    'flange-too-large': (data) => `The flange or other part (${data['got']} mm) must be smaller than the blade (${data['max']} mm).`,
  },
};
