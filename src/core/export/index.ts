/** Files a reader can take away. */
export { calendarText, escapeText, foldLine, type CalendarEvent, type CalendarOptions } from './calendar.ts';
export { csvText, type Cell } from './csv.ts';
