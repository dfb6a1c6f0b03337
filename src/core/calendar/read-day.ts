/** Reads a day as people write it: 2026-11-25, 11/25/2026, 25.11.2026, "November 25, 2026", "25 de noviembre de 2026". */
import { dayNumber } from './day-number.ts';

export type DayRead =
  | {
      readonly ok: true;
      /** YYYY-MM-DD */
      readonly date: string;
      /** The day in words; present where it was not written YYYY-MM-DD, so that the reader can be told. */
      readonly said?: string;
    }
  | { readonly ok: false; readonly code: 'not-a-day' | 'no-such-day' };

const months: Readonly<Record<'en' | 'es', readonly string[]>> = {
  en: [
    'January',
    'February',
    'March',
    'April',
    'May',
    'June',
    'July',
    'August',
    'September',
    'October',
    'November',
    'December',
  ],
  es: [
    'enero',
    'febrero',
    'marzo',
    'abril',
    'mayo',
    'junio',
    'julio',
    'agosto',
    'septiembre',
    'octubre',
    'noviembre',
    'diciembre',
  ],
};

/**
 * A day from typed text. Of two numbers before the year, the language says which is the month: the first in
 * American English, the second elsewhere; where only one order gives a day that exists, that one is taken.
 * Two figures for the year are of this century.
 * @param typed text @param lang language of the reader, such as "en", "en-US" or "es"
 * @returns the day; 'no-such-day' for the 30th of February, 'not-a-day' for text that is no day. Never throws.
 * Example: readDay('11/25/2026', 'en').date -> '2026-11-25'.
 * Example: readDay('25.11.2026', 'es').said -> '25 de noviembre de 2026'.
 */
export function readDay(typed: string, lang = 'en'): DayRead {
  const text = typed.trim();
  if (/^\d{4}-\d{2}-\d{2}$/.test(text))
    return dayNumber(text) === undefined ? { ok: false, code: 'no-such-day' } : { ok: true, date: text };
  const written = inFigures(text, lang) ?? inWords(text);
  if (!written) return { ok: false, code: 'not-a-day' };
  const date = written.find((d) => dayNumber(d) !== undefined);
  return date === undefined ? { ok: false, code: 'no-such-day' } : { ok: true, date, said: sayDay(date, lang) };
}

/**
 * A day in words.
 * @param date YYYY-MM-DD @param lang "es" for Spanish, anything else for English @returns the words; the text itself where it is no day
 * Example: sayDay('2026-11-25', 'en') -> 'November 25, 2026'.
 */
export function sayDay(date: string, lang = 'en'): string {
  if (dayNumber(date) === undefined) return date;
  const [year, month, day] = date.split('-').map(Number) as [number, number, number];
  return isSpanish(lang) ? `${day} de ${months.es[month - 1]} de ${year}` : `${months.en[month - 1]} ${day}, ${year}`;
}

/** "11/25/2026", "25-11-26", "2026/11/25": every order it may stand in, the likeliest first. */
function inFigures(text: string, lang: string): string[] | undefined {
  const yearFirst = /^(\d{4})[-/. ](\d{1,2})[-/. ](\d{1,2})$/.exec(text);
  if (yearFirst) return [iso(yearFirst[1], yearFirst[2], yearFirst[3])];
  const yearLast = /^(\d{1,2})\s*([-/.])\s*(\d{1,2})\s*\2\s*(\d{4}|\d{2})$/.exec(text);
  if (!yearLast) return undefined;
  const [, first, , second, year] = yearLast;
  const orders = [iso(year, first, second), iso(year, second, first)];
  return isMonthFirst(lang) ? orders : orders.reverse();
}

/** "November 25, 2026", "25 Nov 2026", "25-Nov-2026", "25 de noviembre de 2026", in either language. */
function inWords(text: string): string[] | undefined {
  const dayFirst = /^(\d{1,2})(?:\.?\s+|-)(?:de\s+)?([a-z]{3,})(?:\.?,?\s+|-)(?:del?\s+)?(\d{4})$/i.exec(text);
  const monthFirst = /^([a-z]{3,})\.?\s+(\d{1,2}),?\s+(\d{4})$/i.exec(text);
  const [day, name, year] = dayFirst
    ? [dayFirst[1], dayFirst[2], dayFirst[3]]
    : monthFirst
      ? [monthFirst[2], monthFirst[1], monthFirst[3]]
      : [];
  const month = name === undefined ? 0 : monthNamed(name);
  return month === 0 ? undefined : [iso(year, String(month), day)];
}

function monthNamed(name: string): number {
  const wanted = name.toLowerCase();
  const at = (names: readonly string[]) => names.findIndex((m) => m.toLowerCase().startsWith(wanted)) + 1;
  // "setiembre" is as right as "septiembre"; "sept" is common in English.
  return at(months.en) || at(months.es) || (wanted === 'setiembre' ? 9 : 0);
}

function iso(year = '', month = '', day = ''): string {
  return `${year.length === 2 ? `20${year}` : year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`;
}

function isSpanish(lang: string): boolean {
  return /^es\b/i.test(lang);
}

function isMonthFirst(lang: string): boolean {
  return /^en(?:-us)?$/i.test(lang);
}
