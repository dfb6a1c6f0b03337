import type { Boundaries } from './row.ts';

/**
 * Equal pulleys of 100 mm, one belt, 2 kW, factor 1, 3000 rpm: v = pi 0.1 x 50 = 15.708 m/s. At 180 degrees the least
 * tension is 750 W s/m for each kilowatt over v (trade formula with G = 1; Bloch and Geitner p. 326 in US units) and
 * m v2 on top; the window of a belt run in ends at 1.5 times that. The span of 400 mm sounds at 1 / (2 S) sqrt(T / m).
 */
const mass = 0.01;
const speed = Math.PI * 0.1 * 50;
const least = (0.75 * 2000) / speed + mass * speed ** 2;
const sound = (tension: number) => Math.sqrt(tension / mass) / (2 * 0.4);
const drive = {
  section: 'PJ',
  belts: 1,
  enginePulley: 100,
  bladePulley: 100,
  known: 'centre',
  centre: 400,
  power: 2,
  rotation: 3000,
  speedOf: 'engine',
  beltState: 'run-in',
  factor: 1,
  reading: 'frequency',
  frequency: 100,
  mass: 1000 * mass,
};

export const boundaries: Boundaries = {
  rows: [
    {
      why: 'under the least tension of the trade formula the belt is slack',
      verdict: 'verdict',
      inputs: drive,
      moves: 'frequency',
      at: sound(least),
      gives: ['belt-slack', 'belt-right', 'belt-right'],
    },
    {
      why: 'the window of a belt run in ends at 1.5 times the least',
      verdict: 'verdict',
      inputs: drive,
      moves: 'frequency',
      at: sound(1.5 * least),
      gives: ['belt-right', 'belt-right', 'belt-tight'],
    },
    {
      why: 'over the window by more than the first-fit factor 1.33 (our choice) it is too tight',
      verdict: 'verdict',
      inputs: drive,
      moves: 'frequency',
      at: sound(1.5 * 1.33 * least),
      gives: ['belt-tight', 'belt-tight', 'belt-too-tight'],
    },
  ],
  open: ['wet-slips', 'wet-near', 'wet-holds', 'pulley-small'],
};
