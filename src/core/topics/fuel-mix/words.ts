import type { Words } from '../../contract/words.ts';

export const words: Words = {
  verdicts: {
    'mix-lean': () =>
      'Too little oil for this engine. Do not run it on this can: add the oil, close the can and shake it.',
    'mix-rich': () =>
      'More oil than the engine asks for: it smokes and fouls the plug. Add the gasoline, close the can and shake it.',
    'mix-right': () => 'Mixed as asked for.',
  },
  problems: {},
};
