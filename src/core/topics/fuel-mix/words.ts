import type { Words } from '../../contract/words.ts';

export const words: Words = {
  verdicts: {
    'mix-lean': () =>
      'Too little oil for this engine. Do not run it on this can: add the oil, close the can and shake it.',
    'mix-rich': () =>
      'More oil than the engine asks for: it smokes and fouls the plug. Add the gasoline, close the can and shake it.',
    'mix-near': () =>
      'Near enough: the oil is within a twentieth of what is asked for, less than a jug can tell. Shake the can and use it.',
    'mix-right': () => 'Mixed as asked for.',
  },
  problems: {},
};
