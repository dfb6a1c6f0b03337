/** What leaves the service list: calendar entries, table, wall card, and the day it starts on. */
import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import type { RawInputs } from '../../src/core/contract/field.ts';
import { readInputs } from '../../src/core/contract/read-inputs.ts';
import { compute, example, fields, sortedList } from '../../src/core/topics/service-interval/index.ts';
import { calendarStamp, fileName, today } from '../../src/islands/kit/index.ts';
import { calendarEntries, listRows, siteOf } from '../../src/islands/ServiceInterval/files.ts';
import { toToday } from '../../src/islands/ServiceInterval/to-today.ts';
import { WallCard } from '../../src/islands/ServiceInterval/WallCard.tsx';
import { shop } from './page.ts';

function listOf(raw: RawInputs) {
  const read = readInputs(fields, raw);
  if (!read.ok) throw new Error('These rows do not read.');
  return sortedList(read.inputs as Parameters<typeof sortedList>[0]);
}
const late: RawInputs = {
  start: '2026-03-02',
  tasks: [
    { machine: 'Saw 1', task: 'Belt', base: '10 h', since: '14 h' },
    { machine: 'Saw 2', task: 'Belt', base: '17.5 h' },
  ],
};

describe('calendar entries', () => {
  it('put overdue work on the first day under the name it always has', () => {
    const [entry] = calendarEntries(listOf(late), '2026-03-02', 'shop.example');
    expect(entry).toMatchObject({
      date: '2026-03-02',
      title: 'Overdue: Saw 1: Belt',
      uid: 'saw-1.belt@shop.example',
      note: 'Was due on 2026-02-27.',
    });
  });
  it('stand once, however often the same row was typed', () => {
    const rows = { machine: 'Saw 1', task: 'Belt', base: '10 h' };
    expect(
      calendarEntries(listOf({ start: '2026-03-02', tasks: [rows, rows] }), '2026-03-02', 'shop.example'),
    ).toHaveLength(1);
  });
  it('keep machines apart whatever script their names are in', () => {
    const tasks = ['Säge', 'Süge', 'Пила', '鋸'].map((machine) => ({ machine, task: 'Öl', base: '10 h' }));
    expect(
      new Set(calendarEntries(listOf({ start: '2026-03-02', tasks }), '2026-03-02', 'shop.example').map((e) => e.uid))
        .size,
    ).toBe(4);
  });
  it('are named after the shop’s address, or what there is', () => {
    expect(siteOf('https://almanac.example/calculators/service-interval.html', 'localhost')).toBe('almanac.example');
    expect(siteOf(undefined, 'localhost')).toBe('localhost');
    expect(siteOf(undefined, '')).toBe('carried.invalid');
  });
});

describe('the table and the card', () => {
  it('hold every machine, the soonest first', () => {
    expect(listRows(listOf(late)).map((r) => [r[0], r[2], r[5]])).toEqual([
      ['Due on', 'Machine', 'Still to run (h)'],
      ['2026-02-27', 'Saw 1', -4],
      ['2026-03-14', 'Saw 2', 17.5],
    ]);
  });
  it('never say that there is more time than there is', () => {
    const html = renderToString(
      <WallCard id="card" heading="Due" start="2026-03-02" list={listOf(late)} shop={shop} />,
    );
    expect(html).toContain('overdue');
    expect(html).toContain('17.5 h');
    expect(html).not.toContain('18 h');
  });
});

describe('the list', () => {
  it('starts today, and the days in its rows move with it', () => {
    const moved = toToday(example, '2026-11-25');
    expect(moved['start']).toBe('2026-11-25');
    // 49 days before the start in the worked example.
    expect((moved['tasks'] as readonly RawInputs[]).map((t) => t['last'])).toEqual([
      undefined,
      undefined,
      '2026-10-07',
    ]);
    const [before, after] = [listOf(example), listOf(moved)];
    expect(after.map((d) => [d.machine, d.task, d.days])).toEqual(before.map((d) => [d.machine, d.task, d.days]));
  });
  it('starts today when every box is empty', () => {
    expect(toToday({ tasks: [{}] }, '2026-11-25')).toEqual({ start: '2026-11-25', tasks: [{}] });
  });
  it('answers for today', () => {
    const read = readInputs(fields, toToday(example));
    expect(read.ok && compute(read.inputs).ok).toBe(true);
  });
});

describe('clock and names', () => {
  it('are written as the files want them', () => {
    const moment = new Date(2026, 2, 4, 5, 6, 7);
    expect(today(moment)).toBe('2026-03-04');
    expect(calendarStamp(new Date('2026-03-04T05:06:07.089Z'))).toBe('20260304T050607Z');
  });
  it('of files hold to signs every disk takes', () => {
    expect(fileName('Presupuesto 1182 José Ñúñez / 2', 'csv')).toBe('presupuesto-1182-jose-nunez-2.csv');
    expect(fileName('  ', 'ics')).toBe('file.ics');
  });
});
