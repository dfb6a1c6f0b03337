import type { Boundaries } from './row.ts';

const cones = {
  closedDiameter: 100,
  angle: 38,
  gapStart: 5,
  gapEnd: 0,
  drivePulley: 90,
  centre: 300,
  thread: 1.25,
  step: 'quarter',
  beltWidth: 13,
};

export const boundaries: Boundaries = {
  rows: [
    {
      why: 'a quarter turn of a 1.25 mm thread closes 0.3125 mm: one step is enough to there',
      verdict: 'verdict',
      inputs: cones,
      moves: 'gapStart',
      at: 0.3125,
      gives: ['one-pass-enough', 'one-pass-enough', 'one-go-pinches'],
    },
    {
      why: 'a belt 3 % narrower than new (our choice): 12.61 of 13 mm',
      verdict: 'widthVerdict',
      inputs: { ...cones, beltWidthNow: 13 },
      moves: 'beltWidthNow',
      at: 12.61,
      gives: ['belt-narrow', 'belt-width-right', 'belt-width-right'],
    },
    {
      why: 'a belt 3 % wider than new (our choice): 13.39 of 13 mm',
      verdict: 'widthVerdict',
      inputs: { ...cones, beltWidthNow: 13 },
      moves: 'beltWidthNow',
      at: 13.39,
      gives: ['belt-width-right', 'belt-width-right', 'belt-wide'],
    },
    {
      why: 'the belt rides out of the rim when its outside passes it: closed on 100 mm',
      verdict: 'rimVerdict',
      inputs: { ...cones, rim: 100 },
      moves: 'rim',
      at: 100,
      gives: ['rides-out', undefined, undefined],
    },
    {
      why: 'a belt is tight up to the path it closes to: two pulleys of 100 mm at 300 mm ask for 600 + 100 pi',
      verdict: 'fitVerdict',
      inputs: { ...cones, drivePulley: 100, beltLength: 914 },
      moves: 'beltLength',
      at: 600 + 100 * Math.PI,
      gives: ['draws-tight', 'draws-tight', 'stays-slack'],
    },
  ],
};
