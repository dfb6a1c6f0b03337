/**
 * Job sheets as a file of our own: JSON with the records of each ticket, by their key within it. Reading back never
 * loses anything: what differs from the device is handed over to be asked about.
 */
import {
  entryKind,
  headKind,
  isParts,
  putRecord,
  quoteKind,
  readRecord,
  setAside,
  textsFrom,
  ticketKeys,
} from '../../browser/device/index.ts';
import { searchKind } from '../FaultSearch/kept.ts';

const format = 'job-sheets';
const version = 1;

export interface FiledSheet {
  readonly ticket: string;
  /** Record texts by key within the ticket: "entry/1700…-ab12". */
  readonly records: Readonly<Record<string, string>>;
}

export type FileRead = { readonly sheets: readonly FiledSheet[] } | { readonly problem: 'broken' | 'newer' };

export function sheetOf(ticket: string): FiledSheet {
  const start = ticketKeys(ticket);
  return {
    ticket,
    records: Object.fromEntries(textsFrom(start).map(([key, text]) => [key.slice(start.length), text])),
  };
}

export function fileText(sheets: readonly FiledSheet[], saved: string): string {
  return JSON.stringify(
    {
      almanac: format,
      version,
      saved,
      sheets: sheets.map(({ ticket, records }) => ({
        ticket,
        records: Object.fromEntries(Object.entries(records).map(([key, text]) => [key, parsed(text)])),
      })),
    },
    null,
    1,
  );
}

/** A record that is not JSON was set aside long before; here it travels as the text it is. */
function parsed(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return text;
  }
}

/** Kinds whose records are looked at before they are taken in; others are looked at by the page they belong to. */
const known = [headKind, entryKind, searchKind, quoteKind];

export function readFile(text: string): FileRead {
  let file: unknown;
  try {
    file = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    return { problem: 'broken' };
  }
  if (!isParts(file) || file['almanac'] !== format || typeof file['version'] !== 'number') return { problem: 'broken' };
  if (file['version'] > version) return { problem: 'newer' };
  if (!Array.isArray(file['sheets'])) return { problem: 'broken' };
  const sheets: FiledSheet[] = [];
  for (const sheet of file['sheets'] as unknown[]) {
    if (!isParts(sheet) || typeof sheet['ticket'] !== 'string' || !isParts(sheet['records']))
      return { problem: 'broken' };
    const records: Record<string, string> = {};
    for (const [key, record] of Object.entries(sheet['records'])) {
      const [name = '', ...rest] = key.split('/');
      const kept = JSON.stringify(record);
      if (name === '' || rest.length !== 1 || !isParts(record) || typeof record['v'] !== 'number')
        return { problem: 'broken' };
      const kind = known.find((k) => k.name === name);
      const bad = kind && readRecord<unknown>(kind, kept).bad;
      if (bad) return { problem: bad === 'newer' ? 'newer' : 'broken' };
      records[key] = kept;
    }
    sheets.push({ ticket: sheet['ticket'].slice(0, 40), records });
  }
  return { sheets };
}

export interface Comparison {
  /** Records the device does not have. */
  readonly fresh: readonly (readonly [key: string, text: string])[];
  /** Records both have, each another. */
  readonly differing: readonly (readonly [key: string, text: string])[];
  readonly tickets: readonly string[];
}

/** What a file would change here. */
export function compare(sheets: readonly FiledSheet[]): Comparison {
  const here = new Map(textsFrom(ticketKeys()));
  const fresh: (readonly [string, string])[] = [];
  const differing: (readonly [string, string])[] = [];
  const tickets = new Set<string>();
  for (const { ticket, records } of sheets)
    for (const [name, text] of Object.entries(records)) {
      const key = ticketKeys(ticket) + name;
      const there = here.get(key);
      if (there === undefined) fresh.push([key, text]);
      else if (dataOf(there) !== dataOf(text)) {
        differing.push([key, text]);
        tickets.add(ticket);
      }
    }
  return { fresh, differing, tickets: [...tickets] };
}

/** The time of the last change alone makes no difference. */
function dataOf(text: string): string {
  const record = parsed(text);
  return isParts(record) ? JSON.stringify(record['data']) : text;
}

/** Takes records in; a record of the device that gives way is set aside first, and stays if that can't be done. */
export function takeIn(records: readonly (readonly [key: string, text: string])[]): void {
  const here = new Map(textsFrom(ticketKeys()));
  for (const [key, text] of records) {
    const there = here.get(key);
    if (there === undefined || setAside(key, there)) putRecord(key, text);
  }
}
