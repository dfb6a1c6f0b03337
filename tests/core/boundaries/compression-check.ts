import type { Boundaries } from './row.ts';

const cold = { reading: 9, healthy: 10, height: 0 };

export const boundaries: Boundaries = {
  rows: [
    {
      why: 'at the healthy figure the engine is healthy (common practice)',
      verdict: 'verdict',
      inputs: cold,
      moves: 'reading',
      at: 10,
      gives: ['compression-serviceable', 'compression-healthy', 'compression-healthy'],
    },
    {
      why: 'serviceable from 80 % (common practice): 8 of 10 bar',
      verdict: 'verdict',
      inputs: cold,
      moves: 'reading',
      at: 8,
      gives: ['compression-worn', 'compression-serviceable', 'compression-serviceable'],
    },
    {
      why: 'worn from 60 % (common practice): 6 of 10 bar',
      verdict: 'verdict',
      inputs: cold,
      moves: 'reading',
      at: 6,
      gives: ['compression-low', 'compression-worn', 'compression-worn'],
    },
    {
      why: 'a first pull under half of the last climbs slowly (our choice): 3.5 of 7 bar',
      verdict: 'firstVerdict',
      inputs: { reading: 7, healthy: 10, height: 0, first: 3.5 },
      moves: 'first',
      at: 3.5,
      gives: ['climbs-slowly', 'jumps-up', 'jumps-up'],
    },
    {
      why: 'the same with a healthy last reading: 5 of 10 bar',
      verdict: 'firstVerdict',
      inputs: { reading: 10, healthy: 10, height: 0, first: 5 },
      moves: 'first',
      at: 5,
      gives: ['climbs-slowly-to-good', 'jumps-up-to-good', 'jumps-up-to-good'],
    },
    {
      why: 'a gauge with a check valve repeats within 5 % (our choice): 6.65 of 7 bar with oil is no fall',
      verdict: 'oilVerdict',
      inputs: { reading: 7, healthy: 10, height: 0, wet: true, swept: 70, oil: 0.3, oiled: 7 },
      moves: 'oiled',
      at: 6.65,
      gives: ['oil-fell', 'oil-cannot-tell', 'oil-cannot-tell'],
    },
  ],
  open: ['oil-too-much', 'oil-fills-chamber', 'oil-points-to-rings'],
};
