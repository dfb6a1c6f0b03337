import type { InputsOf } from '../../contract/field.ts';
import { isOver } from '../../thresholds/index.ts';
import type { Problem } from '../../contract/result.ts';
import { dateText, dayInCalendar, dayNumber } from '../../calendar/index.ts';
import { daysForHours, dutyInterval, hoursByUse, turnAtMeter, whicheverFirst, type Duty } from './due.ts';
import type { fields } from './fields.ts';

export type ServiceInputs = InputsOf<typeof fields>;
export type TaskRow = ServiceInputs['tasks'][number];

/** One line of the list: a service of a machine, and when it is due. */
export interface DueLine {
  readonly machine: string;
  readonly task: string;
  /** Interval under its duty [s]; undefined when it goes by the calendar alone. */
  readonly interval: number | undefined;
  /** Hours still to run [s]; below zero when overdue. */
  readonly hoursLeft: number | undefined;
  /** Whole days from the start; below zero when overdue. */
  readonly days: number;
  /** YYYY-MM-DD. */
  readonly date: string;
  readonly by: 'hours' | 'calendar';
  readonly duty: Duty;
  readonly since: Since;
  /** What the hour meter reads now [s]; undefined where it was not read. */
  readonly meter: number | undefined;
  /** Meter reading at which it is due [s]; only where the meter was read. */
  readonly atMeter: number | undefined;
  /** The row it comes from, for its working. */
  readonly row: TaskRow;
}

/** Hours run since the service was last done. */
export interface Since {
  /** [s] */
  readonly hours: number;
  /**
   * typed or read off the meter; estimated from the day it was done and the use; counted in turns from 0 on the meter,
   * as if each had been done; new: just done.
   */
  readonly from: 'typed' | 'meter' | 'estimated' | 'counted' | 'new';
  /** Reading at which it is due, where turns are counted [s]. */
  readonly dueAt?: number;
}

/** Days gone since the service was last done, by the calendar. */
export function daysGone(row: TaskRow, inputs: ServiceInputs): number {
  const start = dayNumber(inputs.start) ?? 0;
  return start - (dayNumber(row.last ?? inputs.start) ?? start);
}

/** What the hour meter of the row's machine reads now: its own reading, else the one typed for the list [s]. */
export function meterOf(row: TaskRow, inputs: ServiceInputs): number | undefined {
  return row.meter ?? inputs.reading;
}

/**
 * The hours typed, else those between two meter readings, else estimated from the day it was done, else counted from
 * 0 on the meter.
 */
export function hoursSince(row: TaskRow, inputs: ServiceInputs): Since {
  if (row.since !== undefined) return { hours: row.since, from: 'typed' };
  const meter = meterOf(row, inputs);
  if (meter !== undefined && row.meterThen !== undefined) return { hours: meter - row.meterThen, from: 'meter' };
  if (row.last !== undefined)
    return { hours: hoursByUse(daysGone(row, inputs), row.perDay, row.daysPerWeek), from: 'estimated' };
  const interval = intervalOf(row, inputs);
  if (meter === undefined || interval === undefined) return { hours: 0, from: 'new' };
  const dueAt = turnAtMeter(meter, interval, inputs.near);
  return { hours: interval - Math.max(0, dueAt - meter), from: 'counted', dueAt };
}

/** Hours from one service to the next under its duty [s]; undefined where it goes by the calendar alone. */
export function intervalOf(row: TaskRow, inputs: ServiceInputs): number | undefined {
  return row.base === undefined ? undefined : dutyInterval(row.base, dutyOf(row, inputs), inputs.least);
}

/** Factors of a duty. 1 stands for "does not shorten it". */
export function dutyOf(row: Pick<TaskRow, 'dust' | 'water' | 'load'>, inputs: ServiceInputs): Duty {
  return {
    dust: dustFactor(row.dust, inputs),
    water: row.water ? inputs.waterFactor : 1,
    load: row.load ? inputs.loadFactor : 1,
  };
}

/** Share of the interval that dust leaves [1], by how dusty the work is. */
export function dustFactor(dust: 'clean' | 'dusty' | 'heavy', inputs: ServiceInputs): number {
  return dust === 'clean' ? 1 : dust === 'dusty' ? inputs.dustyFactor : inputs.heavyFactor;
}

/** Days by the hours and by the calendar, from the start; either may be missing, not both. */
export function daysOf(
  row: TaskRow,
  inputs: ServiceInputs,
): { readonly byHours?: number; readonly byCalendar?: number } {
  const interval = intervalOf(row, inputs);
  return {
    ...(interval === undefined
      ? {}
      : { byHours: daysForHours(interval - hoursSince(row, inputs).hours, row.perDay, row.daysPerWeek) }),
    ...(row.limit === undefined ? {} : { byCalendar: row.limit / 86400 - daysGone(row, inputs) }),
  };
}

/** Works out a row. Days are rounded down, so that nothing is done a day late. */
export function dueLine(row: TaskRow, inputs: ServiceInputs): DueLine {
  const { byHours, byCalendar } = daysOf(row, inputs);
  const due =
    byHours === undefined ? { days: byCalendar ?? 0, by: 'calendar' as const } : whicheverFirst(byHours, byCalendar);
  const interval = intervalOf(row, inputs);
  const start = dayNumber(inputs.start) ?? 0;
  const days = dayInCalendar(start + Math.floor(due.days + 1e-9)) - start;
  const since = hoursSince(row, inputs);
  const hoursLeft = interval === undefined ? undefined : interval - since.hours;
  const meter = meterOf(row, inputs);
  return {
    machine: row.machine,
    task: row.task,
    interval,
    hoursLeft,
    days,
    date: dateText(start + days),
    by: due.by,
    duty: dutyOf(row, inputs),
    since,
    meter,
    atMeter: meter === undefined || hoursLeft === undefined ? undefined : (since.dueAt ?? meter + hoursLeft),
    row,
  };
}

/** Every row that can't be: no such day, done after the start, no interval. */
export function listProblems(inputs: ServiceInputs): Problem[] {
  const problems: Problem[] = [];
  const start = dayNumber(inputs.start);
  if (start === undefined) problems.push({ field: 'start', code: 'no-such-day', data: { got: inputs.start } });
  inputs.tasks.forEach((row, k) => {
    const at = `tasks.${k + 1}`;
    if (row.base === undefined && row.limit === undefined)
      problems.push({ field: `${at}.base`, code: 'no-interval', data: { task: row.task } });
    const meter = meterOf(row, inputs);
    if (meter !== undefined && row.meterThen !== undefined && isOver(row.meterThen, meter))
      problems.push({ field: `${at}.meterThen`, code: 'meter-backwards' });
    if (row.last === undefined) return;
    const last = dayNumber(row.last);
    if (last === undefined) problems.push({ field: `${at}.last`, code: 'no-such-day', data: { got: row.last } });
    else if (start !== undefined && last > start)
      problems.push({ field: `${at}.last`, code: 'done-after-start', data: { got: row.last, start: inputs.start } });
  });
  return problems;
}

/** Soonest first; the order of the rows on a tie. */
export function sortedList(inputs: ServiceInputs): DueLine[] {
  return inputs.tasks.map((row) => dueLine(row, inputs)).sort((a, b) => a.days - b.days);
}
