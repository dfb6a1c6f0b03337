import type { CalendarEvent } from '../../export/index.ts';
import type { DueLine } from './read-list.ts';

/**
 * Lines of the list as all-day events. A service of a machine always gets the same UID, whatever day it is due, so
 * that loading the file again moves the entry instead of leaving the old day beside the new. Different rows with the
 * same machine and service are numbered, the soonest first; a row typed twice is one entry.
 * @param list from `sortedList`
 * @param site what stands behind the @ in the UID, such as the shop's domain
 */
export function dueEvents(list: readonly DueLine[], site: string): CalendarEvent[] {
  const lines = [...new Map(list.map((d) => [JSON.stringify(d), d])).values()];
  const times = new Map<string, number>();
  return lines.map((d) => {
    // A slug holds no dot, so no two names and numbers run together into the same UID.
    const name = `${slug(d.machine)}.${slug(d.task)}`;
    const number = (times.get(name) ?? 0) + 1;
    times.set(name, number);
    return {
      uid: `${number === 1 ? name : `${name}.${number}`}@${site}`,
      date: d.date,
      title: `${d.machine}: ${d.task}`,
      note: d.by === 'hours' ? 'Due by its hours.' : 'Due by the calendar.',
    };
  });
}

function slug(text: string): string {
  return (
    text
      .toLowerCase()
      .replace(/[^\p{L}\p{N}]+/gu, '-')
      .replace(/^-|-$/g, '') || 'x'
  );
}
