/** Days of the calendar as text, YYYY-MM-DD, and sums with them. No clock: the caller says what day it is. */

/** How a day is written in the core and in a file, as a regular expression. */
export const datePattern = '\\d{4}-\\d{2}-\\d{2}';

/**
 * Day number of a date in the Gregorian calendar, counted from 1970-01-01.
 * Method: years from March, so that the leap day comes last (days from civil).
 * @param text YYYY-MM-DD
 * @returns whole days; undefined when there is no such day
 * Example: dayNumber('2000-03-01') -> 11017. Example: dayNumber('2026-02-30') -> undefined.
 * Source: days-from-civil.
 */
export function dayNumber(text: string): number | undefined {
  const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (!parts) return undefined;
  const [year, month, day] = parts.slice(1).map(Number) as [number, number, number];
  if (month < 1 || month > 12 || day < 1) return undefined;
  const y = month <= 2 ? year - 1 : year;
  const era = Math.floor(y / 400);
  const inEra = y - era * 400;
  const inYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + day - 1;
  const number = era * 146097 + inEra * 365 + Math.floor(inEra / 4) - Math.floor(inEra / 100) + inYear - 719468;
  return dateText(number) === text ? number : undefined;
}

/**
 * Date of a day number; the way back from `dayNumber`.
 * @param number whole days from 1970-01-01
 * @returns YYYY-MM-DD
 * Example: dateText(11017) -> '2000-03-01'.
 * Source: days-from-civil.
 */
export function dateText(number: number): string {
  const z = Math.floor(number) + 719468;
  const era = Math.floor(z / 146097);
  const inEra = z - era * 146097;
  const yearOfEra = Math.floor(
    (inEra - Math.floor(inEra / 1460) + Math.floor(inEra / 36524) - Math.floor(inEra / 146096)) / 365,
  );
  const inYear = inEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const shifted = Math.floor((5 * inYear + 2) / 153);
  const day = inYear - Math.floor((153 * shifted + 2) / 5) + 1;
  const month = shifted + (shifted < 10 ? 3 : -9);
  const year = yearOfEra + era * 400 + (month <= 2 ? 1 : 0);
  return `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
}

/**
 * The nearest day that can be written YYYY-MM-DD: years 1 to 9999.
 * @param number whole days from 1970-01-01 @returns the same, or the first or last such day
 * Example: dayInCalendar(1e9) -> 2932896.
 */
export function dayInCalendar(number: number): number {
  const [firstDay, lastDay] = [-719162, 2932896];
  return Math.min(lastDay, Math.max(firstDay, number));
}
