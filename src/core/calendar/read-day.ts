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

/**
 * A day from typed text. Of two numbers before the year, the language says which is the month: the first in
 * American English, the second elsewhere; where only one order gives a day that exists, that one is taken.
 * Two figures for the year are of this century.
 * @param typed text @param lang language of the reader, such as "en", "en-US" or "es-MX"; English names of months are read in any
 * @returns the day; 'no-such-day' for the 30th of February, 'not-a-day' for text that is no day. Never throws.
 * Example: readDay('11/25/2026', 'en').date -> '2026-11-25'.
 * Example: readDay('25.11.2026', 'es').said -> '25 de noviembre de 2026'.
 */
export function readDay(typed: string, lang = 'en'): DayRead {
  const text = typed.trim();
  if (/^\d{4}-\d{2}-\d{2}$/.test(text))
    return dayNumber(text) === undefined ? { ok: false, code: 'no-such-day' } : { ok: true, date: text };
  const written = inFigures(text, lang) ?? inWords(text, lang);
  if (!written) return { ok: false, code: 'not-a-day' };
  const date = written.find((d) => dayNumber(d) !== undefined);
  return date === undefined ? { ok: false, code: 'no-such-day' } : { ok: true, date, said: sayDay(date, lang) };
}

/**
 * A day in words.
 * @param date YYYY-MM-DD @param lang language tag; English where it is none @returns the words; the text itself where it is no day
 * Example: sayDay('2026-11-25', 'en') -> 'November 25, 2026'.
 */
export function sayDay(date: string, lang = 'en'): string {
  if (dayNumber(date) === undefined) return date;
  return formatIn(lang).format(Date.parse(`${date}T00:00:00Z`));
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

/** "November 25, 2026", "25 Nov 2026", "25-Nov-2026", "25 de noviembre de 2026", in the reader's language or in English. */
function inWords(text: string, lang: string): string[] | undefined {
  const dayFirst = /^(\d{1,2})(?:\.?\s+|-)(?:de\s+)?(\p{L}{3,})(?:\.?,?\s+|-)(?:del?\s+)?(\d{4})$/iu.exec(text);
  const monthFirst = /^(\p{L}{3,})\.?\s+(\d{1,2}),?\s+(\d{4})$/iu.exec(text);
  const [day, name, year] = dayFirst
    ? [dayFirst[1], dayFirst[2], dayFirst[3]]
    : monthFirst
      ? [monthFirst[2], monthFirst[1], monthFirst[3]]
      : [];
  const month = name === undefined ? 0 : monthNamed(name, lang);
  return month === 0 ? undefined : [iso(year, String(month), day)];
}

function monthNamed(name: string, lang: string): number {
  const wanted = plain(name);
  const at = (names: readonly string[]) => names.findIndex((month) => month.startsWith(wanted)) + 1;
  // "setiembre" is as right as "septiembre"; "sept" is common in English.
  return at(monthsIn('en')) || at(monthsIn(lang)) || (wanted === 'setiembre' ? 9 : 0);
}

const plain = (text: string): string => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();

const formats = new Map<string, Intl.DateTimeFormat>();
const monthNames = new Map<string, readonly string[]>();

/** How a language writes a day in full. What is no language's tag is taken for English. */
function formatIn(lang: string): Intl.DateTimeFormat {
  const known = formats.get(lang);
  if (known) return known;
  const options = { dateStyle: 'long', timeZone: 'UTC' } as const;
  let made: Intl.DateTimeFormat;
  try {
    made = new Intl.DateTimeFormat(lang, options);
  } catch {
    made = new Intl.DateTimeFormat('en', options);
  }
  formats.set(lang, made);
  return made;
}

/** The names of the months as they stand in a day: small letters, no accents. */
function monthsIn(lang: string): readonly string[] {
  const known = monthNames.get(lang);
  if (known) return known;
  const names = Array.from({ length: 12 }, (_, month) =>
    plain(
      formatIn(lang)
        .formatToParts(Date.UTC(2026, month, 15))
        .find((part) => part.type === 'month')?.value ?? '',
    ),
  );
  monthNames.set(lang, names);
  return names;
}

function iso(year = '', month = '', day = ''): string {
  return `${year.length === 2 ? `20${year}` : year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`;
}

function isMonthFirst(lang: string): boolean {
  return /^en(?:-us)?$/i.test(lang);
}
