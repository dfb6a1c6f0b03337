/** Days as people write them. Which days exist: the Gregorian calendar (leap years by its rule of 4, 100 and 400). */
import { describe, expect, it } from 'vitest';
import { dateText, dayNumber, readDay, sayDay } from '../../../src/core/calendar/index.ts';

describe('a day as typed', () => {
  it.each([
    ['2026-11-25', 'en', '2026-11-25'],
    ['11/25/2026', 'en', '2026-11-25'],
    ['11/25/2026', 'en-US', '2026-11-25'],
    ['25/11/2026', 'es', '2026-11-25'],
    ['25.11.2026', 'es', '2026-11-25'],
    ['25-11-26', 'es', '2026-11-25'],
    // Only one order gives a day.
    ['25/11/2026', 'en', '2026-11-25'],
    ['11/25/2026', 'es', '2026-11-25'],
    // Both do: the language says.
    ['3/4/2026', 'en', '2026-03-04'],
    ['3/4/2026', 'en-GB', '2026-04-03'],
    ['3/4/2026', 'es', '2026-04-03'],
    ['3/4/2026', 'es-MX', '2026-04-03'],
    ['2026/3/4', 'es', '2026-03-04'],
    ['November 25, 2026', 'en', '2026-11-25'],
    ['Nov 25 2026', 'en', '2026-11-25'],
    ['25-Nov-2026', 'en', '2026-11-25'],
    ['25 de noviembre de 2026', 'es', '2026-11-25'],
    ['25 ene 2026', 'es', '2026-01-25'],
    ['2 setiembre 2026', 'es', '2026-09-02'],
    ['29/2/2024', 'es', '2024-02-29'],
    // Any language of Unicode's CLDR, read here by eye.
    ['25 de novembro de 2026', 'pt-BR', '2026-11-25'],
    ['25 août 2026', 'fr', '2026-08-25'],
    ['25 nov 2026', 'pt', '2026-11-25'],
    ['November 25, 2026', 'es', '2026-11-25'],
  ])('%s in %s is %s', (text, lang, date) => {
    const read = readDay(text, lang);
    expect(read.ok && read.date).toBe(date);
    // What is not written year, month, day is said back.
    expect(read.ok && read.said !== undefined).toBe(text !== '2026-11-25');
  });

  it.each([
    ['2026-02-29', 'no-such-day'],
    ['2/29/2026', 'no-such-day'],
    ['31/31/2026', 'no-such-day'],
    ['0/1/2026', 'no-such-day'],
    ['2/29/1900', 'no-such-day'],
    ['tomorrow', 'not-a-day'],
    ['2026', 'not-a-day'],
    ['11/2026', 'not-a-day'],
    ['1/2/3/4', 'not-a-day'],
    ['25 brumaire 2026', 'not-a-day'],
    ['1-2/2026', 'not-a-day'],
  ])('%s is refused: %s', (text, code) => expect(readDay(text, 'en')).toEqual({ ok: false, code }));

  it('says the day in the language of the reader', () => {
    expect(sayDay('2026-11-25', 'en')).toBe('November 25, 2026');
    expect(sayDay('2026-11-25', 'es')).toBe('25 de noviembre de 2026');
    expect(sayDay('nonsense')).toBe('nonsense');
  });

  it('reads back every day it says', () => {
    const first = dayNumber('2023-12-30') ?? 0;
    for (let n = first; n < first + 800; n += 1)
      for (const lang of ['en', 'es'])
        expect(readDay(sayDay(dateText(n), lang), lang)).toMatchObject({ date: dateText(n) });
  });
});
