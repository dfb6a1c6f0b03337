import type { Words } from '../../contract/words.ts';

export const words: Words = {
  figures: { time: ['s', 's'] },
  verdicts: {
    'wait-for-it': (d) =>
      `The blade turns on for ${Number(d['time']).toFixed(Number(d['time']) < 10 ? 1 : 0)} s and about ` +
      `${Math.round(Number(d['turns']))} turns. Wait until it stands before you put the saw down or reach ` +
      'for anything near it.',
    'rim-fast': (d, say) =>
      `The rim runs at ${say.quantity(Number(d['rim']), ['m/s', 'ft/min'])}, faster than blades of saws are commonly ` +
      'marked for. Check diameter and speed, then the mark on the blade, before anything turns.',
    'runs-true': () => 'Runs true within the limit.',
    wobbles: () =>
      'Wobbles more than allowed. Take it off, clean flanges, spindle face and bore, look for a bent core, and measure again. Do not cut with it.',
  },
  problems: {
    'flange-over-blade': (d, say) =>
      `The flange (${say.quantity(Number(d['got']), ['mm', 'in'])}) must be smaller than the blade ` +
      `(${say.quantity(Number(d['max']), ['mm', 'in'])}).`,
    'flange-under-bore': (d, say) =>
      `The flange (${say.quantity(Number(d['got']), ['mm', 'in'])}) must be larger than the bore ` +
      `(${say.quantity(Number(d['min']), ['mm', 'in'])}), or it holds nothing.`,
    'rim-too-fast': (d, say) =>
      `At that speed the rim would run at ${say.quantity(Number(d['rim']), ['m/s', 'ft/min'])}. No cutting blade is made ` +
      'for that: check the speed and the diameter.',
    'bore-too-large': (d, say) =>
      `The bore must be smaller than the blade (${say.quantity(Number(d['max']), ['mm', 'in'])}).`,
  },
};
