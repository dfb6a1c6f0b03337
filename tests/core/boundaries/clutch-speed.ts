import type { Boundaries } from './row.ts';

// A small hobby engine: idles at 3000, takes hold at 4200.
const hobby = { observed: 'stands', idle: 3000, known: 'speed', engages: 4200, weak: 100 };

/** 1440 rpm [rad/s]. */
const turning = 2 * Math.PI * 24;
const large = {
  idle: 400,
  known: 'parts',
  running: 1440,
  power: 70,
  shoes: 4,
  mass: 1500,
  radius: 110,
  drum: 280,
  gap: 0,
  spring: 700,
  friction: 0.3,
};

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
    {
      why: 'four shoes of 1.5 kg at 110 mm, 700 N, 0.3 on 140 mm hold z mu R (m r w2 - F) (Bhandari, Example 11.13)',
      verdict: 'gripVerdict',
      inputs: large,
      moves: 'power',
      at: (4 * 0.3 * 0.14 * (1.5 * 0.11 * turning ** 2 - 700) * turning) / 1000,
      gives: ['clutch-holds', 'clutch-holds', 'clutch-slips'],
    },
  ],
  noThreshold: {
    'drags-on-cord': 'said when it was seen',
    'turns-at-idle-seen': 'said when it was seen',
    'lingers-after-cut': 'said when it was seen',
  },
};
