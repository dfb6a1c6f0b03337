import type { Boundaries } from './row.ts';

/** A floor saw in another currency: 4,000 worth as it works, 6,500 new. */
const floor = {
  quote: 2000,
  asIs: 700,
  serviceYears: 4,
  hoursPerYear: 400,
  newPrice: 6500,
  newLife: 8,
  engine: 'good',
  workingValue: 4000,
};

export const boundaries: Boundaries = {
  rows: [
    {
      why: 'the rule of half asks whether the repair is over 50 % of a new one (44 CFR 206.226(f)(1)): 3250 of 6500',
      verdict: 'halfRule',
      inputs: floor,
      moves: 'quote',
      at: 3250,
      by: 1e-5,
      gives: ['rule-for', 'rule-for', 'rule-against'],
    },
    {
      why: 'motor insurers ask about 75 % of the value before damage: 3000 of 4000',
      verdict: 'threeQuarterRule',
      inputs: floor,
      moves: 'quote',
      at: 3000,
      by: 1e-5,
      gives: ['rule-for', 'rule-for', 'rule-against'],
    },
    {
      why: 'money already spent is mentioned when there is some',
      verdict: 'spent',
      inputs: floor,
      moves: 'alreadySpent',
      at: 1,
      by: 1,
      gives: [undefined, 'already-spent', 'already-spent'],
    },
  ],
  open: [
    'worth-repairing',
    'buy-new',
    'too-close-to-call',
    'engine-in-doubt',
    'no-repair-worth-it',
    'engine-checked',
    'engine-renewed',
    'look-first',
    'look-changes-nothing',
    'look-about-even',
    'look-costs-more',
    'repair-at-any-service',
    'new-at-any-service',
  ],
};
