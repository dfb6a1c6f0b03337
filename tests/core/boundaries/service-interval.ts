import type { Boundaries } from './row.ts';

const plan = {
  start: '2026-03-02',
  tasks: [
    { machine: 'Floor saw', task: 'Oil', base: 100, limit: 91, dust: 'clean', perDay: 2, daysPerWeek: 5, since: 20 },
  ],
};

/** A part asked about by the clock: 60 to change it in time. */
const part = { ...plan, replace: true, planned: 60, partDust: 'clean' };

/** Every 100 h, last done at 900 h: due at 1,000 h, near from 990 h on, coming from 950 h on. */
const read = (row: object) => ({
  start: '2026-03-02',
  near: 10,
  ahead: 50,
  tasks: [{ machine: 'Floor saw', task: 'Oil', base: 100, dust: 'clean', perDay: 2, daysPerWeek: 5, ...row }],
});
const known = read({ meterThen: 900 });

export const boundaries: Boundaries = {
  rows: [
    {
      why: 'a service last done at 900 h and due every 100 h is overdue once the meter has passed 1,000 h',
      verdict: 'meter',
      inputs: known,
      moves: 'reading',
      at: 1000,
      gives: ['meter-due', 'meter-due', 'meter-overdue'],
    },
    {
      why: 'within a tenth of the interval before that it counts as due: from 990 h',
      verdict: 'meter',
      inputs: known,
      moves: 'reading',
      at: 990,
      gives: ['meter-coming', 'meter-due', 'meter-due'],
    },
    {
      why: 'within 50 h before that it is coming: from 950 h',
      verdict: 'meter',
      inputs: known,
      moves: 'reading',
      at: 950,
      gives: ['meter-later', 'meter-coming', 'meter-coming'],
    },
    {
      why: 'counted from 0 h, the turn of 1,000 h is due up to a tenth of the interval after it: 1,010 h',
      verdict: 'meter',
      inputs: read({}),
      moves: 'reading',
      at: 1010,
      gives: ['meter-due', 'meter-due', 'meter-later'],
    },
    {
      why: 'a service is due when the hours since the last reach the interval: 100 of 100 h',
      verdict: 'verdict',
      inputs: plan,
      moves: 'tasks.1.since',
      at: 100,
      gives: ['due-by-hours', 'due-by-hours', 'overdue'],
    },
    {
      why: '80 h left at 2 h on 5 days of 7 are 56 days; a tie goes to the hours',
      verdict: 'verdict',
      inputs: plan,
      moves: 'tasks.1.limit',
      at: 56,
      by: 1,
      gives: ['due-by-calendar', 'due-by-hours', 'due-by-hours'],
    },
    {
      why: 'a saving under 5 % is not worth a clock (our choice): every life from 1000 to 1100 h is best changed at 1000 h, 60 / 1000 against C / 1050',
      verdict: 'clock',
      inputs: { ...part, lifeFrom: 'range', lifeMin: 1000, lifeMax: 1100, failure: 70 },
      moves: 'failure',
      at: (60 * 1.05) / 0.95,
      gives: ['clock-hardly-pays', 'clock-pays', 'clock-pays'],
    },
    {
      why: 'a shape of 1 is chance: an old part fails no sooner than a new one (Weibull)',
      verdict: 'clock',
      inputs: { ...part, lifeFrom: 'typed', scale: 700, failure: 400 },
      moves: 'shape',
      at: 1,
      gives: ['clock-does-not-wear', 'clock-does-not-wear', 'clock-hardly-pays'],
    },
    {
      why: 'a failure that costs no more than changing in time: 60',
      verdict: 'clock',
      inputs: { ...part, lifeFrom: 'typed', scale: 700, shape: 3, failure: 60 },
      moves: 'failure',
      at: 60,
      gives: ['clock-failure-is-cheap', 'clock-failure-is-cheap', 'clock-hardly-pays'],
    },
  ],
  noThreshold: {
    'clock-too-few': 'the number of failed parts among the records: nine and ten are tried in clock.test.ts',
    'clock-not-shown': 'whether the range of shapes holds 1: lists of records on both sides are tried in clock.test.ts',
  },
};
