import type { Boundaries } from './row.ts';

const plan = {
  start: '2026-03-02',
  tasks: [
    { machine: 'Floor saw', task: 'Oil', base: 100, limit: 91, dust: 'clean', perDay: 2, daysPerWeek: 5, since: 20 },
  ],
};

export const boundaries: Boundaries = {
  rows: [
    {
      why: 'a service is due when the hours since the last reach the interval: 100 of 100 h',
      verdict: 'verdict',
      inputs: plan,
      moves: 'tasks.1.since',
      at: 100,
      gives: ['due-by-hours', 'due-by-hours', 'overdue'],
    },
  ],
  noThreshold: {
    'clock-too-few': 'the number of failed parts among the records: nine and ten are tried in clock.test.ts',
    'clock-not-shown': 'whether the range of shapes holds 1: lists of records on both sides are tried in clock.test.ts',
  },
  open: ['due-by-calendar', 'clock-pays', 'clock-hardly-pays', 'clock-does-not-wear', 'clock-failure-is-cheap'],
};
