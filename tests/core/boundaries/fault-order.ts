import type { Boundaries } from './row.ts';

const suspect = (name: string, likelihood: number) => ({ name, likelihood });
const check = (name: string, about: string, ifFaulty: number, ifSound: number, answer = 'open') => ({
  ...{ name, suspect: about, minutes: 10, ifFaulty, ifSound, answer },
});
/** A ring saw that stalls: two suspects, equally likely, and nothing else. A suspect of 80 % is acted on; no way out. */
const two = {
  suspects: [suspect('Water in the fuel', 50), suspect('Governor spring', 50)],
  ...{ stripDowns: [], complete: true, sure: 80, fallbackMinutes: 0, confirmLast: true },
};
const spring = check('Look at the spring', 'Governor spring', 90, 5);
/** One suspect of two that are possible; the other one is not on the list. */
const half = { ...two, suspects: [suspect('Water in the fuel', 50)], complete: false, confirmLast: false };

export const boundaries: Boundaries = {
  rows: [
    {
      why: 'shown and 80 % likely: 0.9 / (0.9 + s) = 0.8 at s = 22.5 % (Bayes)',
      verdict: 'verdict',
      inputs: { ...two, checks: [check('Drain the bowl', 'Water in the fuel', 90, 20, 'shows'), spring] },
      moves: 'checks.1.ifSound',
      at: 22.5,
      gives: ['found', 'found', 'check-next-only'],
    },
    {
      why: 'the other is cleared so far that one is left: 1 / (1 + 1 - q) = 0.8 at q = 75 % (Bayes)',
      verdict: 'verdict',
      inputs: {
        ...two,
        confirmLast: false,
        checks: [check('Drain the bowl', 'Water in the fuel', 70, 0, 'clear'), spring],
      },
      moves: 'checks.1.ifFaulty',
      at: 75,
      gives: ['check-next-only', 'found-by-exclusion', 'found-by-exclusion'],
    },
    {
      why: 'as likely as it takes by the list alone, and no check about it: 80 %',
      verdict: 'verdict',
      inputs: {
        ...two,
        complete: false,
        suspects: [suspect('Water in the fuel', 80), suspect('Governor spring', 10)],
        checks: [spring],
      },
      moves: 'suspects.1.likelihood',
      at: 80,
      gives: ['check-next-only', 'found-unchecked', 'found-unchecked'],
    },
    {
      why: 'ten minutes of checking that find half of it, then the way out: 10 + w / 2 against w, even at 20 minutes',
      verdict: 'verdict',
      inputs: { ...half, checks: [check('Drain the bowl', 'Water in the fuel', 100, 0)] },
      moves: 'fallbackMinutes',
      at: 20,
      gives: ['stop-here', 'check-next-only', 'check-next-only'],
    },
    {
      why: 'a check as likely to show a fault either way tells nothing: 20 and 20 %',
      verdict: 'verdict',
      inputs: { ...half, checks: [check('Listen', 'Water in the fuel', 20, 20)] },
      moves: 'checks.1.ifFaulty',
      at: 20,
      gives: ['check-next-only', 'nothing-to-check', 'check-next-only'],
    },
    {
      why: 'the same once something has been looked at',
      verdict: 'verdict',
      inputs: {
        ...half,
        suspects: [suspect('Water in the fuel', 30), suspect('Governor spring', 30)],
        checks: [check('Listen', 'Water in the fuel', 20, 20), { ...spring, answer: 'clear' }],
      },
      moves: 'checks.1.ifFaulty',
      at: 20,
      gives: ['check-next-only', 'none-left', 'check-next-only'],
    },
  ],
  noThreshold: {
    'check-next': 'whether two checks or more still tell something',
    'check-next-by-ratio': 'a list of more than twelve suspects or checks',
    contradiction: 'answers that no suspect on the list can explain',
  },
};
