import { textOf } from '../../core/contract/text-of.ts';
import type { RawInputs } from '../../core/contract/field.ts';
import { dateText, dayNumber } from '../../core/calendar/index.ts';
import { today } from '../kit/index.ts';

/**
 * The list starts today. Days in the rows move with it, so that a worked example written months ago
 * does not stand there overdue.
 */
export function toToday(figures: RawInputs, day = today()): RawInputs {
  const to = dayNumber(day);
  const from = dayNumber(textOf(figures['start'] ?? ''));
  if (to === undefined) return figures;
  const moved = (raw: RawInputs): RawInputs => {
    const last = dayNumber(textOf(raw['last'] ?? ''));
    return last === undefined || from === undefined ? raw : { ...raw, last: dateText(last + to - from) };
  };
  const tasks = figures['tasks'];
  return {
    ...figures,
    start: day,
    ...(Array.isArray(tasks) ? { tasks: (tasks as readonly RawInputs[]).map(moved) } : {}),
  };
}
