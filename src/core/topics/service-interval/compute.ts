import { step, type WorkingStep } from '../../contract/formula.ts';
import type { Result, Value, VerdictValue } from '../../contract/result.ts';
import { guarded } from '../../contract/guarded.ts';
import { meterValues } from './by-meter.ts';
import { clockAdvice, clockProblems } from './by-the-clock.ts';
import { isOver } from '../../thresholds/index.ts';
import { dutyInterval } from './due.ts';
import { fields } from './fields.ts';
import {
  calendarLeft,
  daysByHours,
  first,
  floor,
  interval,
  sinceByMeter,
  sinceByTurn,
  sinceByUse,
  turn,
} from './formulas.ts';
import {
  daysGone,
  daysOf,
  intervalOf,
  listProblems,
  meterOf,
  sortedList,
  type DueLine,
  type ServiceInputs,
  type Since,
  type TaskRow,
} from './read-list.ts';

export const compute = guarded(fields, (inputs): Result => {
  const problems = [...listProblems(inputs), ...clockProblems(inputs)];
  if (problems.length > 0) return { ok: false, problems };
  const list = sortedList(inputs);
  const next = list[0];
  const clock = clockAdvice(inputs);
  return {
    ok: true,
    values: [
      ...meterValues(list, inputs),
      ...(next ? soonest(next) : []),
      fleet(list),
      factors(inputs),
      ...clock.values,
    ],
    working: [...(next ? soonestWorking(next, inputs) : []), ...clock.steps],
    cautions: [{ hazard: 'unexpected-start', level: 'danger' }],
  };
});

function soonest(next: DueLine): Value[] {
  const verdict: VerdictValue = {
    kind: 'verdict',
    key: 'verdict',
    label: 'Next',
    code: next.days < 0 ? 'overdue' : next.by === 'hours' ? 'due-by-hours' : 'due-by-calendar',
    // Due today is no all-clear.
    level: next.days < 0 ? 'caution' : next.days === 0 ? 'note' : 'good',
    data: {
      machine: next.machine,
      task: next.task,
      date: next.date,
      days: Math.abs(next.days),
      since: next.since.from,
    },
    main: true,
  };
  return [
    verdict,
    { kind: 'text', key: 'dueDate', label: 'Due on', value: next.date, main: true },
    { kind: 'count', key: 'dueDays', label: 'Days from the start', value: next.days },
    ...(next.interval === undefined
      ? []
      : [
          {
            kind: 'quantity',
            key: 'interval',
            label: 'Interval under this duty',
            value: next.interval,
            units: ['h', 'h'],
            decimals: [1, 1],
          } as const,
        ]),
    ...(next.hoursLeft === undefined
      ? []
      : [
          {
            kind: 'quantity',
            key: 'hoursLeft',
            label: 'Hours still to run',
            value: next.hoursLeft,
            units: ['h', 'h'],
            decimals: [1, 1],
          } as const,
        ]),
    { kind: 'text', key: 'dueBy', label: 'Which came first', value: next.by },
  ];
}

/** Where the hours run since come from. */
const sinceWords = {
  typed: 'typed',
  meter: 'from the meter',
  estimated: 'estimated',
  counted: 'counted from 0 h',
  new: 'just done',
} as const;

function fleet(list: readonly DueLine[]): Value {
  return {
    kind: 'table',
    key: 'list',
    label: 'All machines, soonest first',
    columns: [
      { key: 'date', label: 'Due on' },
      { key: 'days', label: 'In days' },
      { key: 'machine', label: 'Machine' },
      { key: 'task', label: 'What is done' },
      { key: 'interval', label: 'Interval', units: ['h', 'h'], decimals: 1 },
      { key: 'left', label: 'Still to run', units: ['h', 'h'], decimals: 1 },
      { key: 'by', label: 'Goes by' },
      { key: 'meter', label: 'At the meter', units: ['h', 'h'], decimals: 1 },
      { key: 'since', label: 'Hours since' },
    ],
    rows: list.map((d) => [
      d.date,
      d.days,
      d.machine,
      d.task,
      d.interval ?? null,
      d.hoursLeft ?? null,
      d.by,
      d.atMeter ?? null,
      d.interval === undefined ? null : sinceWords[d.since.from],
    ]),
  };
}

/** Why a factor is what it is, in plain words: none of them is published for saws. */
function factors(inputs: ServiceInputs): Value {
  const defaults = fields.filter((f) => f.kind === 'number');
  const standing = (key: string, value: number) =>
    defaults.find((f) => f.key === key)?.default === value ? 'assumption, no published figure' : 'the shop’s own';
  const named = [
    ['Dusty', 'dustyFactor', inputs.dustyFactor],
    ['Heavy dust or dry slurry', 'heavyFactor', inputs.heavyFactor],
    ['Cuts wet', 'waterFactor', inputs.waterFactor],
    ['Heavy load', 'loadFactor', inputs.loadFactor],
  ] as const;
  return {
    kind: 'table',
    key: 'factors',
    label: 'What shortens the hours, and where the figure comes from',
    columns: [
      { key: 'duty', label: 'Duty' },
      { key: 'factor', label: 'Hours times', decimals: 2 },
      { key: 'from', label: 'From' },
    ],
    rows: named.map(([label, key, value]) => [label, value, standing(key, value)]),
  };
}

/** Working of the service that is due first. */
function soonestWorking(next: DueLine, inputs: ServiceInputs): WorkingStep[] {
  const { row, duty, since } = next;
  if (row.base === undefined) return [calendarStep(row, inputs)];
  const t = dutyInterval(row.base, duty, inputs.least);
  const plain = dutyInterval(row.base, duty);
  const { byHours = 0, byCalendar } = daysOf(row, inputs);
  return [
    step(interval, { t_b: row.base, f_d: duty.dust, f_w: duty.water, f_l: duty.load }, plain),
    ...(isOver(t, plain) ? [step(floor, { s: inputs.least, t_b: row.base }, t)] : []),
    ...sinceStep(row, since, inputs),
    step(daysByHours, { t, u: since.hours, h: row.perDay, w: row.daysPerWeek }, byHours),
    ...(byCalendar === undefined
      ? []
      : [step(first, { d_h: byHours, d_c: byCalendar }, Math.min(byHours, byCalendar))]),
  ];
}

function sinceStep(row: TaskRow, since: Since, inputs: ServiceInputs): WorkingStep[] {
  const m = meterOf(row, inputs) ?? 0;
  if (since.from === 'meter') return [step(sinceByMeter, { m, m_0: row.meterThen ?? 0 }, since.hours)];
  if (since.dueAt !== undefined) {
    const t = intervalOf(row, inputs) ?? 0;
    return [
      step(turn, { k: Math.round(since.dueAt / t), t }, since.dueAt),
      step(sinceByTurn, { t, m_d: since.dueAt, m }, since.hours),
    ];
  }
  if (since.from !== 'estimated') return [];
  return [step(sinceByUse, { g: daysGone(row, inputs), h: row.perDay, w: row.daysPerWeek }, since.hours)];
}

function calendarStep(row: TaskRow, inputs: ServiceInputs): WorkingStep {
  const { byCalendar = 0 } = daysOf(row, inputs);
  const limit = (row.limit ?? 0) / 86400;
  return step(calendarLeft, { L: limit, g: limit - byCalendar }, byCalendar);
}
