import type { Boundaries } from './row.ts';

const one = (more: object) => [
  { task: 'hand-held-saw', control: 'water', place: 'outdoors', power: 'engine', time: 1, ...more },
];
const table = { rule: 'us-construction', way: 'table', work: one({}) };
/** One spell that is the whole shift, so that its level is the day's average. */
const air = (rule: string, hours = 8) => ({
  rule,
  way: 'measured',
  spells: [{ what: 'cutting', concentration: 0.05, time: hours }],
  shift: hours,
  oil: true,
  filterTime: 8,
});
const level = 'spells.1.concentration';

export const boundaries: Boundaries = {
  rows: [
    {
      why: 'Table 1 asks for a mask outdoors over four hours, 29 CFR 1926.1153(c)(1)',
      verdict: 'verdict',
      inputs: table,
      moves: 'work.1.time',
      at: 4,
      gives: ['table-none', 'table-none', 'table-mask'],
    },
    {
      why: 'hours of all tasks of the table together: 2.5 h and 1.5 h',
      verdict: 'verdict',
      inputs: { ...table, work: [...one({ time: 2.5 }), ...one({ task: 'breaker', power: 'other' })] },
      moves: 'work.2.time',
      at: 1.5,
      gives: ['table-none', 'table-none', 'table-mask'],
    },
    {
      why: 'the US action level counts at or above 0.025 mg/m3',
      verdict: 'verdict',
      inputs: air('us-general'),
      moves: level,
      at: 0.025,
      gives: ['under-limit', 'at-action', 'at-action'],
    },
    {
      why: 'the US limit is passed above 0.05 mg/m3',
      verdict: 'verdict',
      inputs: air('us-general'),
      moves: level,
      at: 0.05,
      gives: ['at-action', 'at-action', 'over-limit'],
    },
    {
      why: 'the British limit is passed above 0.1 mg/m3',
      verdict: 'verdict',
      inputs: air('gb'),
      moves: level,
      at: 0.1,
      gives: ['under-limit', 'under-limit', 'over-limit'],
    },
    {
      why: 'a mask of another country than the USA or Britain is asked for over the limit only: Spain, 0.05 mg/m3',
      verdict: 'mask',
      inputs: air('es'),
      moves: level,
      at: 0.05,
      gives: [undefined, undefined, 'mask-elsewhere'],
    },
    {
      why: 'in the USA a mask is named over the limit of 0.05 mg/m3',
      verdict: 'mask',
      inputs: air('us-construction'),
      moves: level,
      at: 0.05,
      gives: [undefined, undefined, 'mask-factor'],
    },
    {
      why: 'the last British factor is 40: 40 x 0.1 mg/m3',
      verdict: 'mask',
      inputs: air('gb'),
      moves: level,
      at: 4,
      gives: ['mask-factor', 'mask-factor', 'mask-none'],
    },
    {
      why: 'a half mask with P3 ends at factor 20: 20 x 0.1 mg/m3 (HSE)',
      verdict: 'filter',
      inputs: air('gb'),
      moves: level,
      at: 2,
      gives: ['filter-p3', 'filter-p3', 'filter-p3-full'],
    },
    {
      why: 'and where no mask is enough no filter is named: 40 x 0.1 mg/m3',
      verdict: 'filter',
      inputs: air('gb'),
      moves: level,
      at: 4,
      gives: ['filter-p3-full', 'filter-p3-full', undefined],
    },
    {
      why: 'Brief and Scala at 10 h: 0.7 x 0.05 = 0.035 mg/m3',
      verdict: 'longShift',
      inputs: air('us-construction', 10),
      moves: level,
      at: 0.035,
      gives: ['long-within', 'long-within', 'long-over'],
    },
    {
      why: 'an R filter with oil in the air: one shift of 8 h, NIOSH 96-101',
      verdict: 'filter',
      inputs: air('us-construction'),
      moves: 'filterTime',
      at: 8,
      gives: ['filter-r-p', 'filter-r-p', 'filter-p'],
    },
  ],
  noThreshold: {
    'dry-inside': 'a task marked dry in an enclosed place',
    dry: 'a task marked dry',
    'assess-shop': 'the answer whether the task is regular',
    'no-table': 'the place chosen',
    'not-there': 'a task the table does not list in an enclosed place',
    'wrong-control': 'a control the table does not list for the task',
    britain: 'the place chosen',
    'britain-extraction': 'the place chosen, and a saw with extraction outdoors',
    'engine-inside': 'an engine marked in an enclosed place',
    'enclosed-means': 'a task marked in an enclosed place',
    'filter-any': 'the answer whether there is oil mist',
    'check-local': 'always said',
  },
};
