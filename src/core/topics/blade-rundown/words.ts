import type { Words } from '../../contract/words.ts';

export const words: Words = {
  verdicts: {
    'wait-for-it': (d) =>
      `The blade turns on for ${Number(d['time']).toFixed(Number(d['time']) < 10 ? 1 : 0)} s and about ${Math.round(Number(d['turns']))} turns. Wait until it stands before you put the saw down or reach for anything near it.`,
    'runs-true': () => 'Runs true within the limit.',
    wobbles: () =>
      'Wobbles more than allowed. Take it off, clean flanges, spindle face and bore, look for a bent core, and measure again. Do not cut with it.',
  },
  problems: {
    'bore-too-large': (d, say) =>
      `The bore must be smaller than the blade (${say.quantity(Number(d['max']), ['mm', 'in'])}).`,
  },
};
