import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { calendarText, csvText, escapeText, foldLine } from '../../../src/core/export/index.ts';

const options = { stamp: '20260302T080000Z', product: '-//Shop//Almanac//EN', name: 'Services' };
const event = { uid: 'a@shop.example', date: '2026-03-14', title: 'Saw 1: belt', note: 'Due by its hours.' };

/** Unfolds and unescapes, as any reader of the standard must. */
function readBack(text: string): Map<string, string> {
  const lines = text
    .replaceAll('\r\n ', '')
    .split('\r\n')
    .filter((l) => l !== '');
  return new Map(
    lines.map((l) => [
      l.slice(0, l.indexOf(':')),
      l.slice(l.indexOf(':') + 1).replace(/\\([\\;,n])/g, (_, c: string) => (c === 'n' ? '\n' : c)),
    ]),
  );
}

describe('a calendar file', () => {
  it('has the lines the standard asks for, in order, each ended by CR LF', () => {
    expect(calendarText([event], options)).toBe(
      [
        'BEGIN:VCALENDAR',
        'VERSION:2.0',
        'PRODID:-//Shop//Almanac//EN',
        'CALSCALE:GREGORIAN',
        'METHOD:PUBLISH',
        'NAME:Services',
        'BEGIN:VEVENT',
        'UID:a@shop.example',
        'DTSTAMP:20260302T080000Z',
        'DTSTART;VALUE=DATE:20260314',
        'SUMMARY:Saw 1: belt',
        'DESCRIPTION:Due by its hours.',
        'TRANSP:TRANSPARENT',
        'END:VEVENT',
        'END:VCALENDAR',
        '',
      ].join('\r\n'),
    );
  });

  it('has no line longer than 75 octets, whatever the text', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 300, unit: 'grapheme' }), (title) => {
        for (const line of calendarText([{ ...event, title }], options).split('\r\n'))
          expect(new TextEncoder().encode(line).length).toBeLessThanOrEqual(75);
      }),
    );
  });

  it('gives the text back to whoever reads it', () => {
    fc.assert(
      fc.property(
        fc.string({ maxLength: 200, unit: 'grapheme' }).filter((s) => !/[\u0000-\u001f\u007f]/.test(s)),
        (title) => {
          expect(readBack(calendarText([{ ...event, title }], options)).get('SUMMARY')).toBe(title);
        },
      ),
    );
  });

  it('never breaks inside a character', () => {
    const line = foldLine(`SUMMARY:${'ñ🪚'.repeat(40)}`);
    expect(line.replaceAll('\r\n ', '')).toBe(`SUMMARY:${'ñ🪚'.repeat(40)}`);
    expect(line).not.toContain('\ufffd');
  });

  it('escapes what has a meaning in the standard', () => {
    expect(escapeText('a,b;c\\d\ne\u0007')).toBe('a\\,b\\;c\\\\d\\ne');
  });
});

describe('a CSV file', () => {
  it('quotes commas, quotes and line breaks, as in the standard', () => {
    expect(
      csvText([
        ['aaa', 'b "bb"', 'c,c', 'd\r\nd'],
        [1, -2.5, null, ''],
      ]),
    ).toBe('aaa,"b ""bb""","c,c","d\r\nd"\r\n1,-2.5,,\r\n');
  });

  it('never starts a text with what a spreadsheet runs as a formula', () => {
    fc.assert(
      fc.property(fc.constantFrom('=', '+', '-', '@', '\t', '\r'), fc.string(), (sign, rest) => {
        expect(csvText([[sign + rest]])).toMatch(/^"?'/);
      }),
    );
  });

  it('leaves numbers below zero alone, and numbers that are none empty', () => {
    expect(csvText([[-3, Number.NaN, Infinity]])).toBe('-3,,\r\n');
  });
});
