import type { Boundaries } from './row.ts';

/** A breaker, measured at work: 8 h x (2.5 / 10)^2 is half an hour, 8 h x (5 / 10)^2 two hours. */
const breaker = (minutes: number) => ({
  tools: [{ what: 'breaker', value: 10, from: 'measured', time: minutes }],
  allow: 'uncertainty',
  next: 10,
});

export const boundaries: Boundaries = {
  rows: [
    {
      why: 'action value 2.5 m/s2 counts at or above (2002/44/EC, Great Britain 2005): 10 m/s2 for 30 min',
      verdict: 'verdict',
      inputs: breaker(30),
      moves: 'tools.1.time',
      at: 30,
      gives: ['below-action', 'at-action', 'at-action'],
    },
    {
      why: 'limit 5 m/s2 is passed above: 10 m/s2 for 120 min',
      verdict: 'verdict',
      inputs: breaker(120),
      moves: 'tools.1.time',
      at: 120,
      gives: ['at-action', 'at-action', 'over-limit'],
    },
    {
      why: 'the manual’s value counts with K: 4 + 1 m/s2 over 8 h',
      verdict: 'verdict',
      inputs: {
        tools: [{ what: 'floor saw', value: 4, from: 'declared', uncertainty: 1, time: 480 }],
        allow: 'uncertainty',
        next: 5,
      },
      moves: 'tools.1.uncertainty',
      at: 1,
      gives: ['at-action', 'at-action', 'over-limit'],
    },
  ],
  noThreshold: { 'check-local': 'always said' },
};
