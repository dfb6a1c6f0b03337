import type { Boundaries } from './row.ts';

// A small hobby engine: idles at 3000, takes hold at 4200.
const hobby = { observed: 'stands', idle: 3000, known: 'speed', engages: 4200, weak: 100 };

export const boundaries: Boundaries = {
  rows: [
    {
      why: 'engagement wants 1.25 times idle (source clutch-idle-margin): 3360 x 1.25 = 4200 rpm',
      verdict: 'verdict',
      inputs: hobby,
      moves: 'idle',
      at: 3360,
      gives: ['idle-clear', 'idle-clear', 'idle-too-near'],
    },
    {
      why: 'at the engagement speed itself the blade turns',
      verdict: 'verdict',
      inputs: hobby,
      moves: 'idle',
      at: 4200,
      gives: ['idle-too-near', 'idle-over-engagement', 'idle-over-engagement'],
    },
    {
      why: 'm r w2 is the force: springs at 64 % engage at 80 % of 4200 rpm, 3360, and at that idle the blade turns',
      verdict: 'weakVerdict',
      inputs: { ...hobby, weak: 64 },
      moves: 'idle',
      at: 3360,
      gives: ['weak-holds-off', 'weak-turns-at-idle', 'weak-turns-at-idle'],
    },
  ],
  open: ['drags-on-cord', 'turns-at-idle-seen', 'lingers-after-cut', 'clutch-holds', 'clutch-slips'],
};
