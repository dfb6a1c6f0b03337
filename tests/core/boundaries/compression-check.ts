import type { Boundaries } from './row.ts';

const cold = { reading: 9, healthy: 10, height: 0 };

const oiled = { reading: 7, healthy: 10, height: 0, wet: true, swept: 70, oil: 0.3, oiled: 7.1 };
/** [bar] */
const air = 1.01325;
/** The smallest chamber in cm3: 0.6 of 70 cm3 behind the closed port, exponent 1.3. */
const chamber = 42 / (((7 + air) / air) ** (1 / 1.3) - 1);

const leaking = { ...cold, leak: true, pumped: 40, lost: 0.1, watched: 60 };
const ringIn = { ...cold, ring: true, bore: 50, gap: 0.2 };

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
      why: 'more than 1.4 times the healthy figure is no health (our choice): 14 of 10 bar',
      verdict: 'verdict',
      inputs: cold,
      moves: 'reading',
      at: 14,
      gives: ['compression-healthy', 'compression-healthy', 'compression-high'],
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
    {
      why: 'oil up to half a percent of the swept volume (our choice): 0.35 mL of 70 cm3',
      verdict: 'oilVerdict',
      inputs: oiled,
      moves: 'oil',
      at: 0.35,
      gives: ['oil-cannot-tell', 'oil-cannot-tell', 'oil-too-much'],
    },
    {
      why: 'oil as large as the chamber, 42 cm3 / (((7 + 1.01325) / 1.01325)^(1 / 1.3) - 1), stops the piston (memory)',
      verdict: 'oilVerdict',
      inputs: oiled,
      moves: 'oil',
      at: chamber,
      gives: ['oil-too-much', 'oil-fills-chamber', 'oil-fills-chamber'],
    },
    {
      why: 'a tenth (common practice) over what 0.3 mL alone can make of 7 bar in that chamber points to the rings',
      verdict: 'oilVerdict',
      inputs: oiled,
      moves: 'oiled',
      at: 1.1 * (air * ((42 + chamber - 0.3) / (chamber - 0.3)) ** 1.3 - air),
      gives: ['oil-cannot-tell', 'oil-cannot-tell', 'oil-points-to-rings'],
    },
    {
      why: 'tight from ten minutes for a tenth (common practice): a tenth of 40 kPa in 600 s is 0.4 kPa in 60 s',
      verdict: 'leakVerdict',
      inputs: leaking,
      moves: 'lost',
      at: 0.4,
      gives: ['leak-none', 'leak-none', 'leak-slow'],
    },
    {
      why: 'a leak is found under one minute for a tenth (common practice): 4 kPa in 60 s',
      verdict: 'leakVerdict',
      inputs: leaking,
      moves: 'lost',
      at: 4,
      gives: ['leak-slow', 'leak-slow', 'leak-found'],
    },
    {
      why: 'over 50 kPa good seals lift (common practice)',
      verdict: 'leakVerdict',
      inputs: leaking,
      moves: 'pumped',
      at: 50,
      gives: ['leak-none', 'leak-none', 'pumped-too-high'],
    },
    {
      why: 'a watch of ten seconds (a forestry magazine watches so long)',
      verdict: 'leakVerdict',
      inputs: { ...leaking, lost: 0 },
      moves: 'watched',
      at: 10,
      gives: ['leak-watch-on', 'leak-none', 'leak-none'],
    },
    {
      why: 'ends meet when hot under 0.003 of the bore (common practice): 0.15 mm of 50',
      verdict: 'ringVerdict',
      inputs: ringIn,
      moves: 'gap',
      at: 0.15,
      gives: ['gap-butts', 'gap-tight', 'gap-tight'],
    },
    {
      why: 'usual from 0.0035 of the bore (builders’ rule): 0.175 mm of 50',
      verdict: 'ringVerdict',
      inputs: ringIn,
      moves: 'gap',
      at: 0.175,
      gives: ['gap-tight', 'gap-usual', 'gap-usual'],
    },
    {
      why: 'usual to 0.0045 of the bore (builders’ rule): 0.225 mm of 50',
      verdict: 'ringVerdict',
      inputs: ringIn,
      moves: 'gap',
      at: 0.225,
      gives: ['gap-usual', 'gap-usual', 'gap-wide'],
    },
    {
      why: 'a bore may wear by 0.005 in (army manual) and the gap grows pi times that, on top of the rule',
      verdict: 'ringVerdict',
      inputs: ringIn,
      moves: 'gap',
      at: 0.225 + Math.PI * 0.127,
      gives: ['gap-wide', 'gap-wide', 'gap-too-wide'],
    },
    {
      why: 'the same on a floor saw of 80 mm bore: 0.28 to 0.36 mm',
      verdict: 'ringVerdict',
      inputs: { ...ringIn, bore: 80 },
      moves: 'gap',
      at: 0.36,
      gives: ['gap-usual', 'gap-usual', 'gap-wide'],
    },
  ],
};
