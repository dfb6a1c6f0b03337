/** When a service is due: hours shortened by the duty, or the calendar, whichever comes first. */
import { isOver, isUnder } from '../../thresholds/index.ts';

export interface Duty {
  /** Factors on the hours [1]; 1 when the duty does not shorten them. */
  readonly dust: number;
  readonly water: number;
  readonly load: number;
}

/**
 * Interval in hours under a duty.
 * Formula: t = t_b f_d f_w f_l, but not less than s t_b.
 * @param base t_b, interval on clean work [s]
 * @param duty factors [1]
 * @param least s, smallest share of the base [1]
 * @returns t [s]
 * Exact where the duty divides the life of the part by one factor and leaves the manner of failing and the
 * costs as they are: the best interval then shrinks by the same factor. Published tables say "more often in
 * dust" and give no figure, so the factors are the shop's.
 * Example: 100 h, dusty 0.5 -> 50 h.
 * Source: duty-scaling.
 */
export function dutyInterval(base: number, duty: Duty, least = 0): number {
  return base * Math.max(least, duty.dust * duty.water * duty.load);
}

/**
 * Calendar days until the hours are used up.
 * Formula: d = (t - u) / (h w / 7).
 * @param left t - u, hours still to run [s]; below zero when overdue
 * @param perDay h, run in a working day [s], > 0
 * @param daysPerWeek w [1], > 0
 * @returns d [days]
 * Example: 50 h left at 4 h a week -> 87.5 days.
 * Source: arithmetic.
 */
export function daysForHours(left: number, perDay: number, daysPerWeek: number): number {
  return left / ((perDay * daysPerWeek) / 7);
}

/**
 * Hours a machine has run since a day, from how much it runs: for a service whose date is known and whose meter was not read.
 * Formula: u = g h w / 7.
 * @param days g, gone since [days], >= 0
 * @param perDay h, run in a working day [s]
 * @param daysPerWeek w [1]
 * @returns u [s]; an estimate
 * Example: 328 days at 2 h on 5 days a week -> 468.6 h.
 * Source: arithmetic.
 */
export function hoursByUse(days: number, perDay: number, daysPerWeek: number): number {
  return (days * perDay * daysPerWeek) / 7;
}

export interface AtMeter {
  /** Times the interval has been reached by this reading [1]. */
  readonly times: number;
  /** Meter reading at which it was due last, and is due next [s]. */
  readonly last: number;
  readonly next: number;
  /** True within `near` of a due reading, on either side. */
  readonly due: boolean;
}

/**
 * What an hour meter says of a service that is due every so many hours, counted from 0.
 * Formulas: k = floor(m / t); last k t; next (k + 1) t; due where m lies within `near` of k t (k > 0) or of the next.
 * @param meter m [s], >= 0
 * @param interval t [s], > 0
 * @param near how far from a due reading still counts [s], below half the interval to tell one from the next
 * Example: 1,000 h, every 100 h -> the tenth time, due; every 300 h -> last at 900, next at 1,200, not due within 10 h.
 * Source: arithmetic.
 */
export function atMeter(meter: number, interval: number, near: number): AtMeter {
  const times = Math.floor((meter / interval) * (1 + 1e-12));
  const [last, next] = [times * interval, (times + 1) * interval];
  const due = (times > 0 && !isOver(meter - last, near)) || !isOver(next - meter, near);
  return { times, last, next, due };
}

/**
 * Reading at which a service is due, counted in turns from 0 as if each had been done in its time: the turn just
 * passed while it is no further off than `near`, else the next.
 * Formulas: k = floor(m / t); m_d = k t where k > 0 and m - k t <= near t, else (k + 1) t.
 * @param meter m [s], >= 0 @param interval t [s], > 0 @param near share of the interval [1], below 0.5
 * @returns m_d [s]
 * Example: 1,000 h, every 100 h -> 1,000; every 300 h, near a tenth -> 1,200; at 905 h -> 900.
 * Source: arithmetic.
 */
export function turnAtMeter(meter: number, interval: number, near: number): number {
  const { times, last, next } = atMeter(meter, interval, near * interval);
  return times > 0 && !isOver(meter - last, near * interval) ? last : next;
}

/** A row of a printed table of intervals by temperature. */
export interface TemperatureRow {
  /** [K] */
  readonly at: number;
  /** [s] */
  readonly interval: number;
}

/**
 * The row of a table nearest to a temperature, as the army's table of cartridge lives is read; on a tie the shorter
 * interval.
 * @param rows at least one @param temperature [K]
 * Example: rows of 70 and 75 °F, 72 °F -> the row of 70. Source: army-tm-cartridge-life.
 */
export function nearestRow(rows: readonly TemperatureRow[], temperature: number): TemperatureRow {
  const off = (row: TemperatureRow) => Math.abs(row.at - temperature);
  return rows.reduce((best, row) => {
    if (isUnder(off(row), off(best))) return row;
    return isOver(off(row), off(best)) || row.interval >= best.interval ? best : row;
  });
}

export interface Due {
  /** Days from the start [days]; below zero when overdue. */
  readonly days: number;
  readonly by: 'hours' | 'calendar';
}

/**
 * Whichever comes first. A tie goes to the hours.
 * @param byHours [days]
 * @param byCalendar [days]; undefined when there is no calendar limit
 * Source: army-tm-service-intervals (the rule).
 */
export function whicheverFirst(byHours: number, byCalendar?: number): Due {
  return byCalendar !== undefined && isUnder(byCalendar, byHours)
    ? { days: byCalendar, by: 'calendar' }
    : { days: byHours, by: 'hours' };
}
