import type { Boundaries } from './row.ts';

/**
 * Equal steels, solid shaft: p = E delta / (2 d) (1 - (d / D)^2) (Shigley, Eq. 7-40) with E 207 GPa (Table A-5),
 * delta 20 um, d 50 mm, D 100 mm gives 31.05 MPa; the force is pi d L p f with f 0.1.
 */
const pressure = ((207e9 * 20e-6) / (2 * 0.05)) * 0.75;
const lengthFor = (force: number) => (force / (Math.PI * 0.05 * pressure * 0.1)) * 1000;
const joint = {
  diameter: 50,
  length: 20,
  hubOutside: 100,
  shaftBore: 0,
  least: 20,
  most: 20,
  hub: 'carbon-steel',
  shaft: 'carbon-steel',
  surface: 'own',
  frictionLow: 0.1,
  frictionHigh: 0.1,
  smoothing: false,
};

export const boundaries: Boundaries = {
  rows: [
    {
      why: 'a vise serves to 5 kN (common practice)',
      verdict: 'tool',
      inputs: joint,
      moves: 'length',
      at: lengthFor(5_000),
      gives: ['tool-vise', 'tool-vise', 'tool-arbor'],
    },
    {
      why: 'an arbor press serves to 20 kN (common practice)',
      verdict: 'tool',
      inputs: joint,
      moves: 'length',
      at: lengthFor(20_000),
      gives: ['tool-arbor', 'tool-arbor', 'tool-hydraulic'],
    },
    {
      why: 'a shop press serves to 150 kN (common practice)',
      verdict: 'tool',
      inputs: { ...joint, frictionHigh: 0.4 },
      moves: 'length',
      at: lengthFor(150_000) / 4,
      gives: ['tool-hydraulic', 'tool-hydraulic', 'tool-too-much'],
    },
    {
      why: 'without interference nothing is pressed',
      verdict: 'tool',
      inputs: { ...joint, least: -20 },
      moves: 'most',
      at: 0,
      gives: ['tool-none', 'tool-none', 'tool-vise'],
    },
  ],
  open: ['stress-fine', 'stress-high', 'stress-yields', 'stress-cracks'],
};
