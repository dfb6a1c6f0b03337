/** Files a reader can take away. */
export { calendarText, escapeText, foldLine, type CalendarEvent, type CalendarOptions } from './icalendar.ts';
export { csvText, type Cell } from './csv.ts';
