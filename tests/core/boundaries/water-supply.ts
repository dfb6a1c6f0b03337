import type { Boundaries } from './row.ts';

// A floor saw on the mains: the boxes of a bottle are not asked for.
const floorSaw = {
  length: '40 m',
  depth: '60 mm',
  width: '3.2 mm',
  paceFrom: 'feed',
  feed: '1.2 m/min',
  flowFrom: 'typed',
  supply: 'mains',
};

export const boundaries: Boundaries = {
  rows: [
    {
      why: 'the flow of the manual rules: 6 L/min',
      verdict: 'verdict',
      inputs: { ...floorSaw, manual: 6, flow: 6 },
      moves: 'flow',
      at: 6,
      gives: ['flow-short', 'flow-enough', 'flow-enough'],
    },
    {
      why: 'without it 0.5 L/min is the floor (HSE, from memory), and more is not called enough',
      verdict: 'verdict',
      inputs: { ...floorSaw, flow: 0.5 },
      moves: 'flow',
      at: 0.5,
      gives: ['flow-low', 'flow-look', 'flow-look'],
    },
    {
      why: 'by jug and watch: a liter in two minutes is 0.5 L/min',
      verdict: 'verdict',
      inputs: { ...floorSaw, flowFrom: 'jug', jug: 1, jugFor: 120 },
      moves: 'jugFor',
      at: 120,
      gives: ['flow-look', 'flow-look', 'flow-low'],
    },
  ],
  noThreshold: {
    'bottle-fades': 'where the water comes from',
    'slurry-away': 'always said',
    'check-local': 'always said',
  },
};
