import type { InputsOf } from '../../contract/field.ts';
import type { Problem } from '../../contract/result.ts';
import { dateText, dayInCalendar, dayNumber } from '../../calendar/index.ts';
import { daysForHours, dutyInterval, whicheverFirst, type Duty } from './due.ts';
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
}

/** Factors of a duty. 1 stands for "does not shorten it". */
export function dutyOf(row: Pick<TaskRow, 'dust' | 'water' | 'load'>, inputs: ServiceInputs): Duty {
  return {
    dust: dustFactor(row.dust, inputs),
    water: row.water ? inputs.waterFactor : 1,
    load: row.load ? inputs.loadFactor : 1,
  };
}

export function dustFactor(dust: 'clean' | 'dusty' | 'heavy', inputs: ServiceInputs): number {
  return dust === 'clean' ? 1 : dust === 'dusty' ? inputs.dustyFactor : inputs.heavyFactor;
}

/** Days by the hours and by the calendar, from the start; either may be missing, not both. */
export function daysOf(
  row: TaskRow,
  inputs: ServiceInputs,
): { readonly byHours?: number; readonly byCalendar?: number } {
  const start = dayNumber(inputs.start) ?? 0;
  const gone = start - (dayNumber(row.last ?? inputs.start) ?? start);
  return {
    ...(row.base === undefined
      ? {}
      : {
          byHours: daysForHours(
            dutyInterval(row.base, dutyOf(row, inputs), inputs.least) - row.since,
            row.perDay,
            row.daysPerWeek,
          ),
        }),
    ...(row.limit === undefined ? {} : { byCalendar: row.limit / 86400 - gone }),
  };
}

/** Works out a row. Days are rounded down, so that nothing is done a day late. */
export function dueLine(row: TaskRow, inputs: ServiceInputs): DueLine {
  const { byHours, byCalendar } = daysOf(row, inputs);
  const due =
    byHours === undefined ? { days: byCalendar ?? 0, by: 'calendar' as const } : whicheverFirst(byHours, byCalendar);
  const interval = row.base === undefined ? undefined : dutyInterval(row.base, dutyOf(row, inputs), inputs.least);
  const start = dayNumber(inputs.start) ?? 0;
  const days = dayInCalendar(start + Math.floor(due.days + 1e-9)) - start;
  return {
    machine: row.machine,
    task: row.task,
    interval,
    hoursLeft: interval === undefined ? undefined : interval - row.since,
    days,
    date: dateText(start + days),
    by: due.by,
    duty: dutyOf(row, inputs),
  };
}

export function listProblems(inputs: ServiceInputs): Problem[] {
  const problems: Problem[] = [];
  const start = dayNumber(inputs.start);
  if (start === undefined) problems.push({ field: 'start', code: 'no-such-day', data: { got: inputs.start } });
  inputs.tasks.forEach((row, k) => {
    const at = `tasks.${k + 1}`;
    if (row.base === undefined && row.limit === undefined)
      problems.push({ field: `${at}.base`, code: 'no-interval', data: { task: row.task } });
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
