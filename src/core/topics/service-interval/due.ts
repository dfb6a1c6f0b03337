/** When a service is due: hours shortened by the duty, or the calendar, whichever comes first. */

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
  return byCalendar !== undefined && byCalendar < byHours
    ? { days: byCalendar, by: 'calendar' }
    : { days: byHours, by: 'hours' };
}
