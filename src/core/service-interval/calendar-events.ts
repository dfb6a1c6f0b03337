import type { CalendarEvent } from '../export/index.ts';
import type { DueLine } from './read-list.ts';

/**
 * Lines of the list as all-day events. The same machine, service and day always get the same UID, so that
 * loading the file again changes the entry instead of doubling it.
 * @param list from `sortedList`
 * @param site what stands behind the @ in the UID, such as the shop's domain
 */
export function dueEvents(list: readonly DueLine[], site: string): CalendarEvent[] {
  return list.map((d) => ({ uid: `${slug(d.machine)}-${slug(d.task)}-${d.date}@${site}`, date: d.date, title: `${d.machine}: ${d.task}`, note: d.by === 'hours' ? 'Due by its hours.' : 'Due by the calendar.' }));
}

function slug(text: string): string {
  return text.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-|-$/g, '') || 'x';
}
