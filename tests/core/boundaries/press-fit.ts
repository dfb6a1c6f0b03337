import type { Boundaries } from './row.ts';

/**
 * Equal steels, solid shaft: p = E delta / (2 d) (1 - (d / D)^2) (Shigley, Eq. 7-40) with E 207 GPa (Table A-5),
 * delta 20 um, d 50 mm, D 100 mm gives 31.05 MPa; the force is pi d L p f with f 0.1.
 */
const pressure = ((207e9 * 20e-6) / (2 * 0.05)) * 0.75;
const lengthFor = (force: number) => (force / (Math.PI * 0.05 * pressure * 0.1)) * 1000;
/** Tresca at the bore: p (k + 1), k = (D2 + d2) / (D2 - d2) = 5 / 3 (Boresi and Schmidt, chapter 11). */
const equivalent = (pressure * 8) / 3 / 1e6;
/** Gray iron round carbon steel (Shigley, Table A-5): E 100 and 207 GPa, nu 0.211 and 0.292. */
const iron = ((20e-6 / (0.05 * ((5 / 3 + 0.211) / 100e9 + (1 - 0.292) / 207e9))) * 8) / 3 / 1e6;
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
    {
      why: 'the outer part yields at its strength (maximum shear)',
      verdict: 'stress',
      inputs: { ...joint, hubStrength: 100 },
      moves: 'hubStrength',
      at: equivalent,
      gives: ['stress-yields', 'stress-high', 'stress-high'],
    },
    {
      why: 'and no tool is named for what would yield',
      verdict: 'tool',
      inputs: { ...joint, hubStrength: 100 },
      moves: 'hubStrength',
      at: equivalent,
      gives: ['tool-refused', 'tool-arbor', 'tool-arbor'],
    },
    {
      why: 'over 80 % of its strength is high (common practice)',
      verdict: 'stress',
      inputs: { ...joint, hubStrength: 100 },
      moves: 'hubStrength',
      at: equivalent / 0.8,
      gives: ['stress-high', 'stress-fine', 'stress-fine'],
    },
    {
      why: 'iron cracks at its strength',
      verdict: 'stress',
      inputs: { ...joint, hub: 'grey-iron', hubStrength: 100 },
      moves: 'hubStrength',
      at: iron,
      gives: ['stress-cracks', 'stress-high', 'stress-high'],
    },
    {
      why: 'iron is high from half its strength (common practice)',
      verdict: 'stress',
      inputs: { ...joint, hub: 'grey-iron', hubStrength: 100 },
      moves: 'hubStrength',
      at: iron / 0.5,
      gives: ['stress-high', 'stress-fine', 'stress-fine'],
    },
  ],
};
