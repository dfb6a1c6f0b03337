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

/**
 * Without interest every sum is plain: new costs 8000 / 8 + 500 = 1500 a year, upkeep here is 700, so four years bring
 * (1500 - 700) x 4 = 3200, and 200 at the end, less the 600 it fetches now: 2800 is the most worth paying.
 */
const plain = {
  ...{ quote: 2000, asIs: 600, serviceYears: 4, hoursPerYear: 400, newPrice: 8000, newLife: 8, engine: 'good' },
  ...{ rate: 0, newResale: 0, newRunning: 500, repairRunning: 700, endValue: 200, repairDays: 0, newDays: 0 },
  ...{ comebackChance: 0, comebackCost: 0, downtimeDay: 0 },
};
/**
 * A worn engine in one of four, a look that is never wrong, a minute that costs 1: repairing blind brings
 * 0.75 x 800 - 0.25 x 2000 = 100, after a look 0.75 x 800 = 600, so the look is worth 500.
 */
const inDoubt = {
  ...plain,
  ...{ engine: 'unknown', chanceWorn: 25, inspectionFinds: 100, inspectionFalse: 0, labourRate: 60 },
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
    {
      why: 'a tenth under the most worth paying is too close to call (our choice): 0.9 x 2800',
      verdict: 'verdict',
      inputs: plain,
      moves: 'quote',
      at: 2520,
      by: 1e-5,
      gives: ['worth-repairing', 'too-close-to-call', 'too-close-to-call'],
    },
    {
      why: 'and so is a tenth over it: 1.1 x 2800',
      verdict: 'verdict',
      inputs: plain,
      moves: 'quote',
      at: 3080,
      by: 1e-5,
      gives: ['too-close-to-call', 'too-close-to-call', 'buy-new'],
    },
    {
      why: 'no repair pays once the machine as it stands fetches all that keeping it brings: 3200 + 200',
      verdict: 'verdict',
      inputs: plain,
      moves: 'asIs',
      at: 3400,
      gives: ['buy-new', 'no-repair-worth-it', 'no-repair-worth-it'],
    },
    {
      why: 'a look is asked for while it is worth over 1.25 of its cost (our choice): 500 / 1.25 = 400 minutes',
      verdict: 'engineFirst',
      inputs: inDoubt,
      moves: 'inspectionMinutes',
      at: 400,
      gives: ['look-first', 'look-about-even', 'look-about-even'],
    },
    {
      why: 'it then comes before the quote; without it 0.75 x 2800 = 2100 is within a tenth of 2000',
      verdict: 'verdict',
      inputs: inDoubt,
      moves: 'inspectionMinutes',
      at: 400,
      gives: ['engine-in-doubt', 'too-close-to-call', 'too-close-to-call'],
    },
    {
      why: 'a look is ruled out when it is worth under 0.75 of its cost (our choice): 500 / 0.75 minutes at 1.5 each',
      verdict: 'engineFirst',
      inputs: { ...inDoubt, labourRate: 90 },
      moves: 'inspectionMinutes',
      at: 500 / 0.75 / 1.5,
      gives: ['look-about-even', 'look-about-even', 'look-costs-more'],
    },
    {
      why: 'a quote of all that repair is worth: whatever a look shows, new is no worse',
      verdict: 'engineFirst',
      inputs: inDoubt,
      moves: 'quote',
      at: 2800,
      by: 1e-5,
      gives: ['look-costs-more', 'look-changes-nothing', 'look-changes-nothing'],
    },
    {
      why: 'a week of service (0.02 years) is tried: 800 x 0.02 + 2000 at the end - 600 = 1416',
      verdict: 'crossing',
      inputs: { ...plain, endValue: 2000 },
      moves: 'quote',
      at: 1416,
      by: 1e-5,
      gives: ['repair-at-any-service', undefined, undefined],
    },
    {
      why: 'sixty years of service are tried: (1500 - 1460) x 60 = 2400 = 2000 + 600 - 200',
      verdict: 'crossing',
      inputs: plain,
      moves: 'repairRunning',
      at: 1460,
      gives: [undefined, 'new-at-any-service', 'new-at-any-service'],
    },
  ],
  noThreshold: {
    'engine-checked': 'the answer about the engine',
    'engine-renewed': 'the answer about the engine',
  },
};
