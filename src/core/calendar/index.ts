/** Days of the calendar: sums with them, and how people write them. No clock: the caller says what day it is. */
export { dateText, datePattern, dayInCalendar, dayNumber } from './day-number.ts';
export { readDay, sayDay, type DayRead } from './read-day.ts';
