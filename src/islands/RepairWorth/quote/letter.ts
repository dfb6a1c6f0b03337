/** What stands on the sheet besides the figures, as the shop types it. */
import { dateText, dayNumber } from '../../../core/calendar/index.ts';

export interface Letter {
  readonly number: string;
  readonly customer: string;
  readonly machine: string;
  readonly work: string;
  readonly alsoNotIncluded: string;
  /** YYYY-MM-DD. */
  readonly date: string;
  /** As typed. */
  readonly days: string;
}

export const usualDays = 14;

export function emptyLetter(date: string): Letter {
  return {
    number: '',
    customer: '',
    machine: '',
    work: '',
    alsoNotIncluded: '',
    date,
    days: String(usualDays),
  };
}

/** Last day the prices hold; nothing when the day or the number of days does not read. */
export function validUntil(letter: Letter): string | undefined {
  const from = dayNumber(letter.date);
  const days = /^\s*\d{1,3}\s*$/.test(letter.days) ? Number(letter.days) : 0;
  return from === undefined || days < 1 ? undefined : dateText(from + days);
}
