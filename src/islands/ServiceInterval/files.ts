/** The list as entries of a calendar and as rows of a spreadsheet. */
import type { CalendarEvent, Cell } from '../../core/export/index.ts';
import { dueEvents, type DueLine } from '../../core/topics/service-interval/index.ts';

const hour = 3600;

/** Overdue work would be lost among the days gone by: it is entered on the first day, and its note says when it was due. */
export function calendarEntries(list: readonly DueLine[], start: string, site: string): CalendarEvent[] {
  return dueEvents(list, site).map((e) =>
    e.date < start ? { ...e, date: start, title: `Overdue: ${e.title}`, note: `Was due on ${e.date}.` } : e,
  );
}

/** What stands behind the @ of an entry's name: the site's host, or what the page is served from; a carried copy has neither. */
export function siteOf(address: string | undefined, host: string): string {
  return (address === undefined ? host : new URL(address).host) || 'carried.invalid';
}

export function listRows(list: readonly DueLine[]): Cell[][] {
  const hours = (seconds: number | undefined) =>
    seconds === undefined ? null : Math.round((seconds / hour) * 10) / 10;
  return [
    [
      'Due on',
      'In days',
      'Machine',
      'What is done',
      'Interval (h)',
      'Still to run (h)',
      'Goes by',
      'At the meter (h)',
      'Hours since',
    ],
    ...list.map((d) => [
      d.date,
      d.days,
      d.machine,
      d.task,
      hours(d.interval),
      hours(d.hoursLeft),
      d.by,
      hours(d.atMeter),
      d.since.from,
    ]),
  ];
}
