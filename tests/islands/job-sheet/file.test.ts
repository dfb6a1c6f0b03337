/** Job sheets as a file: what is written is read back, and anything else is refused whole. */
import { describe, expect, it } from 'vitest';
import { fileText, readFile, type FiledSheet } from '../../../src/islands/JobSheet/file.ts';

const record = (data: unknown, v = 1) => JSON.stringify({ v, at: 1_700_000_000_000, data });
const entry = {
  kind: 'note',
  at: 5,
  title: 'Note',
  sentence: 'Cut wet',
  inputs: [],
  outcomes: [],
  link: '',
  edition: '',
};
const sheets: FiledSheet[] = [
  { ticket: '1432', records: { 'sheet/': record({ customer: 'R. Amsel' }), 'entry/a': record(entry) } },
  { ticket: 'ñ/7', records: { 'figures/belt-tension': record({ any: 'shape' }) } },
];
const text = fileText(sheets, '2026-11-25T09:00:00Z');
const changed = (change: (file: Record<string, unknown>) => void) => {
  const file = JSON.parse(text) as Record<string, unknown>;
  change(file);
  return JSON.stringify(file);
};

describe('a file of job sheets', () => {
  it('is read back as it was written, by spreadsheets’ habits too', () => {
    expect(readFile(text)).toEqual({ sheets });
    expect(readFile(`\uFEFF${text}`)).toEqual({ sheets });
  });

  it.each([
    ['nothing', ''],
    ['cut short', text.slice(0, 200)],
    ['another file', '{"name":"x","version":1}'],
    ['a list', '[]'],
    ['no sheets', changed((f) => delete f['sheets'])],
    ['a sheet without a ticket', changed((f) => (f['sheets'] = [{ records: {} }]))],
    ['a record that is none', changed((f) => (f['sheets'] = [{ ticket: '1', records: { 'sheet/': 7 } }]))],
    [
      'a key that leads elsewhere',
      changed(
        (f) =>
          (f['sheets'] = [{ ticket: '1', records: { '../x': { v: 1 } } }].map((s) => ({
            ...s,
            records: { 'a/b/c': { v: 1 } },
          }))),
      ),
    ],
    [
      'an entry of another shape',
      changed(
        (f) => (f['sheets'] = [{ ticket: '1', records: { 'entry/a': { v: 1, at: 1, data: { kind: 'joke' } } } }]),
      ),
    ],
  ])('refuses %s', (_, file) => expect(readFile(file)).toEqual({ problem: 'broken' }));

  it.each([
    ['itself', changed((f) => (f['version'] = 2))],
    [
      'in one of its records',
      changed((f) => (f['sheets'] = [{ ticket: '1', records: { 'sheet/': { v: 99, at: 1, data: {} } } }])),
    ],
  ])('of a newer edition, %s, is said to be one', (_, file) => expect(readFile(file)).toEqual({ problem: 'newer' }));
});
