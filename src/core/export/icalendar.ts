/** A calendar file as text (iCalendar, RFC 5545). */

export interface CalendarEvent {
  /** The same for the same event each time the file is written. */
  readonly uid: string;
  /** All day, YYYY-MM-DD. */
  readonly date: string;
  readonly title: string;
  readonly note?: string;
}

export interface CalendarOptions {
  /** When the file was made, YYYYMMDDTHHMMSSZ; handed in, because core has no clock. */
  readonly stamp: string;
  /** Names the maker of the file, such as "-//Shop//Almanac//EN". */
  readonly product: string;
  readonly name?: string;
}

/**
 * All-day events as one calendar file: lines end in CR LF and are folded after 75 octets, text is escaped.
 * @returns the file's text, to be written as UTF-8
 * Source: rfc-5545, sections 3.1, 3.3.11, 3.6 and 3.6.1.
 */
export function calendarText(events: readonly CalendarEvent[], { stamp, product, name }: CalendarOptions): string {
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    `PRODID:${escapeText(product)}`,
    'CALSCALE:GREGORIAN',
    'METHOD:PUBLISH',
    ...(name === undefined ? [] : [`NAME:${escapeText(name)}`]),
    ...events.flatMap((e) => [
      'BEGIN:VEVENT',
      `UID:${escapeText(e.uid)}`,
      `DTSTAMP:${stamp}`,
      `DTSTART;VALUE=DATE:${e.date.replaceAll('-', '')}`,
      `SUMMARY:${escapeText(e.title)}`,
      ...(e.note === undefined ? [] : [`DESCRIPTION:${escapeText(e.note)}`]),
      'TRANSP:TRANSPARENT',
      'END:VEVENT',
    ]),
    'END:VCALENDAR',
  ];
  return lines.map((line) => `${foldLine(line)}\r\n`).join('');
}

/** Backslash, semicolon and comma get a backslash, a line break becomes \n; other control characters are dropped. */
export function escapeText(text: string): string {
  return text
    .replace(/[\\;,]/g, (c) => `\\${c}`)
    .replace(/\r\n|\r|\n/g, '\\n')
    .replace(/[\u0000-\u0008\u000b-\u001f\u007f]/g, '');
}

/** Breaks a line so that no piece is longer than 75 octets, never inside a character; each further piece starts with a space. */
export function foldLine(line: string): string {
  const pieces: string[] = [];
  let [piece, octets] = ['', 0];
  for (const character of line) {
    const size = octetsOf(character);
    if (octets + size > 75) {
      pieces.push(piece);
      [piece, octets] = [' ', 1];
    }
    piece += character;
    octets += size;
  }
  return [...pieces, piece].join('\r\n');
}

/** Octets of one character in UTF-8. */
function octetsOf(character: string): number {
  const code = character.codePointAt(0) ?? 0;
  return code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x10000 ? 3 : 4;
}
